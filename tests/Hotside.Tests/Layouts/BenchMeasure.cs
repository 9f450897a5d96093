using Hotside.Layouts;
using Hotside.Symbols;

namespace Hotside.Tests.Layouts;

/// <summary>Crossings and bends of a layout, before and after added, counted from its lines.</summary>
internal sealed record BenchMeasure(int Crossings, int Bends, int Drawn)
{
    public static BenchMeasure Of(LayoutInput input, Layout layout)
    {
        int crossings = 0, bends = 0, drawn = 0;
        foreach (var view in new[] { SeenIn.Before, SeenIn.After })
        {
            var steps = new Dictionary<(int X, int Y), HashSet<(int Dx, int Dy)>>();
            foreach (var (wire, line) in input.Wires.Zip(layout.Wires).Where(p => (p.First.Seen & view) != 0))
            {
                drawn++;
                for (int i = 1; i < line.Points.Length; i++) Walk(steps, line.Points[i - 1], line.Points[i]);
            }
            // Four arms are a crossing: a net never has them, which the check sees to. A corner is two arms at a right angle; a shared one counts once.
            crossings += steps.Values.Count(a => a.Count == 4);
            bends += input.Wires.Zip(layout.Wires).Where(p => (p.First.Seen & view) != 0).SelectMany(p => Corners(p.Second)).Distinct().Count();
        }
        return new(crossings, bends, drawn);
    }

    private static IEnumerable<(int X, int Y)> Corners(PlacedWire line) => line.Points.Skip(1).Take(line.Points.Length - 2);

    private static void Walk(Dictionary<(int X, int Y), HashSet<(int, int)>> steps, (int X, int Y) a, (int X, int Y) b)
    {
        int dx = Math.Sign(b.X - a.X), dy = Math.Sign(b.Y - a.Y);
        for (var at = a; at != b; at = (at.X + dx, at.Y + dy))
            foreach (var (place, direction) in new[] { (at, (dx, dy)), ((at.X + dx, at.Y + dy), (-dx, -dy)) })
            {
                if (!steps.TryGetValue(place, out var arms)) steps[place] = arms = [];
                arms.Add(direction);
            }
    }
}
