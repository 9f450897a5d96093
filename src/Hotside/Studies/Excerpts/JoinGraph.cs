using Hotside.Circuits;
using Hotside.Studies.Switching;

namespace Hotside.Studies.Excerpts;

/// <summary>Two ends that a conductor, a joint or an element within a part joins, at least in some position.</summary>
/// <param name="A">One end.</param>
/// <param name="B">The other end.</param>
/// <param name="Cost">What it costs a way to pass it.</param>
internal sealed record Join(End A, End B, int Cost)
{
    /// <summary>The conductor's id, where it is one.</summary>
    public string? Conductor { get; init; }

    /// <summary>The terminal that is bolted to something, where it is a joint; <c>case</c> for a case.</summary>
    public End? Joint { get; init; }

    /// <summary>The part, where it is an element within one.</summary>
    public Part? Part { get; init; }

    /// <summary>The element.</summary>
    public Element? Element { get; init; }

    /// <summary>Whether it joins its ends in every position and without resistance.</summary>
    public bool IsForGood => Element is null or { IsLink: true, When: null };

    /// <summary>Whether it joins them without resistance, at least in some position.</summary>
    public bool IsWithoutResistance => Element is null or { IsLink: true };
}

/// <summary>A circuit as ends and what joins them: conductors, joints, cases, what is in line, and standing sources; no consumers.</summary>
internal sealed class JoinGraph
{
    private const int ContactCost = 1_000, SourceCost = 100_000;

    private readonly List<Join> joins = [];
    private readonly Dictionary<End, List<Join>> at = [];

    public JoinGraph(Circuit circuit)
    {
        foreach (var conductor in circuit.Conductors.Where(c => !c.From.IsFree && !c.To.IsFree)) Add(new(conductor.From, conductor.To, 1) { Conductor = conductor.Id });
        foreach (var part in circuit.Parts)
        {
            foreach (var joint in part.Joints) Add(new(End.At(part.Id, joint.Terminal), joint.On, 1) { Joint = End.At(part.Id, joint.Terminal) });
            if (part.CaseOn is { } on) Add(new(Nodes.CaseOf(part), on, 1) { Joint = End.At(part.Id, "case") });
            foreach (var element in part.Kind.Elements.Where(e => e.IsInLine || e is { IsSource: true, When: null }))
                Add(new(Nodes.NodeOf(part, element.From), Nodes.NodeOf(part, element.To), element.IsSource ? SourceCost : element.When is null ? 1 : ContactCost) { Part = part, Element = element });
        }
    }

    /// <summary>All that joins, conductors first, in the order of the file.</summary>
    public IReadOnlyList<Join> All => joins;

    /// <summary>What ends somewhere.</summary>
    public IReadOnlyList<Join> At(End end) => at.GetValueOrDefault(end) ?? [];

    /// <summary>The cheapest way from an end to any of some others, through no element of a part; <see langword="null"/> where there is none.</summary>
    public IEnumerable<Join>? Way(End from, Predicate<End> isGoal, string? exceptPart = null)
    {
        Dictionary<End, (long Cost, Join? By, End Before)> known = new() { [from] = (0, null, from) };
        HashSet<End> done = [];
        PriorityQueue<End, (long, int)> open = new([(from, (0L, 0))]);
        int count = 0;
        while (open.TryDequeue(out var end, out _))
        {
            if (!done.Add(end)) continue;
            if (end != from && isGoal(end)) return Followed(known, end);
            foreach (var join in At(end).Where(j => j.Part is null || j.Part.Id != exceptPart))
            {
                var other = join.A == end ? join.B : join.A;
                long cost = known[end].Cost + join.Cost;
                if (done.Contains(other) || (known.TryGetValue(other, out var old) && old.Cost <= cost)) continue;
                known[other] = (cost, join, end);
                open.Enqueue(other, (cost, ++count));
            }
        }
        return null;
    }

    /// <summary>What lies on a ring with any of some: in one block with it, of the joins that a condition lets through.</summary>
    public static IEnumerable<Join> RingsWith(IEnumerable<Join> among, Predicate<Join> isWanted)
    {
        Join[] all = [.. among];
        Dictionary<End, int> numbers = [];
        int Number(End end) => numbers.TryGetValue(end, out int n) ? n : numbers[end] = numbers.Count;
        (int, int)[] edges = [.. all.Select(j => (Number(j.A), Number(j.B)))];
        int[] blocks = Blocks.Of(numbers.Count, edges);
        var wanted = all.Zip(blocks).Where(p => isWanted(p.First)).Select(p => p.Second).Where(b => b >= 0).ToHashSet();
        return all.Zip(blocks).Where(p => wanted.Contains(p.Second)).Select(p => p.First);
    }

    private static List<Join> Followed(Dictionary<End, (long Cost, Join? By, End Before)> known, End end)
    {
        List<Join> way = [];
        while (known[end] is { By: { } by, Before: var before })
        {
            way.Add(by);
            end = before;
        }
        return way;
    }

    private void Add(Join join)
    {
        joins.Add(join);
        foreach (var end in new[] { join.A, join.B }.Distinct())
        {
            if (!at.TryGetValue(end, out var list)) at[end] = list = [];
            list.Add(join);
        }
    }
}
