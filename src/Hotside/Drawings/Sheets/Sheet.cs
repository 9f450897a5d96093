using System.Collections.Immutable;
using Hotside.Drawings.Pictures;
using Hotside.Drawings.Plans;
using Hotside.Layouts;
using Hotside.Symbols;
using Hotside.Symbols.Shapes;
using Hotside.Wording;

namespace Hotside.Drawings.Sheets;

/// <summary>A paper with all that will stand on it, everything in its place.</summary>
internal sealed record Sheet(SheetRequest Request, Furniture Furniture, DrawingPlan Plan, Layout Layout, Standing Standing)
{
    /// <summary>Where its views stand.</summary>
    public ViewRooms Rooms => ViewRooms.Of(Furniture.Room, [.. Request.Views.Select(v => PictureBounds.Of(Plan, Layout, v))], Standing, Furniture.HeadlineRoom(Plan.Lettering));

    /// <summary>Where the origins of the views stand on a sheet that this one resembles; empty where it resembles none.</summary>
    public ImmutableArray<(double X, double Y)> Kept { get; init; } = [];

    /// <summary>Where the origins of the views' layout stand: where they stood if that is still within their rooms.</summary>
    public ImmutableArray<(double X, double Y)> Origins
    {
        get
        {
            var rooms = Rooms;
            return Kept.Length == Request.Views.Length && Kept.Select((o, i) => rooms.Holds(i, o)).All(held => held) ? Kept : [.. Request.Views.Select((_, i) => rooms.Origin(i))];
        }
    }

    /// <summary>What is seen of joints, where the room was measured with that; <see langword="null"/> where it was with all that may be seen.</summary>
    public ShownJoints? Joints { get; private init; }

    /// <summary>The same with a legend of what is seen of joints, no longer of all that may be.</summary>
    public Sheet WithExactLegend()
    {
        var joints = ShownJoints.Of(Plan, Layout, Request.Views);
        return this with { Joints = joints, Furniture = Furniture.Of(Plan, Request, Furniture.Size, joints: joints) };
    }

    /// <summary>The zone of the middle of what is drawn in a box in a view; <see langword="null"/> where the view does not show it.</summary>
    public string? ZoneOf(string box, SeenIn view)
    {
        int index = Plan.Input.Boxes.Select((b, i) => (b, i)).Where(p => (p.b.Id == box || p.b.Id == box + BoxPlanner.Replacement) && (p.b.Seen & view) != 0).Select(p => p.i).DefaultIfEmpty(-1).First(), shown = Array.IndexOf(Request.Views, view);
        if (index < 0 || shown < 0) return null;
        var (x, y) = Origins[shown];
        var (size, placed) = (Plan.Input.Boxes[index], Layout.Boxes[index]);
        var symbol = Plan.Parts.FirstOrDefault(p => p.Box == box)?.In(view)?.At(placed, size);
        var drawn = symbol?.Shapes.Where(s => s is not TextShape).ToArray() is { Length: > 0 } shapes ? Box.Around(shapes.Select(s => s.Bounds)) : new(0, 0, size.Width * Symbol.Module, size.Height * Symbol.Module);
        return new SheetFrame(Furniture.Size).ZoneAt(x + (placed.X * Symbol.Module) + ((drawn.Left + drawn.Right) / 2), y + (placed.Y * Symbol.Module) + ((drawn.Top + drawn.Bottom) / 2));
    }

    /// <summary>The same as one of several.</summary>
    /// <param name="titleBlock">The fields of its title block.</param>
    /// <param name="inSet">Those of all sheets.</param>
    public Sheet Titled(IReadOnlyDictionary<string, string> titleBlock, ImmutableArray<IReadOnlyDictionary<string, string>> inSet)
    {
        var request = Request with { TitleBlock = titleBlock, InSet = inSet };
        return this with { Request = request, Furniture = Furniture.Of(Plan, request, Furniture.Size, joints: Joints) };
    }

    /// <summary>The picture.</summary>
    public Scene Draw()
    {
        var rooms = Rooms;
        var views = Request.Views;
        var origins = Origins;
        var groups = ImmutableArray.CreateBuilder<SceneGroup>();
        groups.AddRange(Furniture.Of(Plan, Request, Furniture.Size, Plan.Style.HasSwitchTable ? ZonesOf : null, Joints ?? ShownJoints.Of(Plan, Layout, views)).Groups);
        for (int i = 0; i < views.Length; i++)
        {
            groups.Add(Furniture.Head(Plan, views[i], rooms.Room(i), Request.Words));
            groups.AddRange(CircuitPicture.Of(Plan, Layout, views[i], origins[i].X, origins[i].Y));
        }
        if (views.Length > 1) groups.Add(Furniture.Divider(rooms));
        return new(Furniture.Size.Width, Furniture.Size.Height, TitleRow.Value(Request.TitleBlock, "title") + What + (Request.IsInSet ? ", sheet " + TitleRow.Value(Request.TitleBlock, "sheet") + ": " + TitleRow.Value(Request.TitleBlock, "supplementary title") : ""), SheetText.Description(Plan.Alteration, Plan.Study, Request.Words, views.Any(v => v != SeenIn.After), views.Any(v => v != SeenIn.Before)), groups.ToImmutable());
    }

    // A part that the last view does not show is found in the one before.
    private string ZonesOf(string load) =>
        Plan.Parts.FirstOrDefault(p => p.PartId.Length > 0 && (load == p.PartId || load.StartsWith(p.PartId + ".", StringComparison.Ordinal))) is not { } part ? ""
        : string.Join(" ", Request.Views.Select(v => ZoneOf(part.Box, v)).OfType<string>().Distinct());

    private string What => Request.Views[0] == SeenIn.Both ? ", before and after over each other"
        : Request.Views.Length > 1 ? ", before and after"
        : Plan.Alteration.Whole.Changes.IsEmpty ? "" : Request.Views[0] == SeenIn.Before ? ", before" : ", after";
}
