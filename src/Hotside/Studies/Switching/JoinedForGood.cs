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
        Func<Branch, SwitchedSide> whole = SidesBy(graph, b => b.When.IsAlways), behindDisconnects = SidesBy(graph, b => b.When.IsAlways || b.Part.Kind.IsDisconnect);
        return new(circuit, [.. graph.Loads.Select(load =>
        {
            var (side, own) = (whole(load), behindDisconnects(load));
            return new LoadStudy(load.Part, load.Element, own == SwitchedSide.Unswitched ? side : own, new(side == SwitchedSide.Unswitched ? [new([])] : [])) { SideWithDisconnects = side, IsApproximate = true };
        })], [SwitchingFindings.Approximate.Of(graph.Loads.Select(l => l.Part.Id).Distinct(), Names(graph))]);
    }

    // The sides of loads where what is joined is so for good.
    private static Func<Branch, SwitchedSide> SidesBy(ContactGraph graph, Predicate<Branch> isJoined)
    {
        DisjointSets inLine = new(graph.Size);
        foreach (var branch in graph.Branches.Where(b => b.Role != BranchRole.Consumer && isJoined(b)))
            inLine.Join(branch.Source, branch.Target);
        int[] feeds = [.. graph.Circuit.Sources.Where(s => s.Element.When is null).Select(s => graph.PointOf(s.Feed))];
        bool IsHot(int point) => feeds.Any(f => inLine.AreOne(f, point));
        bool IsReturn(int point) => inLine.AreOne(graph.Return, point);
        return load => LoadJudge.SideOf(IsHot(load.Source) || IsHot(load.Target), IsReturn(load.Source) || IsReturn(load.Target));
    }
}
