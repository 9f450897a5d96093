using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Drawings.Marks;
using Hotside.Drawings.Plans;
using Hotside.Layouts;
using Hotside.Symbols;
using Hotside.Symbols.Shapes;
using Hotside.Wording;
using Look = Hotside.Drawings.Marks.LineStyle;
using Side = Hotside.Layouts.Side;

namespace Hotside.Drawings.Pictures;

/// <summary>One circuit, before or after, drawn at a place on the sheet.</summary>
internal sealed class CircuitPicture
{
    private const double M = Symbol.Module;

    private readonly DrawingPlan plan;
    private readonly Layout layout;
    private readonly SeenIn view;
    private readonly double x, y;
    private readonly string prefix;
    private readonly Circuit circuit;
    private readonly Dictionary<string, PlannedPart> parts;
    private readonly Dictionary<string, PlannedLine> lines;
    private readonly OverlayLines? overlay;
    private readonly ShownLines shown;

    private CircuitPicture(DrawingPlan plan, Layout layout, SeenIn view, double x, double y)
    {
        (this.plan, this.layout, this.view, this.x, this.y) = (plan, layout, view, x, y);
        prefix = view switch { SeenIn.Before => "b-", SeenIn.After => "a-", _ => "o-" };
        circuit = view == SeenIn.Before ? plan.Alteration.Before : plan.Alteration.After;
        parts = plan.Parts.ToDictionary(p => p.Box, StringComparer.Ordinal);
        lines = plan.Lines.ToDictionary(l => l.Line, StringComparer.Ordinal);
        overlay = view == SeenIn.Both ? new(plan, layout) : null;
        shown = new(plan, layout, view);
    }

    /// <summary>The groups of a view, the layout's origin at a place in units.</summary>
    public static IEnumerable<SceneGroup> Of(DrawingPlan plan, Layout layout, SeenIn view, double x, double y)
    {
        var picture = new CircuitPicture(plan, layout, view, x, y);
        var shown = view switch { SeenIn.Before => View.Before, SeenIn.After => View.After, _ => View.Overlay };
        IEnumerable<SceneGroup> groups = [.. picture.Bands(), .. picture.Rails(), .. picture.Wires(), .. picture.Parts(), .. picture.Dots(), .. picture.Marks()];
        return groups.Select(g => g with { View = shown });
    }

    // The whole of what is shown: a wire that an excerpt leaves out is there.
    private Circuit[] Shown => FreeTerminals.CircuitsOf(plan, view);

    // The rail that an isolated system has for its return.
    private PlannedPart? Bus => plan.Parts.FirstOrDefault(p => p.Role == PlannedRole.ReturnRail && p.In(view) is not null);

    // Below everything else.
    private IEnumerable<SceneGroup> Bands()
    {
        if (plan.Figures is null) yield break;
        foreach (var (_, line, placed) in shown.All)
            if (line.In(view) is { IsLive: true })
                yield return new(Layer.Boxes, LiveBand.Of([.. shown.Slants.Along(placed.Points).Select(p => new Point(x + (p.X * M), y + (p.Y * M)))])) { Classes = ["live"], AriaHidden = true };
    }

    private IEnumerable<SceneGroup> Rails()
    {
        foreach (var rail in layout.Rails.Where(r => (r.Seen & view) != 0))
        {
            string? id = rail.Box ?? plan.FeedRail;
            var planned = id is null ? null : plan.Parts.FirstOrDefault(p => p.Box == id);
            if (planned?.In(view) is not { } part) continue;
            double railY = y + (rail.Y * M), first = x + ((rail.X1 + 1) * M), last = x + ((rail.X2 - 1) * M);
            yield return Group(Layer.Boxes, planned, part, [.. Rail.Line(first, last, railY, part.Look), .. rail.Box is null ? FeedName(planned, part, first, railY) : Name(rail.Box, part)]);
        }
        foreach (var planned in plan.Parts.Where(p => p.In(view) is not null))
            if (shown.BarsOf(planned) is { IsEmpty: false } bars)
                yield return new(Layer.Boxes, [.. bars.SelectMany(b => Rail.Bar((x + (b[0].X * M), y + (b[0].Y * M)), (x + (b[1].X * M), y + (b[1].Y * M)), planned.In(view)!.Look))]) { Classes = ["joint"], Data = [("ref", planned.PartId)] };
        if (Bus is { } bus)
        {
            double[] ends = [.. Ends(EndKind.Chassis).Select(e => x + (e.X * M))];
            double busY = y + (layout.ChassisY * M);
            if (ends.Length > 0)
                yield return Group(Layer.Boxes, bus, bus.In(view)!, [.. Rail.Line(ends.Min(), ends.Max(), busY), .. Rail.Label(plan.Words.Rail(bus.In(view)!.Part), "return", null, plan.Lettering).At(ends.Min() - Rail.Overhang, busY + 6)]);
        }
    }

    // Nothing is above the feed rail.
    private ImmutableArray<Shape> FeedName(PlannedPart planned, PartView part, double first, double railY)
    {
        var label = Rail.Label(plan.Words.Rail(part.Part), Potential(), ChangeLook.NumberOf(planned.PartId, plan.Alteration), plan.Lettering);
        return [.. label.At(first - Rail.Overhang, railY - 7 - label.Height)];
    }

    // An inner rail lies amid lines and parts: the layout found a place for its name.
    private ImmutableArray<Shape> Name(string box, PartView part)
    {
        var placed = layout.Boxes.First(b => b.Id == box);
        return [.. part.Text.At(x + (placed.TextX * M), y + (placed.TextY * M))];
    }

    private string Potential() => SheetText.Potentials(PotentialIn(view == SeenIn.Both ? plan.Alteration.Before : circuit), PotentialIn(circuit));

    private string PotentialIn(Circuit of) =>
        RailPotential.Of(plan.FeedRail!, of) is { Length: > 0 } behind ? behind : of.Sources.FirstOrDefault(s => s.Element.When is null) is { } source ? SheetText.Potential(source) : "";

    private IEnumerable<(int X, int Y, LineView View)> Ends(EndKind kind) =>
        from line in shown.All
        from end in new[] { (line.Wire.From, Point: line.Placed.Points[0]), (line.Wire.To, Point: line.Placed.Points[^1]) }
        where end.Item1.Kind == kind
        select (end.Point.X, end.Point.Y, line.Line.In(view)!);

    private IEnumerable<SceneGroup> Wires()
    {
        var stretches = OwnStretches.Of([.. shown.All.Select(l => (l.Placed.Points, l.Line.In(view)!.State))], shown.Bars);
        // What goes is painted first: what stays and what comes lies over it.
        foreach (var ((_, line, placed), own) in shown.All.Zip(stretches).OrderBy(p => overlay is not null && p.First.Line.After is null ? 0 : 1))
        {
            var state = line.In(view)!;
            var runs = line.After is null && overlay is not null ? overlay.Runs(line, placed) : own;
            yield return new(Layer.Wires, [.. runs.SelectMany(run => ConductorLine.Of([.. shown.Slants.Along(run).Select(p => new Point(x + (p.X * M), y + (p.Y * M)))], state.State))])
            {
                Id = line.Conductor is null ? prefix + "lead-" + line.Line : prefix + "wire-" + line.Conductor + (overlay is not null && line.Line != line.Conductor ? "-was" : ""),
                Classes = ["wire", ClassOf(state.State)],
                Data = Data(line.Conductor, state.Number, ClassOf(state.State)),
                Title = state.Title,
            };
        }
    }

    private IEnumerable<SceneGroup> Parts()
    {
        foreach (var (box, placed) in plan.Input.Boxes.Zip(layout.Boxes))
        {
            bool isReplacement = box.Id.EndsWith(BoxPlanner.Replacement, StringComparison.Ordinal);
            string name = isReplacement ? box.Id[..^BoxPlanner.Replacement.Length] : box.Id;
            if ((box.Seen & view) == 0 || parts[name] is not { } planned || planned.In(view, isReplacement) is not { } part || planned.Role is PlannedRole.Rail or PlannedRole.FeedRail) continue;
            yield return Group(Layer.Parts, planned, part, planned.Role == PlannedRole.Symbol ? SymbolShapes(box, placed, part) : NodeShapes(planned, placed, part));
        }
        if (Bus is null)
            foreach (var end in Ends(EndKind.Chassis))
                yield return new(Layer.Parts, ChassisSign.At(x + (end.X * M), y + (end.Y * M), end.View.State switch { Look.New => PartStyle.New, Look.TakenOut => PartStyle.TakenOut, Look.WhereItLay => PartStyle.Moved, _ => PartStyle.Kept }))
                {
                    Classes = ["part", "chassis"],
                };
    }

    private ImmutableArray<Shape> SymbolShapes(LayoutBox box, PlacedBox placed, PartView part)
    {
        var symbol = part.At(placed, box);
        double left = x + (placed.X * M), top = y + (placed.Y * M);
        var text = placed.TextOnLeft ? part.TextLeft : part.Text;
        double textX = x + (placed.TextX * M) + (placed.TextOnLeft ? (box.TextWidth * M) - text.Width : -placed.FreeOnRight(view, box) * M);
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        shapes.AddRange(PartLook.Apply(symbol.At(left, top), part.Look));
        shapes.AddRange(PartLook.Apply(FreeTerminals.Of(symbol, part.Part, Shown).Select(r => r.Shifted(left, top)), part.Look));
        if (part.IsReversed) shapes.AddRange(ReversalArrows.Beside(symbol.At(left, top), top + (symbol.Height * M / 2)));
        shapes.AddRange(text.At(textX, y + (placed.TextY * M)));
        return shapes.ToImmutable();
    }

    private ImmutableArray<Shape> NodeShapes(PlannedPart planned, PlacedBox placed, PartView part)
    {
        double atX = x + (placed.X * M), atY = y + (placed.Y * M);
        var colour = PartLook.ColourOf(part.Look) is ColourRole.Ink ? ColourRole.Wire : PartLook.ColourOf(part.Look);
        Shape sign = planned.Role == PlannedRole.Stud
            ? new CircleShape((atX, atY), 3, new(StrokeRank.Medium, ColourRole.Ink), ColourRole.Paper)
            : JointDot.At(atX, atY, colour);
        return [sign, .. part.Text.At(x + (placed.TextX * M), y + (placed.TextY * M))];
    }

    private IEnumerable<SceneGroup> Dots()
    {
        var taps = layout.Rails.Where(r => (r.Seen & view) != 0).SelectMany(r => Taps(r).Distinct().Select(x => (X: x, Rail: r))).ToArray();
        // A stud is a ring, and that is enough.
        var studs = plan.Input.Boxes.Zip(layout.Boxes).Where(b => (b.First.Seen & view) != 0 && parts.GetValueOrDefault(b.First.Id) is { Role: PlannedRole.Stud }).Select(b => (b.Second.X, b.Second.Y)).ToHashSet();
        foreach (var dot in layout.Dots.Where(d => (d.Seen & view) != 0 && overlay?.IsJoint(d) != false && !studs.Contains((d.X, d.Y)) && !taps.Any(t => t.X == d.X && t.Rail.Y == d.Y)))
            yield return new(Layer.Dots, [overlay?.WasJoint(dot) == true ? JointDot.Was(x + (dot.X * M), y + (dot.Y * M)) : DotAt(dot.X, dot.Y)]) { Classes = ["dot"] };
        // A rail shows each of its taps.
        foreach (var (at, rail) in taps)
            yield return new(Layer.Dots, [JointDot.At(x + (at * M), y + (rail.Y * M), ColourOf(rail), onThick: ColourOf(rail) != ColourRole.Ink)]) { Classes = ["dot"] };
        if (Bus is not null)
            foreach (int tap in Ends(EndKind.Chassis).Select(e => e.X).Distinct())
                yield return new(Layer.Dots, [JointDot.At(x + (tap * M), y + (layout.ChassisY * M), ColourRole.Ink)]) { Classes = ["dot"] };
    }

    private ColourRole ColourOf(PlacedRail rail) => plan.Parts.FirstOrDefault(p => p.Box == (rail.Box ?? plan.FeedRail))?.In(view) is { } part ? PartLook.ColourOf(part.Look) : ColourRole.Ink;

    private IEnumerable<int> Taps(PlacedRail rail) =>
        from line in shown.All
        where rail.Box is null ? line.Wire.From.Kind == EndKind.Feed || line.Wire.To.Kind == EndKind.Feed : line.Wire.From.Box == rail.Box || line.Wire.To.Box == rail.Box
        // Where the line leaves the rail: the last of its points at the rail's height, walked from the rail.
        let points = (rail.Box is null ? line.Wire.From.Kind == EndKind.Feed : line.Wire.From.Box == rail.Box) ? line.Placed.Points : line.Placed.Points.Reverse().ToImmutableArray()
        select points.TakeWhile(p => p.Y == rail.Y).Select(p => p.X).DefaultIfEmpty(points[0].X).Last();

    // A joint of new wires only is new; any other has the colour of wires.
    private CircleShape DotAt(int dotX, int dotY)
    {
        var through = shown.All.Where(l => Passes(l.Placed, dotX, dotY)).Select(l => l.Line.In(view)!.State).Distinct().ToArray();
        var colours = through.Select(ConductorLine.ColourOf).Distinct().ToArray();
        var (atX, atY) = shown.Slants.PlaceOf((dotX, dotY));
        return JointDot.At(x + (atX * M), y + (atY * M), colours.Length == 1 ? colours[0] : colours.Contains(ColourRole.Wire) ? ColourRole.Wire : ColourRole.Ink, through.Any(ConductorLine.IsThick));
    }

    private static bool Passes(PlacedWire wire, int dotX, int dotY) =>
        wire.Points.Zip(wire.Points.Skip(1)).Any(s => Math.Min(s.First.X, s.Second.X) <= dotX && dotX <= Math.Max(s.First.X, s.Second.X)
            && Math.Min(s.First.Y, s.Second.Y) <= dotY && dotY <= Math.Max(s.First.Y, s.Second.Y));

    private IEnumerable<SceneGroup> Marks()
    {
        var wires = plan.Input.Wires.ToDictionary(w => w.Id, StringComparer.Ordinal);
        foreach (var label in layout.Labels.Concat(layout.LongLines))
        {
            var line = lines[label.Wire];
            if (line.In(view) is not { } shown || overlay?.IsHidden(line) == true) continue;
            var side = !label.OnVertical ? LabelSide.Along : label.Side == Side.Left ? LabelSide.Left : LabelSide.Right;
            var piece = WireLabel.Of(shown.LabelNaming(label.Names), shown.Number, side, plan.Lettering);
            if (piece.Width == 0) continue;
            // Both views have one room for the label: it stands in it next to the line.
            double freeX = (label.Width * M) - piece.Width, freeY = (label.Height * M) - piece.Height;
            double atX = (label.X * M) + (side == LabelSide.Left ? freeX : side == LabelSide.Along ? freeX / 2 : 0);
            // Beside a vertical run both views have one baseline.
            double foot = (wires[label.Wire].LabelFoot * M) - WireLabel.Foot(shown.Number, plan.Lettering);
            double atY = (label.Y * M) + (side == LabelSide.Along ? (label.Side == Side.Top ? freeY : 0) : freeY - foot);
            yield return new(Layer.Marks, piece.At(x + atX, y + atY)) { Classes = ["label", ClassOf(shown.State)], Data = Data(line.Conductor, shown.Number, ClassOf(shown.State)) };
        }
    }

    private SceneGroup Group(Layer layer, PlannedPart planned, PartView part, ImmutableArray<Shape> shapes)
    {
        string change = part.Look.ToString().ToLowerInvariant();
        if (planned.PartId.Length == 0) return new(layer, shapes) { Classes = ["part", planned.Box.Split(' ')[0]] };
        string numbers = plan.Alteration.LabelsOf(planned.PartId);
        return new(layer, shapes)
        {
            Id = prefix + "part-" + planned.Box,
            Classes = ["part", change],
            Data = [("ref", planned.PartId), ("kind", part.Part.Kind.Id), ("change", change), .. numbers.Length == 0 ? Array.Empty<(string, string)>() : [("number", numbers)]],
            Title = string.Join(", ", new[] { planned.PartId, plan.Words.Title(part.Part), string.Join(", ", part.Part.Ratings.Select(QuantityWords.Of)) }.Where(t => t.Length > 0)),
        };
    }

    private static string ClassOf(Look state) => state switch
    {
        Look.TakenOut => "out",
        Look.New => "new",
        Look.Moved => "moved",
        Look.Renewed => "renewed",
        Look.WhereItLay => "old-lie",
        _ => "kept",
    };

    private static ImmutableArray<(string, string)> Data(string? conductor, ChangeNumber? number, string change) =>
        conductor is null ? [] : [("ref", conductor), ("change", change), .. number is null ? Array.Empty<(string, string)>() : [("number", number.Text)]];
}
