using System.Collections.Immutable;

namespace Hotside.Diagnoses;

/// <summary>The readings that can be taken on a piece, each with the trouble it is.</summary>
internal sealed class TestList
{
    // Less current makes no drop that a meter shows.
    private const double LeastAmperes = 0.05;

    private readonly Meter meter;
    private readonly FaultDictionary dictionary;
    private readonly Bench bench;
    private readonly Dictionary<int, BenchPoint> points;
    private readonly Effort effort;

    /// <summary>The readings of a piece.</summary>
    public TestList(Meter meter)
    {
        this.meter = meter;
        dictionary = meter.Dictionary;
        bench = dictionary.Bench;
        effort = bench.Effort;
        points = bench.Points.ToDictionary(p => p.Node);
        All = [.. Make()];
    }

    /// <summary>Them all, in a fixed order: settings in their order; looks, volts, drops; then fuses, then ohms.</summary>
    public ImmutableArray<(Test Test, double Effort)> All { get; }

    /// <summary>Where the lead of a node goes; <see langword="null"/> where no terminal is within reach.</summary>
    public BenchPoint? PointOf(int node) => points.GetValueOrDefault(node);

    private IEnumerable<(Test, double)> Make()
    {
        for (int s = 0; s < dictionary.Settings.Count; s++)
        {
            double person = dictionary.Settings[s].NeedsTwo || dictionary.Settings[s].Cranks ? effort.SecondPerson : 0;
            for (int w = 0; w < meter.Watched.Length; w++)
                if (meter.Watched[w].IsSeen && IsOf(s, w)) yield return (new LookTest(s, w), effort.Look + (dictionary.Settings[s].Cranks ? effort.SecondPerson : 0));
            foreach (var point in bench.Points) yield return (new VoltsTest(s, point.Node, -1), effort.Volts + point.Reach + person);
            foreach (var (a, b) in Drops(s)) yield return (new VoltsTest(s, a, b), effort.Drop + Math.Max(Reach(a), Reach(b)) + person);
        }
        foreach (int f in dictionary.Pullable) yield return (new FuseTest(f), effort.Fuse);
        for (int s = 0; s < dictionary.Settings.Count; s++)
        {
            if (dictionary.Settings[s].Cranks || dictionary.Settings[s].Runs) continue;
            double person = dictionary.Settings[s].NeedsTwo ? effort.SecondPerson : 0;
            foreach (var point in bench.Points.Where(p => !bench.IsShared(p.Node))) yield return (new OhmsTest(s, point.Node, -1), effort.Ohms + point.Reach + person);
            foreach (int f in dictionary.Pullable)
                foreach (int node in new[] { dictionary.Fuses[f].A, dictionary.Fuses[f].B }.Where(n => points.ContainsKey(n) && !bench.IsShared(n)))
                    yield return (new OhmsTest(s, node, f), effort.OhmsPulled + person);
        }
    }

    // What rests is looked at in the setting of rest only, unless it should be on.
    private bool IsOf(int setting, int watched) => setting == 0 || Looks.Sound(dictionary, setting, meter.Watched[watched]) != LookState.Off || IsSister(setting, watched);

    // A lamp that should stay off while its neighbor is on, tells of crossed and shared things.
    private bool IsSister(int setting, int watched) => dictionary.Settings[setting].Positions.Length > 0 && meter.Watched[watched].Variable < 0;

    private IEnumerable<(int A, int B)> Drops(int setting)
    {
        HashSet<(int, int)> seen = [];
        for (int e = 0; e < bench.Circuit.Conductors.Length; e++)
            if (Pair(e) is { } pair) yield return pair;
        foreach (var element in bench.Model.Elements.Where(e => e.Element.IsInLine && e.EdgeCount > 0))
            if (Pair(element.FirstEdge) is { } pair) yield return pair;

        (int, int)? Pair(int edge)
        {
            var (a, b) = bench.Model.Network.Edges[edge];
            if (a == b || Math.Abs(dictionary.HealthyAmperes(setting, edge)) < LeastAmperes) return null;
            bool isReachable = (a < 0 || points.ContainsKey(a)) && (b < 0 || points.ContainsKey(b));
            // To the chassis it is the reading of the point itself.
            return isReachable && a >= 0 && b >= 0 && seen.Add((a, b)) ? (a, b) : null;
        }
    }

    private double Reach(int node) => node < 0 ? 1 : points[node].Reach;
}
