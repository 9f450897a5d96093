using Hotside.Circuits;
using Hotside.Solving;
using Hotside.Studies;
using Hotside.Studies.Excerpts;

namespace Hotside.Diagnoses;

/// <summary>
/// What may have to do with some loads: all that feeds and controls them, and what hangs on the same fuse way. Two fuse ways that share no more than the battery know nothing
/// of each other's faults.
/// </summary>
internal static class ConnectedPiece
{
    /// <summary>The piece of a circuit whose joints are loose.</summary>
    /// <param name="study">The study of the circuit as it is.</param>
    /// <param name="loose">The circuit with its joints as conductors.</param>
    /// <param name="loads">The loads.</param>
    public static Circuit Of(CircuitStudy study, Circuit loose, IEnumerable<LoadStudy> loads)
    {
        var excerpt = Excerpt.Of(study, loads);
        bool IsOnWay(Conductor c) => excerpt.Items.Contains(c.Id) || (LooseJoints.IsJoint(c) && excerpt.Joints.Contains(LooseJoints.IsMount(c, loose) ? End.At(c.From.Part!, "case") : c.From));
        HashSet<string> items = [.. excerpt.Items, .. loose.Conductors.Where(IsOnWay).Select(c => c.Id)];
        TerminalNodes nodes = new(loose);
        var (isRail, poles) = Rails(loose, nodes);
        var joins = Joins(loose, nodes).ToArray();
        HashSet<string> others = Flood(joins, isRail, items);
        AddWaysOfRails(joins, isRail, poles, items);
        // What wires end on belongs to them, but for fuses of other ways: these are taken as pulled.
        foreach (var part in loose.Conductors.Where(c => items.Contains(c.Id)).SelectMany(c => c.Ends).Select(e => e.Part).OfType<string>().Where(p => !others.Contains(p)).ToArray()) items.Add(part);
        return loose.Only(items.Contains, _ => false, _ => false);
    }

    // Gathers what hangs together; what is found behind and left out are the fuses of other ways.
    private static HashSet<string> Flood((string Item, int A, int B, bool IsFuse, bool IsWire)[] joins, bool[] isRail, HashSet<string> items)
    {
        HashSet<int> reached = [.. joins.Where(j => items.Contains(j.Item)).SelectMany(j => new[] { j.A, j.B }).Where(n => n >= 0 && !isRail[n])];
        HashSet<string> others = new(StringComparer.Ordinal);
        Queue<int> open = new(reached);
        var at = joins.SelectMany(j => new[] { (Node: j.A, Join: j), (Node: j.B, Join: j) }).Where(p => p.Node >= 0).ToLookup(p => p.Node, p => p.Join);
        while (open.TryDequeue(out int node))
            foreach (var join in at[node])
            {
                // Behind another fuse begins another way.
                if (join.IsFuse && !items.Contains(join.Item))
                {
                    others.Add(join.Item);
                    continue;
                }
                items.Add(join.Item);
                foreach (int end in new[] { join.A, join.B })
                    if (end >= 0 && !isRail[end] && reached.Add(end)) open.Enqueue(end);
            }
        return others;
    }

    // Whatever stands on a rail keeps its way to the return, or to the source's pole: by the fewest wires.
    private static void AddWaysOfRails((string Item, int A, int B, bool IsFuse, bool IsWire)[] joins, bool[] isRail, HashSet<int> poles, HashSet<string> items)
    {
        var wires = joins.Where(j => j.IsWire).SelectMany(j => new[] { (From: j.A, To: j.B, j.Item), (From: j.B, To: j.A, j.Item) }).Where(w => w.From >= 0).ToLookup(w => w.From);
        int[] ends = [.. joins.Where(j => items.Contains(j.Item)).SelectMany(j => new[] { j.A, j.B }).Where(n => n >= 0 && isRail[n]).Distinct().Order()];
        foreach (int end in ends)
        {
            Dictionary<int, (int Before, string Item)> by = new() { [end] = (end, "") };
            Queue<int> open = new([end]);
            int? goal = null;
            while (goal is null && open.TryDequeue(out int node))
            {
                if (node < 0 || poles.Contains(node)) goal = node;
                else
                    foreach (var (_, to, item) in wires[node])
                        if (by.TryAdd(to, (node, item))) open.Enqueue(to);
            }
            for (int? node = goal; node is { } n && n != end; node = by[n].Before) items.Add(by[n].Item);
        }
    }

    // What stands on the return or on the unfused feed for good: passing through it leads anywhere.
    private static (bool[] IsRail, HashSet<int> Poles) Rails(Circuit loose, TerminalNodes nodes)
    {
        DisjointSets sets = new(nodes.Count + 1);
        foreach (var conductor in loose.Conductors.Where(c => !c.From.IsFree && !c.To.IsFree)) sets.Join(nodes.NodeOf(conductor.From) + 1, nodes.NodeOf(conductor.To) + 1);
        HashSet<int> rails = [sets.Find(0)], poles = [];
        foreach (var source in loose.Sources.Where(s => s.Part.IsStandingSource))
        {
            poles.Add(nodes.NodeOf(source.Feed));
            rails.Add(sets.Find(nodes.NodeOf(source.Feed) + 1));
            rails.Add(sets.Find(nodes.NodeOf(source.Return) + 1));
        }
        return ([.. Enumerable.Range(1, nodes.Count).Select(n => rails.Contains(sets.Find(n)))], poles);
    }

    private static IEnumerable<(string Item, int A, int B, bool IsFuse, bool IsWire)> Joins(Circuit loose, TerminalNodes nodes)
    {
        foreach (var conductor in loose.Conductors.Where(c => !c.From.IsFree && !c.To.IsFree)) yield return (conductor.Id, nodes.NodeOf(conductor.From), nodes.NodeOf(conductor.To), false, true);
        foreach (var part in loose.Parts)
            foreach (var element in part.Kind.Elements.Where(e => !e.IsSource))
                yield return (part.Id, nodes.NodeOf(Nodes.NodeOf(part, element.From)), nodes.NodeOf(Nodes.NodeOf(part, element.To)), FuseWay.IsPulled(part, element), false);
    }
}
