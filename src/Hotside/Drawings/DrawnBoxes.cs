using Hotside.Symbols.Shapes;

namespace Hotside.Drawings;

/// <summary>Reads the places of parts and conductors off a finished picture.</summary>
internal static class DrawnBoxes
{
    private const double UnitsPerMillimetre = 4;

    public static IEnumerable<DrawnBox> Of(Scene scene)
    {
        foreach (var layer in Enum.GetValues<Layer>())
            foreach (var group in scene.In(layer))
            {
                if (group.View is not { } view || group.Data.FirstOrDefault(d => d.Name == "ref").Value is not { } id || group.Shapes.IsEmpty) continue;
                foreach (var box in group.Layer == Layer.Wires ? Runs(group) : [Box.Around(group.Shapes.Select(s => s.Bounds))])
                    yield return new(id, view, box.Left / UnitsPerMillimetre, box.Top / UnitsPerMillimetre, box.Width / UnitsPerMillimetre, box.Height / UnitsPerMillimetre);
            }
    }

    // A line may be painted in several strokes over each other, with pieces that close its corners: what lies within another run is none.
    private static Box[] Runs(SceneGroup wire)
    {
        Box[] all = [.. wire.Shapes.OfType<PolylineShape>().SelectMany(l => l.Points.Zip(l.Points.Skip(1), (a, b) => Run(a, b, (l.Pen?.Width ?? 0) / 2))).Distinct()];
        return [.. all.Where(b => !all.Any(o => o != b && o.Contains(b)))];
    }

    private static Box Run(Point a, Point b, double half) =>
        new(Math.Min(a.X, b.X) - half, Math.Min(a.Y, b.Y) - half, Math.Max(a.X, b.X) + half, Math.Max(a.Y, b.Y) + half);
}
