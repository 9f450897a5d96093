using System.Collections.Immutable;
using Hotside.Drawings.Marks;
using Hotside.Drawings.Plans;
using Hotside.Layouts;

namespace Hotside.Drawings.Pictures;

/// <summary>The lines of an overlay: an old one shows where nothing that stays or comes lies over it, and a joint is one that either circuit has.</summary>
internal sealed class OverlayLines
{
    private readonly (PlannedLine Line, PlacedWire Placed)[] all;
    private readonly HashSet<(int X, int Y, bool Down)> covered = [];
    private readonly Dictionary<string, ImmutableArray<ImmutableArray<(int X, int Y)>>> runs = new(StringComparer.Ordinal);
    private readonly HashSet<string> hidden = new(StringComparer.Ordinal);

    public OverlayLines(DrawingPlan plan, Layout layout)
    {
        all = [.. plan.Lines.Zip(layout.Wires)];
        foreach (var (_, placed) in all.Where(l => l.Line.After is not null))
            foreach (var step in LineSteps.Walk(placed.Points)) covered.Add(LineSteps.Key(step.From, step.To));
        // Two old lines of one look that lie on each other are dashed once.
        foreach (var look in all.Where(l => l.Line is { After: null, Overlay: not null }).GroupBy(l => l.Line.Overlay!.State))
        {
            var taken = covered.ToHashSet();
            foreach (var (line, placed) in look)
            {
                runs[line.Line] = Free(placed, taken);
                if (Free(placed, covered).IsEmpty) hidden.Add(line.Line);
                foreach (var step in LineSteps.Walk(placed.Points)) taken.Add(LineSteps.Key(step.From, step.To));
            }
        }
    }

    /// <summary>The runs of a line that are painted.</summary>
    public ImmutableArray<ImmutableArray<(int X, int Y)>> Runs(PlannedLine line, PlacedWire placed) => runs.GetValueOrDefault(line.Line, [placed.Points]);

    private static ImmutableArray<ImmutableArray<(int X, int Y)>> Free(PlacedWire placed, HashSet<(int X, int Y, bool Down)> covered)
    {
        var runs = ImmutableArray.CreateBuilder<ImmutableArray<(int X, int Y)>>();
        var run = new List<(int X, int Y)>();
        foreach (var step in LineSteps.Walk(placed.Points))
        {
            if (covered.Contains(LineSteps.Key(step.From, step.To)))
            {
                End();
                continue;
            }
            if (run.Count == 0) run.Add(step.From);
            run.Add(step.To);
        }
        End();
        return runs.ToImmutable();

        void End()
        {
            if (run.Count > 0) runs.Add(Straightened(run));
            run.Clear();
        }
    }

    /// <summary>Whether a moved conductor lay where it lies now all along, so that one label is enough.</summary>
    public bool IsHidden(PlannedLine line) => line.Overlay is { State: LineStyle.WhereItLay } && hidden.Contains(line.Line);

    /// <summary>Whether three arms meet at a dot in the before circuit, or in the after circuit.</summary>
    public bool IsJoint(PlacedDot dot) => Arms(dot, l => l.Before is not null) > 2 || Arms(dot, l => l.After is not null) > 2;

    /// <summary>Whether wires met at a dot before and do no longer.</summary>
    public bool WasJoint(PlacedDot dot) => Arms(dot, l => l.After is not null) < 3;

    private int Arms(PlacedDot dot, Func<PlannedLine, bool> isThere) =>
        all.Where(l => isThere(l.Line)).SelectMany(l => LineSteps.Walk(l.Placed.Points)).SelectMany(s => new[] { (Here: s.From, There: s.To), (Here: s.To, There: s.From) })
            .Where(a => a.Here == (dot.X, dot.Y)).Select(a => a.There).Distinct().Count();

    private static ImmutableArray<(int X, int Y)> Straightened(List<(int X, int Y)> run) =>
        [.. run.Where((p, i) => i == 0 || i == run.Count - 1 || (run[i - 1].X == p.X) != (run[i + 1].X == p.X))];
}
