using System.Collections.Immutable;
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
        Flood(loose, new(loose), items);
        // What the pieces of a bolted row lean on belongs to them.
        foreach (var part in loose.Conductors.Where(c => items.Contains(c.Id)).SelectMany(c => c.Ends).Select(e => e.Part).OfType<string>().ToArray()) items.Add(part);
        return loose.Only(items.Contains, _ => false, _ => false);
    }

    private static void Flood(Circuit loose, TerminalNodes nodes, HashSet<string> items)
    {
        bool[] isRail = Rails(loose, nodes);
        var joins = Joins(loose, nodes).ToArray();
        HashSet<int> reached = [.. joins.Where(j => items.Contains(j.Item)).SelectMany(j => new[] { j.A, j.B }).Where(n => n >= 0 && !isRail[n])];
        Queue<int> open = new(reached);
        var at = joins.SelectMany(j => new[] { (Node: j.A, Join: j), (Node: j.B, Join: j) }).Where(p => p.Node >= 0).ToLookup(p => p.Node, p => p.Join);
        while (open.TryDequeue(out int node))
            foreach (var join in at[node])
            {
                // Behind another fuse begins another way.
                bool isOwn = items.Contains(join.Item);
                if (join.IsFuse && !isOwn) continue;
                items.Add(join.Item);
                foreach (int end in new[] { join.A, join.B })
                    if (end >= 0 && !isRail[end] && reached.Add(end)) open.Enqueue(end);
            }
    }

    // What stands on the return or on the unfused feed for good: passing through it leads anywhere.
    private static bool[] Rails(Circuit loose, TerminalNodes nodes)
    {
        DisjointSets sets = new(nodes.Count + 1);
        foreach (var conductor in loose.Conductors.Where(c => !c.From.IsFree && !c.To.IsFree)) sets.Join(nodes.NodeOf(conductor.From) + 1, nodes.NodeOf(conductor.To) + 1);
        HashSet<int> poles = [sets.Find(0)];
        foreach (var source in loose.Sources.Where(s => s.Part.IsStandingSource))
        {
            poles.Add(sets.Find(nodes.NodeOf(source.Feed) + 1));
            poles.Add(sets.Find(nodes.NodeOf(source.Return) + 1));
        }
        return [.. Enumerable.Range(1, nodes.Count).Select(n => poles.Contains(sets.Find(n)))];
    }

    private static IEnumerable<(string Item, int A, int B, bool IsFuse)> Joins(Circuit loose, TerminalNodes nodes)
    {
        foreach (var conductor in loose.Conductors.Where(c => !c.From.IsFree && !c.To.IsFree)) yield return (conductor.Id, nodes.NodeOf(conductor.From), nodes.NodeOf(conductor.To), false);
        foreach (var part in loose.Parts)
            foreach (var element in part.Kind.Elements.Where(e => !e.IsSource))
                yield return (part.Id, nodes.NodeOf(Nodes.NodeOf(part, element.From)), nodes.NodeOf(Nodes.NodeOf(part, element.To)), element.Type is ElementType.Fuse or ElementType.Breaker);
    }
}
