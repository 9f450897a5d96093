using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Diagnoses;

namespace Hotside.CheckSheets;

/// <summary>Rows that stand on every sheet of a piece: grounds, the hot cable, each fuse's load side, the battery; on a full one, something of each changed wire.</summary>
internal sealed class MandatoryRows(DiagnosisBench bench)
{
    private readonly Bench piece = bench.Dictionary.Bench;

    /// <summary>The rows.</summary>
    public ImmutableArray<Test> All =>
    [
        .. Grounds().Select(n => (Test)new OhmsTest(0, n, -1)), .. Feeds().Where(n => !piece.IsShared(n)).Select(n => new OhmsTest(0, n, -1)), .. FuseSides(), .. Feeds().Select(n => new VoltsTest(0, n, -1)),
    ];

    /// <summary>The rows of a whole vehicle that is measured piece by piece: its feed, all fuses out.</summary>
    public ImmutableArray<Test> OfWhole => [.. Feeds().Select(n => (Test)new OhmsTest(0, n, OhmsTest.AllFuses))];

    /// <summary>A row of each changed wire that none of some rows touches.</summary>
    public IEnumerable<Test> Changed(Alteration? alteration, IReadOnlyCollection<Test> rows)
    {
        if (alteration is null) yield break;
        var touched = rows.SelectMany(Nodes).ToHashSet();
        foreach (string id in alteration.Changes.SelectMany(c => c.Acts).SelectMany(a => a.Items).Distinct())
        {
            if (piece.Circuit.FindConductor(id) is not { } wire || wire.From.IsFree || wire.To.IsFree) continue;
            int from = piece.Model.Nodes.NodeOf(wire.From), to = piece.Model.Nodes.NodeOf(wire.To);
            if (touched.Contains(from) || touched.Contains(to)) continue;
            int node = from >= 0 && bench.Tests.PointOf(from) is not null && !piece.IsShared(from) ? from : to;
            if (node < 0 || piece.IsShared(node) || bench.Tests.PointOf(node) is null) continue;
            touched.Add(node);
            yield return new OhmsTest(0, node, -1);
        }
    }

    // Metal that something stands on, apart from the chassis.
    private IEnumerable<int> Grounds() => piece.Circuit.Parts.Where(p => p.Kind.Id is "metal" or "chassis-point").Select(p => p.Kind.OnlyTerminal is { } only ? piece.Model.Nodes.NodeOf(End.At(p.Id, only)) : -1)
        .Where(n => n >= 0 && piece.NetOf[n] < 0 && bench.Tests.PointOf(n) is not null).Distinct();

    private IEnumerable<int> Feeds() => piece.Circuit.Sources.Where(s => s.Part.IsStandingSource).Select(s => piece.Model.Nodes.NodeOf(s.Feed)).Where(n => n >= 0 && bench.Tests.PointOf(n) is not null).Distinct();

    // With its fuse pulled: the way behind it by itself.
    private IEnumerable<Test> FuseSides()
    {
        foreach (int f in bench.Dictionary.Pullable)
        {
            int load = LoadSide(bench.Dictionary.Fuses[f]);
            if (load >= 0 && !piece.IsShared(load) && bench.Tests.PointOf(load) is not null) yield return new OhmsTest(0, load, f);
        }
    }

    // The feed side is farther from the return, by the volts of the setting in which the fuse carries most; at rest where it never does.
    private int LoadSide(Solving.ModelElement fuse)
    {
        int setting = Enumerable.Range(0, bench.Dictionary.Settings.Count).MaxBy(s => Math.Abs(bench.Dictionary.HealthyAmperes(s, fuse.FirstEdge)));
        float[] volts = bench.Dictionary.Healthy(setting).Volts[0];
        double Level(int node) => node < 0 ? 0 : Math.Abs(volts[node]);
        if (fuse.A >= 0 && Feeds().Any(n => piece.NetOf[n] == piece.NetOf[fuse.A])) return fuse.B;
        if (fuse.B >= 0 && Feeds().Any(n => piece.NetOf[n] == piece.NetOf[fuse.B])) return fuse.A;
        return Level(fuse.A) >= Level(fuse.B) ? fuse.B : fuse.A;
    }

    private static IEnumerable<int> Nodes(Test test) => test switch { VoltsTest v => [v.Red, v.Black], OhmsTest o => [o.Node], _ => [] };
}
