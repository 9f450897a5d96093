using Hotside.Circuits;
using QuikGraph;
using QuikGraph.Algorithms;

namespace Hotside.Studies.Switching;

/// <summary>
/// Where the relays come to rest, as functions of what is outside them. All coils move at once until nothing changes; where break contacts
/// could make another order end elsewhere, single moves are searched state by state.
/// </summary>
internal sealed class Settling
{
    private const int StatesSearched = 4096, RelaysSearched = 10;

    private readonly ContactGraph graph;
    private readonly Diagrams d;
    private readonly Dictionary<int, int[]> next = [];
    private readonly Dictionary<int, int[]> rest = [];

    /// <summary>Works the relays out.</summary>
    /// <param name="graph">The contact graph.</param>
    /// <param name="coils">When each winding pulls, as a function of positions and relays.</param>
    public Settling(ContactGraph graph, Func<Part, string, int> coils)
    {
        this.graph = graph;
        d = graph.Diagrams;
        for (int v = 0; v < graph.Variables.Length; v++)
            if (graph.Variables[v] is { Part: { } id, Actuator.Drive: ActuatorDrive.Driven } variable)
                next[v] = NextOf(v, variable, name => coils(graph.Circuit.FindPart(id)!, name));
        foreach (var group in Groups()) Settle(group);
        Moves = Rounds(AtRest());
    }

    /// <summary>The variables that windings drive.</summary>
    public IEnumerable<int> Driven => next.Keys.Order();

    /// <summary>The relays' states from round to round, all moving at once from rest; the last is settled unless it never settles.</summary>
    public List<Dictionary<int, int[]>> Moves { get; }

    /// <summary>Groups of relays that find no rest, and when.</summary>
    public List<(int[] Relays, int When)> NeverSettling { get; } = [];

    /// <summary>Groups of relays whose rest depends on which is quicker, and when.</summary>
    public List<(int[] Relays, int When)> Races { get; } = [];

    /// <summary>Groups too large for orders to be tried.</summary>
    public List<int[]> Untried { get; } = [];

    /// <summary>When both windings of a relay that stays are fed at once.</summary>
    public int Undefined { get; private set; } = Diagrams.Never;

    /// <summary>A function of positions and relays as a function of positions alone, the relays settled.</summary>
    public int Closed(int f) => d.Substitute(f, rest);

    /// <summary>When a relay rests in each of its positions.</summary>
    public int[] RestOf(int relay) => rest[relay];

    /// <summary>Where the relays come to when one of them begins in a position: <see langword="null"/> when they find no rest.</summary>
    public Dictionary<int, int[]>? Begun(int relay, int position)
    {
        var state = AtRest();
        state[relay] = Only(relay, position);
        var rounds = Rounds(state);
        return rounds.Count > Limit ? null : rounds[^1];
    }

    private int Limit => (next.Count * 2) + 3;

    private int[] NextOf(int v, Variable variable, Func<string, int> coil)
    {
        var actuator = variable.Actuator;
        int[] pulls = new int[actuator.Positions.Length];
        foreach (var pull in actuator.Pulls)
        {
            int at = actuator.Positions.IndexOf(pull.Position);
            if (at >= 0) pulls[at] = pull.Coils.Aggregate(pulls[at], (f, c) => d.Or(f, coil(c)));
        }
        int[] result = new int[pulls.Length];
        int free = Diagrams.Always;
        for (int p = 0; p < pulls.Length; p++)
        {
            for (int q = 0; q < p; q++)
                if (actuator.Stays) Undefined = d.Or(Undefined, d.And(pulls[p], pulls[q]));
            result[p] = d.And(pulls[p], free);
            free = d.Without(free, pulls[p]);
        }
        if (actuator.Stays)
            for (int p = 0; p < pulls.Length; p++) result[p] = d.Or(result[p], d.And(free, d.In(v, p)));
        else
        {
            int kept = actuator.KeptBy.Aggregate(Diagrams.Never, (f, c) => d.Or(f, coil(c)));
            for (int p = 1; p < pulls.Length; p++)
            {
                int stays = d.And(d.And(free, kept), d.In(v, p));
                result[p] = d.Or(result[p], stays);
                free = d.Without(free, stays);
            }
            result[0] = d.Or(result[0], free);
        }
        return result;
    }

    private Dictionary<int, int[]> AtRest() => next.Keys.ToDictionary(k => k, k => Only(k, 0));

    private int[] Only(int relay, int position)
    {
        int[] only = new int[next[relay].Length];
        only[position] = Diagrams.Always;
        return only;
    }

    // States from round to round until one comes that was there; capped, since some never rest.
    private List<Dictionary<int, int[]>> Rounds(Dictionary<int, int[]> state)
    {
        var rounds = new List<Dictionary<int, int[]>> { state };
        while (rounds.Count <= Limit)
        {
            var after = next.ToDictionary(n => n.Key, n => Array.ConvertAll(n.Value, f => d.Substitute(f, state)));
            if (after.All(a => a.Value.AsSpan().SequenceEqual(state[a.Key]))) break;
            rounds.Add(state = after);
        }
        return rounds;
    }

    // Relays that influence each other, those that influence others first.
    private IEnumerable<int[]> Groups()
    {
        var influences = new AdjacencyGraph<int, Edge<int>>();
        influences.AddVertexRange(next.Keys);
        foreach (var (relay, functions) in next)
            foreach (int by in functions.SelectMany(d.Support).Distinct().Where(next.ContainsKey).Order())
                influences.AddEdge(new(by, relay));
        var component = new Dictionary<int, int>();
        influences.StronglyConnectedComponents(component);
        var groups = component.GroupBy(c => c.Value).ToDictionary(g => g.Key, g => g.Select(c => c.Key).Order().ToArray());
        var order = new BidirectionalGraph<int, Edge<int>>(allowParallelEdges: false);
        order.AddVertexRange(groups.Keys.OrderBy(g => groups[g][0]));
        foreach (var edge in influences.Edges.Where(e => component[e.Source] != component[e.Target])) order.AddEdge(new(component[edge.Source], component[edge.Target]));
        return order.TopologicalSort().Select(g => groups[g]);
    }

    private void Settle(int[] group)
    {
        var functions = group.ToDictionary(r => r, r => Array.ConvertAll(next[r], f => d.Substitute(f, rest)));
        bool depends = functions.Values.SelectMany(f => f).SelectMany(d.Support).Any(group.Contains);
        if (!depends)
        {
            foreach (int relay in group) rest[relay] = functions[relay];
            return;
        }
        bool orders = group.Any(r => !OnlyMakes(functions[r], group));
        if (orders && group.Length <= RelaysSearched && Searched(group, functions)) return;
        if (orders) Untried.Add(group);
        var state = group.ToDictionary(r => r, r => Only(r, 0));
        for (int round = 0; round <= Limit; round++)
        {
            var after = group.ToDictionary(r => r, r => Array.ConvertAll(functions[r], f => d.Substitute(f, state)));
            bool same = group.All(r => after[r].AsSpan().SequenceEqual(state[r]));
            state = after;
            if (same) break;
        }
        foreach (int relay in group) rest[relay] = state[relay];
    }

    // Whether a relay of the group only ever helps this one to pull in.
    private bool OnlyMakes(int[] functions, int[] group)
    {
        if (functions.Length != 2) return false;
        foreach (int other in group)
        {
            int pulled = functions[1];
            int with = d.Substitute(pulled, new Dictionary<int, int[]> { [other] = Only(other, 1) });
            int without = d.Substitute(pulled, new Dictionary<int, int[]> { [other] = Only(other, 0) });
            if (next[other].Length != 2 || !d.Implies(without, with)) return false;
        }
        return true;
    }

    // Every combination of what the group listens to, each with a search of single moves from all at rest.
    private bool Searched(int[] group, Dictionary<int, int[]> functions)
    {
        int[] outside = [.. functions.Values.SelectMany(f => f).SelectMany(d.Support).Distinct().Where(v => !group.Contains(v)).Order()];
        long states = outside.Aggregate(1L, (n, v) => Math.Min(StatesSearched + 1, n * d.PositionsOf(v)));
        if (states > StatesSearched) return false;
        foreach (int relay in group) rest[relay] = new int[next[relay].Length];
        int never = Diagrams.Never, race = Diagrams.Never;
        int[] state = new int[d.Variables];
        for (long s = 0; s < states; s++)
        {
            int here = Diagrams.Always;
            long digits = s;
            foreach (int v in outside)
            {
                state[v] = (int)(digits % d.PositionsOf(v));
                digits /= d.PositionsOf(v);
                here = d.And(here, d.In(v, state[v]));
            }
            var (rests, visited) = SingleMoves(group, functions, state);
            if (rests.Count == 0) never = d.Or(never, here);
            if (rests.Count > 1) race = d.Or(race, here);
            foreach (int[] end in rests.Count > 0 ? rests : visited)
                for (int i = 0; i < group.Length; i++) rest[group[i]][end[i]] = d.Or(rest[group[i]][end[i]], here);
        }
        if (never != Diagrams.Never) NeverSettling.Add((group, never));
        if (race != Diagrams.Never) Races.Add((group, race));
        return true;
    }

    private (List<int[]> Rests, List<int[]> Visited) SingleMoves(int[] group, Dictionary<int, int[]> functions, int[] state)
    {
        var visited = new List<int[]> { new int[group.Length] };
        var known = new HashSet<string> { string.Join(',', visited[0]) };
        var rests = new List<int[]>();
        for (int i = 0; i < visited.Count; i++)
        {
            int[] at = visited[i];
            for (int k = 0; k < group.Length; k++) state[group[k]] = at[k];
            bool still = true;
            for (int k = 0; k < group.Length; k++)
            {
                int wanted = Array.FindIndex(functions[group[k]], f => d.Value(f, state));
                if (wanted == at[k]) continue;
                still = false;
                int[] moved = [.. at];
                moved[k] = wanted;
                if (known.Add(string.Join(',', moved))) visited.Add(moved);
            }
            if (still) rests.Add(at);
        }
        return (rests, visited);
    }
}
