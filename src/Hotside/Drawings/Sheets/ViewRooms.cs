using System.Collections.Immutable;
using Hotside.Symbols.Shapes;

namespace Hotside.Drawings.Sheets;

/// <summary>Where the views of a sheet stand in the room that it leaves them: beside each other, or one above the other where that takes less paper.</summary>
internal abstract class ViewRooms
{
    // What a view does not fill of its room is left below it: it stays near its headline.
    private const double MostBelowHeadline = 60;

    /// <summary>From circuit and views to their rooms.</summary>
    /// <param name="room">The room on the sheet.</param>
    /// <param name="views">What each view needs, in the layout's own coordinates.</param>
    /// <param name="standing">How they stand.</param>
    /// <param name="headroom">What the headline of a view takes above it.</param>
    public static ViewRooms Of(Box room, ImmutableArray<Box> views, Standing standing, double headroom)
    {
        // One left edge in all views, so that the eye finds a thing at the same place.
        var all = Box.Around(views);
        ImmutableArray<Box> even = [.. views.Select(v => v with { Left = all.Left })];
        return standing == Standing.Above ? new AboveRooms(room, even, headroom) : new BesideRooms(room, [.. even.Select(v => v with { Top = all.Top, Bottom = all.Bottom })]);
    }

    private protected ViewRooms(ImmutableArray<Box> views) => Views = views;

    /// <summary>What each view needs.</summary>
    protected ImmutableArray<Box> Views { get; }

    /// <summary>What is left of the width; below zero where it is missing.</summary>
    public abstract double SpareWidth { get; }

    /// <summary>What is left of the height; below zero where it is missing.</summary>
    public abstract double SpareHeight { get; }

    /// <summary>By how much each view may grow.</summary>
    public abstract (double Width, double Height) Growth { get; }

    /// <summary>How far the views may stand from the left edge of their rooms.</summary>
    protected abstract double MostInset { get; }

    /// <summary>Whether all views find room.</summary>
    public bool Hold => SpareWidth >= 0 && SpareHeight >= 0;

    /// <summary>The room of a view, below its headline.</summary>
    public abstract Box Room(int view);

    /// <summary>The line between two views.</summary>
    /// <param name="top">Where a line down the sheet begins.</param>
    public abstract (double X1, double Y1, double X2, double Y2) Divider(double top);

    /// <summary>Whether a view lies within its room when the origin of its layout stands at a point.</summary>
    public bool Holds(int view, (double X, double Y) origin)
    {
        Box room = Room(view), at = Views[view];
        return origin.X + at.Left >= room.Left && origin.X + at.Right <= room.Right && origin.Y + at.Top >= room.Top && origin.Y + at.Bottom <= room.Bottom;
    }

    /// <summary>Where the origin of a view's layout stands on the sheet.</summary>
    public (double X, double Y) Origin(int view)
    {
        double inset = Views.Select((v, i) => Math.Max(0, (Room(i).Width - v.Width) / 2)).Append(MostInset).Min();
        return (Math.Round(Room(view).Left + inset - Views[view].Left), Math.Round(Room(view).Top - Views[view].Top + Math.Clamp((Room(view).Height - Views[view].Height) / 2, 0, MostBelowHeadline)));
    }
}

/// <summary>Beside each other: both get half of the width unless one needs more and the other can spare it; before a relay is fitted its place at the right is empty.</summary>
file sealed class BesideRooms(Box room, ImmutableArray<Box> views) : ViewRooms(views)
{
    private const double Between = 30;

    public override double SpareWidth => room.Width - (Between * (Views.Length - 1)) - Views.Sum(v => v.Width);

    public override double SpareHeight => room.Height - Views[0].Height;

    public override (double Width, double Height) Growth => (SpareWidth / Views.Length, SpareHeight);

    public override Box Room(int view) =>
        view == 0 ? room with { Right = room.Left + First } : room with { Left = room.Left + First + Between };

    public override (double X1, double Y1, double X2, double Y2) Divider(double top)
    {
        double x = Room(1).Left - (Between / 2);
        return (x, top, x, room.Bottom);
    }

    // A view that is narrower than its half stays near its headline.
    protected override double MostInset => 40;

    private double First
    {
        get
        {
            if (Views.Length == 1) return room.Width;
            double half = (room.Width - Between) / 2, most = room.Width - Between - Views[1].Width;
            return Math.Max(Math.Min(half, most), Math.Min(Views[0].Width, room.Width - Between));
        }
    }
}

/// <summary>One above the other, each as high as it is and half of what is left.</summary>
file sealed class AboveRooms(Box room, ImmutableArray<Box> views, double headroom) : ViewRooms(views)
{
    private const double Between = 24;

    public override double SpareWidth => room.Width - Views.Max(v => v.Width);

    public override double SpareHeight => room.Height - ((Between + headroom) * (Views.Length - 1)) - Views.Sum(v => v.Height);

    public override (double Width, double Height) Growth => (SpareWidth, SpareHeight / Views.Length);

    protected override double MostInset => double.PositiveInfinity;

    public override Box Room(int view)
    {
        double each = Math.Max(0, SpareHeight) / Views.Length;
        double top = room.Top + Views.Take(view).Sum(v => v.Height + each + Between + headroom);
        return room with { Top = top, Bottom = top + Views[view].Height + each };
    }

    public override (double X1, double Y1, double X2, double Y2) Divider(double top)
    {
        double y = Room(0).Bottom + (Between / 2);
        return (room.Left, y, room.Right, y);
    }
}
