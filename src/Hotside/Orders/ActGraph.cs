using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Orders;

/// <summary>Which act waits for which, by which rule, without circles.</summary>
internal sealed class ActGraph
{
    public static readonly DiagnosticKind Circle = new("HS4201", Severity.Error, "Rules of order in a circle", "no order meets all rules: {0}");

    private readonly ImmutableArray<HandAct> acts;
    private readonly List<(int First, OrderRule Rule)>[] waits;
    private readonly List<int>[] followers;
    private readonly Func<End, string?> counterpart;
    // For each act, all that waits for it, at however many removes: a circle is seen at once.
    private readonly ulong[][] reached;

    /// <summary>The acts with what the rules ask of them.</summary>
    /// <param name="acts">The acts.</param>
    /// <param name="rules">The rules; those that give way least first.</param>
    /// <param name="counterpart">Where what is on a terminal goes when its part is replaced.</param>
    public ActGraph(ImmutableArray<HandAct> acts, ImmutableArray<OrderRule> rules, Func<End, string?> counterpart)
    {
        (this.acts, this.counterpart) = (acts, counterpart);
        waits = [.. acts.Select(_ => new List<(int, OrderRule)>())];
        followers = [.. acts.Select(_ => new List<int>())];
        reached = [.. acts.Select(_ => new ulong[(acts.Length + 63) / 64])];
        foreach (bool isHard in new[] { true, false })
        foreach (var rule in rules.Where(r => r.IsHard == isHard))
            Add(rule);
        foreach (var act in acts.Where(a => a.Type == WorkActType.WireOn && a.Partner >= 0)) Wait(act);
    }

    /// <summary>What an act waits for.</summary>
    public IReadOnlyList<(int First, OrderRule Rule)> WaitsOf(int act) => waits[act];

    /// <summary>What waits for an act.</summary>
    public IReadOnlyList<int> FollowersOf(int act) => followers[act];

    /// <summary>Hard rules that no order meets.</summary>
    public List<Diagnostic> Problems { get; } = [];

    private void Add(OrderRule rule)
    {
        HandAct[] firsts = [.. acts.Where(rule.Before.Has)], thens = [.. acts.Where(rule.After.Has)];
        foreach (var first in firsts)
        foreach (var then in thens)
            if (first.Index != then.Index && !(rule.Same == Common.None && rule.After.Has(first)) && Share(rule.Same, first, then) && !TryAdd(first.Index, then.Index, rule) && rule.IsHard)
                Problems.Add(Circle.Of([then.Item, first.Item], Chain(first.Index, then.Index, rule)) with { Hint = "override one of these rules by its id under order: in the alteration, or split a line of the list" });
    }

    // An end that is put over in one go comes off when it can go on.
    private void Wait(HandAct on)
    {
        foreach (var (first, rule) in waits[on.Index].ToArray())
            if (first != on.Partner)
                TryAdd(first, on.Partner, rule);
    }

    private bool Share(Common same, HandAct first, HandAct then) => same switch
    {
        Common.None => true,
        Common.Part => first.Parts.Any(then.Parts.Contains),
        Common.Wire => first.Item == then.Item || (first.Type == WorkActType.Cut && first.Said == then.Item),
        Common.Way => first.Way == then.Way,
        Common.Behind => then.Upstream.Contains(first.Item),
        Common.Joined => first.Item != then.Item && first.Joined.Any(then.Parts.Contains),
        Common.Holder => then.Holders.Contains(first.Item),
        Common.Held => first.Holders.Contains(then.Item),
        Common.Terminal => first.Item != then.Item && then.At.Part is not null && first.At.Part == then.At.Part && counterpart(first.At) == then.At.Terminal,
        Common.Lost => first.At.Part == then.Item && counterpart(first.At) is null,
        _ => false,
    };

    private bool TryAdd(int first, int then, OrderRule rule)
    {
        if (first == then || Reaches(then, first)) return false;
        waits[then].Add((first, rule));
        followers[first].Add(then);
        if (Reaches(first, then)) return true;
        for (int act = 0; act < acts.Length; act++)
        {
            if (act != first && !Reaches(act, first)) continue;
            for (int w = 0; w < reached[act].Length; w++) reached[act][w] |= reached[then][w];
            reached[act][then / 64] |= 1UL << (then % 64);
        }
        return true;
    }

    private bool Reaches(int from, int to) => (reached[from][to / 64] & (1UL << (to % 64))) != 0;

    // The shortest chain by which the first already waits for the second.
    private string Chain(int first, int then, OrderRule rule)
    {
        Dictionary<int, (int From, OrderRule Rule)> reached = new() { [first] = (-1, rule) };
        Queue<int> open = new([first]);
        while (!reached.ContainsKey(then) && open.TryDequeue(out int act))
            foreach (var (earlier, why) in waits[act])
                if (reached.TryAdd(earlier, (act, why)))
                    open.Enqueue(earlier);
        List<string> links = [$"{Called(then)} waits for {Called(first)} ({rule.Id}: {rule.Reason})"];
        List<string> back = [];
        for (int act = then; reached.TryGetValue(act, out var how) && how.From >= 0; act = how.From) back.Add($"{Called(how.From)} for {Called(act)} ({how.Rule.Id}: {how.Rule.Reason})");
        back.Reverse();
        return string.Join("; ", links.Concat(back));
    }

    private string Called(int act) => acts[act] is var a && a.Type is WorkActType.WireOff or WorkActType.WireOn
        ? $"\"{a.Item} {(a.Type == WorkActType.WireOff ? "off" : "on")} {a.At}\"" : $"\"{acts[act].Type switch { WorkActType.PartOut => "take out", WorkActType.Swap => "replace", WorkActType.Turn => "reverse", var t => t.ToString().ToLowerInvariant() }} {acts[act].Item}\"";
}
