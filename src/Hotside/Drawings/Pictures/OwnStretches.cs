using System.Collections.Immutable;
using Hotside.Drawings.Marks;
using Hotside.Layouts;

namespace Hotside.Drawings.Pictures;

/// <summary>
/// Where conductors share a stretch, on the way to one stud, it is drawn once, as the wire that stays, if one does: over each other they would look thicker, and dashes would fill each other's gaps.
/// </summary>
internal static class OwnStretches
{
    // What shows on a shared stretch: what stays before what moves, what is there before what leaves.
    private static readonly LineStyle[] Order = [LineStyle.Kept, LineStyle.Moved, LineStyle.Renewed, LineStyle.New, LineStyle.WhereItLay, LineStyle.TakenOut];

    /// <summary>The stretches that each line shows of itself; all of it where nothing else would be left.</summary>
    /// <param name="lines">Points and look of each line.</param>
    /// <param name="bars">Rails and joints that are drawn as bars: these stand for what runs along them.</param>
    public static ImmutableArray<ImmutableArray<ImmutableArray<(int X, int Y)>>> Of(ImmutableArray<(ImmutableArray<(int X, int Y)> Points, LineStyle Style)> lines, IEnumerable<ImmutableArray<(int X, int Y)>> bars)
    {
        var barred = bars.SelectMany(b => LineSteps.Of(b)).ToHashSet();
        var shown = new Dictionary<(int X, int Y, bool Down), int>();
        for (int line = 0; line < lines.Length; line++)
            foreach (var (from, to) in LineSteps.Walk(lines[line].Points))
            {
                var key = LineSteps.Key(from, to);
                if (!shown.TryGetValue(key, out int other) || Rank(lines[line].Style) < Rank(lines[other].Style)) shown[key] = line;
            }
        return [.. lines.Select((l, line) => Own(l.Points, step => !barred.Contains(step) && shown[step] == line))];
    }

    private static int Rank(LineStyle style) => Array.IndexOf(Order, style);

    private static ImmutableArray<ImmutableArray<(int X, int Y)>> Own(ImmutableArray<(int X, int Y)> points, Predicate<(int X, int Y, bool Down)> isOwn)
    {
        var stretches = new List<List<(int X, int Y)>>();
        bool open = false;
        foreach (var (from, to) in LineSteps.Walk(points))
        {
            bool own = isOwn(LineSteps.Key(from, to));
            if (own && !open) stretches.Add([from]);
            if (own) Extend(stretches[^1], to);
            open = own;
        }
        return stretches.Count == 0 ? [points] : [.. stretches.Select(s => s.ToImmutableArray())];
    }

    private static void Extend(List<(int X, int Y)> line, (int X, int Y) to)
    {
        if (line.Count > 1 && ((line[^2].X == line[^1].X && line[^1].X == to.X) || (line[^2].Y == line[^1].Y && line[^1].Y == to.Y))) line[^1] = to;
        else line.Add(to);
    }
}
