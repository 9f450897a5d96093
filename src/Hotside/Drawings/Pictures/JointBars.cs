using System.Collections.Immutable;
using Hotside.Layouts;

namespace Hotside.Drawings.Pictures;

/// <summary>
/// A splice or stud whose wires meet in several places is drawn as a bar through them: the stretch that they share is the joint itself, and no wire that a reader would look for.
/// </summary>
internal static class JointBars
{
    /// <summary>The bar of a joint as runs of points, level but for steps aside; none where all meet in one place.</summary>
    /// <param name="wires">The lines that end at the joint.</param>
    public static ImmutableArray<ImmutableArray<(int X, int Y)>> Of(IReadOnlyList<ImmutableArray<(int X, int Y)>> wires)
    {
        var shared = wires.SelectMany(w => LineSteps.Of(w).Distinct()).CountBy(s => s).Where(s => s.Value > 1).Select(s => s.Key).ToHashSet();
        // A way up or down that leads to one pin is a lead; between two level stretches it is a step aside.
        var level = shared.Where(s => !s.Down).SelectMany(s => new[] { (s.X, s.Y), (s.X + 1, s.Y) }).ToHashSet();
        int[] columns = [.. shared.Where(s => s.Down).Select(s => s.X).Distinct().Order()];
        var runs = ImmutableArray.CreateBuilder<ImmutableArray<(int X, int Y)>>();
        foreach (int y in shared.Where(s => !s.Down).Select(s => s.Y).Distinct().Order())
            foreach (var (from, to) in Runs([.. shared.Where(s => !s.Down && s.Y == y).Select(s => s.X).Order()])) runs.Add([(from, y), (to, y)]);
        foreach (int x in columns)
            foreach (var (from, to) in Runs([.. shared.Where(s => s.Down && s.X == x).Select(s => s.Y).Order()]))
                if (level.Contains((x, from)) && level.Contains((x, to))) runs.Add([(x, from), (x, to)]);
        return runs.ToImmutable();
    }

    private static IEnumerable<(int From, int To)> Runs(int[] steps)
    {
        for (int i = 0; i < steps.Length;)
        {
            int first = i;
            while (++i < steps.Length && steps[i] == steps[i - 1] + 1) { }
            yield return (steps[first], steps[i - 1] + 1);
        }
    }
}
