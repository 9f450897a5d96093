using System.Collections.Immutable;
using Hotside.Symbols.Shapes;

namespace Hotside.Drawings.Sheets;

/// <summary>
/// Where the views of a pair stand in the room that a sheet leaves them. Both get half of it unless one needs more and the other can spare it:
/// before a relay is fitted its place at the right is empty.
/// </summary>
internal sealed class ViewRooms
{
    /// <summary>Left free between two views.</summary>
    public const double Between = 30;

    private const double MostInset = 40;

    private readonly Box room;
    private readonly Box[] views;
    private readonly Box all;

    /// <param name="room">The room on the sheet.</param>
    /// <param name="views">What each view needs, in the layout's own coordinates.</param>
    public ViewRooms(Box room, ImmutableArray<Box> views)
    {
        this.room = room;
        all = Box.Around(views);
        this.views = [.. views.Select(v => v with { Left = all.Left })];
    }

    /// <summary>What is left of the width; below zero where it is missing.</summary>
    public double SpareWidth => room.Width - (Between * (views.Length - 1)) - views.Sum(v => v.Width);

    /// <summary>What is left of the height; below zero where it is missing.</summary>
    public double SpareHeight => room.Height - all.Height;

    /// <summary>Whether all views find room.</summary>
    public bool Hold => SpareWidth >= 0 && SpareHeight >= 0;

    /// <summary>From a view's left edge to the origin of its layout; the same in all views, so that the eye finds a thing at the same place.</summary>
    public (double X, double Y) Shift
    {
        get
        {
            double inset = views.Select((v, i) => Math.Max(0, (Width(i) - v.Width) / 2)).Append(MostInset).Min();
            return (inset - all.Left, room.Top - all.Top + Math.Max(0, SpareHeight / 2));
        }
    }

    /// <summary>The left edge of a view's room.</summary>
    public double Left(int view) => view == 0 ? room.Left : room.Left + Width(0) + Between;

    /// <summary>The width of a view's room.</summary>
    public double Width(int view)
    {
        if (views.Length == 1) return room.Width;
        double half = (room.Width - Between) / 2, most = room.Width - Between - views[1].Width;
        double first = Math.Max(Math.Min(half, most), Math.Min(views[0].Width, room.Width - Between));
        return view == 0 ? first : room.Width - Between - first;
    }
}
