using Hotside.Circuits;

namespace Hotside.Studies.Switching;

/// <summary>Verdicts told from what is joined for good, for circuits whose positions are too entangled for anything better.</summary>
internal static class JoinedForGood
{
    private static string Names(ContactGraph graph) =>
        string.Join(", ", graph.Loads.Where(l => !l.Element.IsInternal).Select(l => LoadStudy.NameOf(l.Part, l.Element)));

    public static CircuitStudy Tell(Circuit circuit)
    {
        Positions positions = new(circuit);
        ContactGraph graph = new(circuit, positions);
        DisjointSets inLine = new(graph.Size);
        foreach (var branch in graph.Branches)
            if (branch.Role != BranchRole.Consumer && branch.When.IsAlways)
                inLine.Join(branch.Source, branch.Target);
        int[] feeds = [.. circuit.Sources.Where(s => s.Element.When is null).Select(s => graph.PointOf(s.Feed))];
        bool IsHot(int point) => feeds.Any(f => inLine.AreOne(f, point));
        bool IsReturn(int point) => inLine.AreOne(graph.Return, point);
        return new(circuit, [.. graph.Loads.Select(load =>
        {
            bool hot = IsHot(load.Source) || IsHot(load.Target), ground = IsReturn(load.Source) || IsReturn(load.Target);
            var side = LoadJudge.SideOf(hot, ground);
            return new LoadStudy(load.Part, load.Element, side, new(side == SwitchedSide.Unswitched ? [new([])] : [])) { IsApproximate = true };
        })], [SwitchingFindings.Approximate.Of(graph.Loads.Select(l => l.Part.Id).Distinct(), Names(graph))]);
    }
}
