using Hotside.Circuits;
using Hotside.Drawings;
using Hotside.Symbols.Shapes;

namespace Hotside.Tests.Drawings;

/// <summary>
/// Measures the finished picture, shape by shape, and knows nothing of the layout that made it: whatever lies over something it does not belong to is told.
/// </summary>
internal static class Clearance
{
    // What the eye takes for a touch, in units of 0.25 mm.
    private const double Touch = 0.75, Deep = 0.3;

    /// <summary>Every overlap in the picture, in words.</summary>
    public static IEnumerable<string> Faults(Scene scene)
    {
        List<Ink> inks = [.. scene.Groups.SelectMany((g, i) => Inks(g, i))];
        List<Ink> texts = [.. inks.Where(i => i.Kind == InkKind.Text)], marks = [.. inks.Where(i => i.Kind == InkKind.Mark)];
        List<Ink> wires = [.. inks.Where(i => i.Kind == InkKind.Wire)], bodies = [.. Whole(InkKind.Body, inks)], signs = [.. Whole(InkKind.Sign, inks)];
        foreach (var (a, b) in Pairs(texts).Where(p => p.A.Box.Overlaps(p.B.Box, Deep))) yield return $"{a} over {b}";
        foreach (var (a, b) in Pairs(marks).Where(p => p.A.Box.Overlaps(p.B.Box, Deep))) yield return $"{a} over {b}";
        foreach (var (a, b) in Pairs(signs).Where(p => p.A.Box.Overlaps(p.B.Box, -Touch) && p.A.Box.Left != p.B.Box.Left)) yield return $"{a} over {b}";
        foreach (var (a, b) in Pairs(bodies).Where(p => p.A.Box.Overlaps(p.B.Box, Deep))) yield return $"{a} over {b}";
        foreach (var text in texts)
            foreach (var wire in wires.Where(w => w.Box.Overlaps(text.Box, -Touch))) yield return $"{wire} through {text}";
        foreach (var mark in marks)
            foreach (var wire in wires.Where(w => w.Group != mark.Group && Cuts(w.Box, mark.Box))) yield return $"{wire} through {mark}";
        foreach (var text in texts.Concat(marks))
            foreach (var body in bodies.Concat(signs).Where(b => b.Group != text.Group && (text.Kind == InkKind.Mark ? Cuts(b.Box, text.Box) : b.Box.Overlaps(text.Box, Deep)))) yield return $"{text} over {body}";
        foreach (var body in bodies)
            foreach (var wire in wires.Where(w => Inside(w.Box, body.Box))) yield return $"{wire} through {body}";
    }

    private static IEnumerable<(Ink A, Ink B)> Pairs(List<Ink> inks)
    {
        for (int i = 0; i < inks.Count; i++)
            for (int j = i + 1; j < inks.Count; j++)
                yield return (inks[i], inks[j]);
    }

    // A triangle is cut where its lower half is, or its apex deep down.
    private static bool Cuts(Box wire, Box mark)
    {
        double middle = (mark.Left + mark.Right) / 2, quarter = mark.Width / 4;
        return wire.Overlaps(mark with { Top = (mark.Top + mark.Bottom) / 2 }, Deep) || wire.Overlaps(new(middle - quarter, mark.Top + 2, middle + quarter, mark.Bottom), Deep);
    }

    // A wire may end at a body's edge and run along none.
    private static bool Inside(Box wire, Box body) => wire.Overlaps(body, 6);

    private static IEnumerable<Ink> Whole(InkKind kind, List<Ink> inks) =>
        inks.Where(i => i.Kind == kind).GroupBy(i => i.Group).Select(g => new Ink(kind, g.Key, g.First().Name, Box.Around(g.Select(i => i.Box))));

    // A slanted line fills but a little of the box around it.
    private static IEnumerable<(Point From, Point To)> Pieces(Point from, Point to)
    {
        int pieces = from.X == to.X || from.Y == to.Y ? 1 : (int)Math.Ceiling(Math.Abs(to.X - from.X));
        Point At(int i) => new(from.X + ((to.X - from.X) * i / pieces), from.Y + ((to.Y - from.Y) * i / pieces));
        return Enumerable.Range(0, pieces).Select(i => (At(i), At(i + 1)));
    }

    private static IEnumerable<Ink> Inks(SceneGroup group, int index)
    {
        string name = group.Id ?? string.Join(' ', group.Classes);
        foreach (var shape in group.Shapes)
            switch (shape)
            {
                case TextShape { Text.Length: > 0 } text:
                    yield return new(InkKind.Text, index, $"'{text.Text}' of {name}", text.Bounds);
                    break;
                case PolylineShape { Closed: true, Points.Length: 3, Fill: ColourRole.Paper } triangle:
                    yield return new(InkKind.Mark, index, "triangle of " + name, triangle.Bounds);
                    break;
                case PolylineShape line when group.Layer == Layer.Wires || (group.Layer == Layer.Boxes && line.Points.Length == 2):
                    foreach (var (from, to) in line.Points.Zip(line.Points.Skip(1)).SelectMany(s => Pieces(s.First, s.Second)))
                    {
                        double half = (line.Pen?.Width ?? 0) / 2;
                        yield return new(InkKind.Wire, index, name, new(Math.Min(from.X, to.X) - half, Math.Min(from.Y, to.Y) - half, Math.Max(from.X, to.X) + half, Math.Max(from.Y, to.Y) + half));
                    }
                    break;
                // A badge belongs to the text of its part.
                case RectangleShape { Fill: ColourRole.Paper, Pen: { Rank: StrokeRank.Thin, Colour: ColourRole.Ink } } or PolylineShape { Pen: { Rank: StrokeRank.Change, Colour: ColourRole.Ink } }:
                    yield return new(InkKind.Other, index, name, shape.Bounds);
                    break;
                default:
                    if (group.Layer == Layer.Parts)
                        yield return new(group.Classes.Contains("chassis") ? InkKind.Sign : IsSymbol(group) ? InkKind.Body : InkKind.Other, index, name, shape.Bounds);
                    break;
            }
    }

    // A node's sign is a dot on its wires.
    private static bool IsSymbol(SceneGroup group) => group.Shapes.Any(s => s is not TextShape and not CircleShape);

    private enum InkKind { Text, Mark, Wire, Body, Sign, Other }

    private sealed record Ink(InkKind Kind, int Group, string Name, Box Box)
    {
        public override string ToString() =>
            $"{Name} at {Numbers.Plain((Box.Left + Box.Right) / 2, 0)},{Numbers.Plain((Box.Top + Box.Bottom) / 2, 0)}";
    }
}
