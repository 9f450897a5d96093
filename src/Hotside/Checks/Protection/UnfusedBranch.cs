using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Checks.Protection;

/// <summary>Wiring that hangs on a battery with nothing before it that opens by itself. Starter cables are none: by custom they have no fuse (33 CFR 183.425(g) leaves them out too).</summary>
/// <param name="Source">The battery.</param>
/// <param name="Conductors">Its conductors, nearest to the battery first.</param>
internal sealed record UnfusedBranch(Part Source, ImmutableArray<Conductor> Conductors)
{
    /// <summary>Of its conductors those that lead to loads, batteries or machines and to no fuse: where one is missing. All where there are none such.</summary>
    public required ImmutableArray<Conductor> Bare { get; init; }

    /// <summary>The consumers that it feeds.</summary>
    public required ImmutableArray<Part> Loads { get; init; }

    /// <summary>Machines that charge through it.</summary>
    public required ImmutableArray<Part> Machines { get; init; }

    /// <summary>Other batteries on which it ends.</summary>
    public required ImmutableArray<Part> Batteries { get; init; }

    /// <summary>
    /// The fuses and breakers on which it ends, with the length of wire before each in metres: the least that it may be, wires without a length counting nothing, and the least
    /// by wires with a length alone; <see cref="double.MaxValue"/> where there is no such way.
    /// </summary>
    public required ImmutableArray<(Part Part, double Metres, double KnownMetres)> Protections { get; init; }

    /// <summary>Whether it begins at a battery's post, not further along a starter cable.</summary>
    public required bool IsFromPost { get; init; }

    /// <summary>All branches of a circuit, in the order of its sources and conductors.</summary>
    public static ImmutableArray<UnfusedBranch> Of(CheckedCircuit circuit)
    {
        Search[] searches = [.. circuit.Circuit.Sources.Where(s => s.Element.When is null).Select(s => new Search(circuit, s))];
        HashSet<Conductor> cables = [.. searches.SelectMany(s => s.Cables)];
        return [.. searches.SelectMany(s => s.Branches()).Where(b => !b.Conductors.All(cables.Contains)).DistinctBy(b => b.Conductors[0].Id)];
    }

    private sealed class Search
    {
        private readonly WireGraph graph;
        private readonly SourcePoles source;
        private readonly Dictionary<int, Part> others;
        private readonly List<WireEdge> region;
        private readonly List<WireEdge> cableEdges;
        private readonly HashSet<int> cable;

        public Search(CheckedCircuit circuit, SourcePoles source)
        {
            graph = circuit.Graph;
            this.source = source;
            int feed = graph.NodeOf(source.Feed);
            others = [];
            foreach (var other in circuit.Circuit.Sources.Where(s => s.Element.When is null && s.Part != source.Part))
                if (graph.NodeOf(other.Feed) is var node && node != feed && node != WireGraph.Return) others.TryAdd(node, other.Part);
            var nodes = Within(feed);
            region = [.. graph.Edges.Where(e => Passes(e) && nodes.Contains(e.A) && nodes.Contains(e.B) && e.A != WireGraph.Return && e.B != WireGraph.Return)];
            // Between the battery's post and the starters' studs.
            cableEdges = Between(region, [feed, .. graph.Edges.Where(e => e.Element is not null && e.Part!.IsStarter(e.Element)).SelectMany(e => new[] { e.A, e.B })]);
            cable = [feed, .. cableEdges.SelectMany(e => new[] { e.A, e.B })];
        }

        /// <summary>The conductors of the starter cable.</summary>
        public IEnumerable<Conductor> Cables => cableEdges.Where(e => e.Conductor is not null).Select(e => e.Conductor!);

        public IEnumerable<UnfusedBranch> Branches()
        {
            var branch = region.Where(e => !cable.Contains(e.A) || !cable.Contains(e.B)).ToList();
            while (branch.Count > 0)
            {
                HashSet<WireEdge> own = [branch[0]];
                HashSet<int> nodes = [];
                for (int had = 0; had < own.Count;)
                {
                    had = own.Count;
                    nodes.UnionWith(own.SelectMany(e => new[] { e.A, e.B }).Where(n => !cable.Contains(n)));
                    own.UnionWith(branch.Where(e => nodes.Contains(e.A) || nodes.Contains(e.B)));
                }
                branch.RemoveAll(own.Contains);
                yield return BranchOf(own, nodes);
            }
        }

        private UnfusedBranch BranchOf(HashSet<WireEdge> own, HashSet<int> nodes)
        {
            var metres = Lengths(own, e => e.Metres);
            var known = Lengths([.. own.Where(e => e.Conductor is not { Wire.LengthInMetres: null })], e => e.Metres);
            double Least(Dictionary<int, double> lengths, WireEdge edge) => Math.Min(lengths.GetValueOrDefault(edge.A, double.MaxValue), lengths.GetValueOrDefault(edge.B, double.MaxValue));
            var ends = nodes.SelectMany(n => graph.At(n)).Distinct().ToArray();
            var loads = ends.Where(e => e.Element is { IsConsumer: true, IsInternal: false } && !e.Part!.IsStarter(e.Element)).ToArray();
            var machines = ends.Where(e => e.Element is not null && Trade.Charges(e.Element)).ToArray();
            var hops = Lengths(own, _ => 1);
            double Hops(WireEdge edge) => Math.Min(hops.GetValueOrDefault(edge.A, double.MaxValue), hops.GetValueOrDefault(edge.B, double.MaxValue));
            var bare = Between(own, [.. cable, .. Ends(loads.Concat(machines)), .. others.Keys, .. graph.Elsewhere.Select(e => e.Node)])
                .Except(Between(own, [.. cable, .. Ends(ends.Where(e => e.IsProtection))])).ToArray();
            ImmutableArray<Conductor> InOrder(IEnumerable<WireEdge> edges) => [.. edges.Where(e => e.Conductor is not null).OrderBy(Hops).Select(e => e.Conductor!)];
            var conductors = InOrder(own);
            return new(source.Part, conductors)
            {
                Bare = InOrder(bare) is { IsEmpty: false } some ? some : conductors,
                Loads = [.. loads.Select(e => e.Part!)
                    .Concat(graph.Elsewhere.Where(e => nodes.Contains(e.Node)).Select(e => e.Part)).Distinct()],
                Machines = [.. machines.Select(e => e.Part!).Distinct()],
                Batteries = [.. others.Where(o => nodes.Contains(o.Key)).Select(o => o.Value)],
                Protections = [.. ends.Where(e => e.IsProtection).Select(e => (e.Part!, Least(metres, e), Least(known, e)))],
                IsFromPost = own.Any(e => e.A == graph.NodeOf(source.Feed) || e.B == graph.NodeOf(source.Feed)),
            };
        }

        private HashSet<int> Within(int feed)
        {
            HashSet<int> reached = [feed];
            Stack<int> open = new(reached);
            while (open.TryPop(out int node))
                foreach (var edge in graph.At(node))
                    if (Passes(edge) && edge.Other(node) != WireGraph.Return && reached.Add(edge.Other(node)) && !others.ContainsKey(edge.Other(node)))
                        open.Push(edge.Other(node));
            return reached;
        }

        private static bool Passes(WireEdge edge) => edge.IsInLine && !edge.IsProtection;

        private static IEnumerable<int> Ends(IEnumerable<WireEdge> edges) => edges.SelectMany(e => new[] { e.A, e.B });

        // What is left when every blind end is cut off, but for some nodes.
        private static List<WireEdge> Between(IEnumerable<WireEdge> edges, HashSet<int> ends)
        {
            List<WireEdge> left = [.. edges];
            while (true)
            {
                var degree = Ends(left).CountBy(n => n).ToDictionary();
                if (left.RemoveAll(e => e.A == e.B || (degree[e.A] == 1 && !ends.Contains(e.A)) || (degree[e.B] == 1 && !ends.Contains(e.B))) == 0) return left;
            }
        }

        // The least length from the battery's post or the starter cable to each node.
        private Dictionary<int, double> Lengths(HashSet<WireEdge> own, Func<WireEdge, double> length)
        {
            Dictionary<int, double> metres = [];
            foreach (int node in own.SelectMany(e => new[] { e.A, e.B }).Where(cable.Contains)) metres[node] = 0;
            for (bool shorter = true; shorter;)
            {
                shorter = false;
                foreach (var edge in own)
                foreach (var (from, to) in new[] { (edge.A, edge.B), (edge.B, edge.A) })
                    if (metres.TryGetValue(from, out double so) && so + length(edge) < metres.GetValueOrDefault(to, double.MaxValue))
                    {
                        metres[to] = so + length(edge);
                        shorter = true;
                    }
            }
            return metres;
        }
    }
}
