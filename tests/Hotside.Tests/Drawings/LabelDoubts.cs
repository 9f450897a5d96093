using Hotside.Circuits;
using Hotside.Drawings;
using Hotside.Symbols.Shapes;

namespace Hotside.Tests.Drawings;

/// <summary>
/// Reads the labels of conductors off the finished picture as a reader does who takes a label for that of the nearest line: tells each that may be taken for another line's.
/// Knows nothing of the layout that placed them.
/// </summary>
internal static class LabelDoubts
{
    private const double M = 10;

    // Nearer to its own line than to another by this much; below a line there is no other so close, nor two labels of lines that meet at an angle.
    private const double Nearer = 0.2 * M, Under = 2 * M, Over = 1.2 * M, Apart = 1.7 * M;

    /// <summary>Every doubtful label, in words.</summary>
    public static IEnumerable<string> Of(Scene scene) => scene.Groups.Where(g => g.View is not null).GroupBy(g => g.View).SelectMany(v => In([.. v]).Select(d => $"{v.Key}: {d}"));

    /// <summary>Every label that stands below a horizontal line of its own, in words.</summary>
    public static IEnumerable<string> BelowTheirLines(Scene scene) =>
        scene.Groups.Where(g => g.View is not null).GroupBy(g => g.View).SelectMany(v => LabelsOf([.. v], RunsOf(v)).Where(l => l.Side == 'b').Select(l => $"{v.Key}: {l}"));

    private static Label[] LabelsOf(SceneGroup[] groups, Run[] runs) => [.. groups.Where(g => g.Classes.Contains("label") && RefOf(g).Length > 0).Select(g => LabelOf(g, runs)).OfType<Label>()];

    private static Run[] RunsOf(IEnumerable<SceneGroup> groups) => [.. groups.Where(g => g.Layer == Layer.Wires).SelectMany(RunsOf).Distinct()];

    private static IEnumerable<string> In(SceneGroup[] groups)
    {
        var runs = RunsOf(groups);
        var labels = LabelsOf(groups, runs);
        foreach (var label in labels)
        {
            foreach (var run in runs.Where(r => r.Of != label.Of && !label.IsBehind(r)))
                if (run.From(label.Box) < label.Run.From(label.Box) + Nearer) yield return $"{label} is as near to {run}";
                else if (label.Side == 'b' && !run.IsDown && run.Box.Top > label.Box.Bottom - 1 && run.Box.Top < label.Box.Bottom + Under && run.IsAlong(label.Box)) yield return $"{label} stands below its line and above {run}";
                else if (label.Side is 'l' or 'r' && !run.IsDown && run.IsAlong(label.Box) && run.From(label.Box) < Over) yield return $"{label} stands right at {run}";
            foreach (var other in labels.Where(o => o.Of != label.Of && o.Side != label.Side && string.CompareOrdinal(label.Of, o.Of) < 0 && Gap(o.Box, label.Box) is var (x, y) && x < Apart && y < Apart)) yield return $"{label} stands beside {other}";
        }
    }

    private static Label? LabelOf(SceneGroup group, Run[] runs)
    {
        var box = Box.Around(group.Shapes.Select(s => s.Bounds));
        // What it shares with another line is drawn once; its own stretch is the nearest.
        if (runs.Where(r => r.Of == RefOf(group)).OrderBy(r => r.From(box)).FirstOrDefault() is not { } own || own.From(box) > M) return null;
        char side = own.IsDown ? (box.Right <= own.Box.Left ? 'l' : 'r') : box.Bottom <= own.Box.Top + 1 ? 't' : 'b';
        return new(RefOf(group), string.Join(' ', group.Shapes.OfType<TextShape>().Select(t => t.Text)), box, own, side);
    }

    private static string RefOf(SceneGroup group) => group.Data.Where(d => d.Name == "ref").Select(d => d.Value).FirstOrDefault(group.Layer == Layer.Wires ? group.Id ?? "" : "");

    // Slants and what is shorter than a module name nothing.
    private static IEnumerable<Run> RunsOf(SceneGroup wire) =>
        from line in wire.Shapes.OfType<PolylineShape>()
        from step in line.Points.Zip(line.Points.Skip(1))
        let box = new Box(Math.Min(step.First.X, step.Second.X), Math.Min(step.First.Y, step.Second.Y), Math.Max(step.First.X, step.Second.X), Math.Max(step.First.Y, step.Second.Y))
        where Math.Min(box.Width, box.Height) == 0 && box.Width + box.Height >= M
        select new Run(RefOf(wire), box);

    private static (double X, double Y) Gap(Box a, Box b) => (Math.Max(0, Math.Max(a.Left - b.Right, b.Left - a.Right)), Math.Max(0, Math.Max(a.Top - b.Bottom, b.Top - a.Bottom)));

    private sealed record Run(string Of, Box Box)
    {
        public bool IsDown => Box.Width == 0;

        public double From(Box label) => Gap(Box, label) is var (x, y) ? Math.Sqrt((x * x) + (y * y)) : 0;

        public bool IsAlong(Box label) => Box.Left < label.Right && label.Left < Box.Right;

        public override string ToString() => $"{Of} at {Numbers.Plain((Box.Left + Box.Right) / 2, 0)},{Numbers.Plain((Box.Top + Box.Bottom) / 2, 0)}";
    }

    private sealed record Label(string Of, string Text, Box Box, Run Run, char Side)
    {
        // What lies beyond its own line is nobody's candidate.
        public bool IsBehind(Run other) => Side switch
        {
            'l' => other.Box.Left >= Run.Box.Left,
            'r' => other.Box.Right <= Run.Box.Left,
            't' => other.Box.Top >= Run.Box.Top,
            _ => other.Box.Bottom <= Run.Box.Top,
        };

        public override string ToString() => $"'{Text}' of {Of} ({Side}) at {Numbers.Plain((Box.Left + Box.Right) / 2, 0)},{Numbers.Plain((Box.Top + Box.Bottom) / 2, 0)}";
    }
}
