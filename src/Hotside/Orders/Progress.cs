using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Orders;

/// <summary>Reads which acts are done, as a job writes it: <c>1-6, 8, w4 off</c>. Numbers are those of changes, which stay when steps shift.</summary>
internal static class Progress
{
    public static readonly DiagnosticKind Left = new("HS4203", Severity.Error, "Done without what comes before", "{0} is done, but {1} is not: {2}");

    public static readonly DiagnosticKind Unknown = new("HS4204", Severity.Error, "Done names nothing", "\"{0}\" names no change and no act");

    private static readonly (string Word, WorkActType[] Types)[] Verbs =
    [
        ("off", [WorkActType.WireOff, WorkActType.Cut]), ("on", [WorkActType.WireOn]), ("pulled", [WorkActType.Pull]), ("laid", [WorkActType.Lay]), ("cut", [WorkActType.Cut]),
        ("out", [WorkActType.PartOut, WorkActType.Pull]), ("fitted", [WorkActType.Fit]), ("replaced", [WorkActType.Swap]), ("reversed", [WorkActType.Turn]), ("remounted", [WorkActType.Remount]),
        ("done", [WorkActType.Work]),
    ];

    /// <summary>The acts that a text names.</summary>
    /// <param name="text">The text; empty: none.</param>
    /// <param name="acts">The acts of the changes.</param>
    /// <param name="problems">What it names that is not there.</param>
    public static bool[] Read(string text, IReadOnlyList<HandAct> acts, List<Diagnostic> problems)
    {
        bool[] done = new bool[acts.Count];
        foreach (string item in text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            HandAct[] named = [.. acts.Where(IsNamed(item))];
            if (named.Length == 0)
                problems.Add(Unknown.Of([], item) with { Hint = $"write numbers of changes (1-6, 8), or a wire or part and what was done to it: \"w4 off\", \"w4 on\"; the words are {string.Join(", ", Verbs.Select(v => v.Word))}" });
            foreach (var act in named) done[act.Index] = true;
        }
        return done;
    }

    /// <summary>What is not done and had to be before something that is.</summary>
    public static IEnumerable<Diagnostic> Open(bool[] done, ImmutableArray<HandAct> acts, ActGraph graph)
    {
        foreach (var act in acts.Take(done.Length).Where(a => done[a.Index]))
            foreach (var (first, rule) in graph.WaitsOf(act.Index))
                if (rule.IsHard && first < done.Length && !done[first])
                {
                    yield return Left.Of([act.Item, acts[first].Item], Named(act), Named(acts[first]), rule.Reason) with { Hint = $"if {Named(acts[first])} is done, write it under done; else do it first" };
                    break;
                }
    }

    /// <summary>An act as a job names it: <c>w4 off H1.2</c>.</summary>
    public static string Named(HandAct act)
    {
        string verb = Verbs.FirstOrDefault(v => v.Types[0] == act.Type).Word ?? "done";
        return act.Type is WorkActType.WireOff or WorkActType.WireOn ? $"{act.Item} {verb} {act.At}" : $"{act.Item} {verb}";
    }

    /// <summary>What is done as a job writes it, numbers of changes where all of one is done: reading it marks the same acts.</summary>
    public static string Written(bool[] done, IReadOnlyList<HandAct> acts)
    {
        List<string> items = [];
        (int From, int To)? range = null;
        foreach (var change in acts.GroupBy(a => a.Change).OrderBy(g => g.Key))
        {
            bool isWhole = change.All(a => done[a.Index]);
            // What was fitted otherwise is named by its own number.
            bool isNumber = isWhole && change.First().Label == Numbers.Whole(change.Key);
            if (isNumber && range?.To == change.Key - 1) range = (range.Value.From, change.Key);
            else
            {
                Close();
                if (isNumber) range = (change.Key, change.Key);
                else items.AddRange(isWhole ? [change.First().Label] : change.Where(a => done[a.Index]).Select(Named));
            }
        }
        Close();
        return string.Join(", ", items);

        void Close()
        {
            if (range is var (from, to)) items.Add(from == to ? Numbers.Whole(from) : $"{Numbers.Whole(from)}-{Numbers.Whole(to)}");
            range = null;
        }
    }

    private static Func<HandAct, bool> IsNamed(string item)
    {
        string[] range = item.Split('-', 2, StringSplitOptions.TrimEntries);
        if (Numbers.TryRead(range[0], out double from) && Numbers.TryRead(range[^1], out double to)) return a => a.Change >= from && a.Change <= to;
        string[] words = item.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (words.Length == 1) return a => a.Item == item || a.Label == item;
        var types = Verbs.FirstOrDefault(v => v.Word == words[1]).Types;
        return types is null ? _ => false : a => a.Item == words[0] && types.Contains(a.Type) && (words.Length < 3 || a.At.ToString() == words[2]);
    }
}
