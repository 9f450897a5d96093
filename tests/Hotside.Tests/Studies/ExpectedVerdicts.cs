using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Hotside.Circuits;
using Hotside.Studies;

namespace Hotside.Tests.Studies;

/// <summary>
/// Verdicts that a job file states in comments, written by hand before anything computed them:
/// <c># expect before H1.horn: ground-switched, when S1 pressed</c>, with <c>by K1</c>, <c>through E1 or E2</c>, <c>holds by K1.contact until S2 pressed</c>,
/// <c>only until K1 plunger pulled</c> where they apply.
/// </summary>
internal static partial class ExpectedVerdicts
{
    public static ImmutableArray<WrittenVerdict> Parse(string jobFileText) =>
        [.. Comment().Matches(jobFileText).Select(m => WrittenVerdict.Read(m.Groups["view"].Value, m.Groups["load"].Value, m.Groups["verdict"].Value.Trim()))];

    /// <summary>What differs between the expectations of a view and a study; empty when they agree.</summary>
    public static ImmutableArray<string> Differences(string jobFileText, string view, CircuitStudy study) =>
        [.. Parse(jobFileText).Where(e => e.View == view).SelectMany(e => e.DifferencesFrom(study).Select(d => $"{view} {e.Load}: {d}"))];

    [GeneratedRegex(@"^\s*# expect (?<view>before|after) (?<load>[^:\n]+): (?<verdict>[^\n]+)$", RegexOptions.Multiline | RegexOptions.ExplicitCapture)]
    private static partial Regex Comment();
}

/// <summary>One expected verdict.</summary>
internal sealed record WrittenVerdict(string View, string Load, string Side)
{
    public ImmutableArray<string> By { get; init; } = [];

    public ImmutableArray<string> Through { get; init; } = [];

    /// <summary>Alternatives, each a list of <c>S1 run</c>, <c>S5 turn left</c>; <see langword="null"/>: not said.</summary>
    public ImmutableArray<ImmutableArray<string>>? When { get; init; }

    public (string Contact, ImmutableArray<ImmutableArray<string>> Released)? Holds { get; init; }

    public string? Until { get; init; }

    public static WrittenVerdict Read(string view, string load, string verdict)
    {
        string Taken(string pattern)
        {
            var match = Regex.Match(verdict, pattern);
            if (match.Success) verdict = verdict.Remove(match.Index, match.Length);
            return match.Groups[1].Value;
        }
        string until = Taken(", only until (.+)$"), holds = Taken(", holds by (.+)$"), when = Taken(", when (.+)$");
        string by = Taken(" by (.+)$"), through = Taken(" through (.+)$");
        string[] held = holds.Split(" until ");
        return new(view, load, verdict.Trim())
        {
            By = Split(by),
            Through = Split(through),
            When = when.Length == 0 ? null : Combinations(when),
            Holds = held.Length < 2 ? null : (held[0], Combinations(held[1])),
            Until = until.Length == 0 ? null : until,
        };
    }

    public IEnumerable<string> DifferencesFrom(CircuitStudy study)
    {
        var load = study.Load(Load);
        string side = load.Side switch
        {
            SwitchedSide.HotSwitched => "hot-switched",
            SwitchedSide.GroundSwitched => "ground-switched",
            SwitchedSide.BothSides => "both-sides",
            SwitchedSide.InSeries => "in-series",
            SwitchedSide.Dead => "dead",
            _ => "unswitched",
        };
        if (side != Side) yield return $"is {side}, expected {Side}";
        if (side != "in-series" && !load.Chain.Take(By.Length).SequenceEqual(By)) yield return $"goes by {string.Join(", ", load.Chain)}, expected {string.Join(", ", By)}";
        if (Through.Any(t => !load.InSeriesWith.Any(w => w == t || w.StartsWith(t + ".", StringComparison.Ordinal) || t.StartsWith(w + ".", StringComparison.Ordinal))))
            yield return $"goes through {string.Join(", ", load.InSeriesWith)}, expected {string.Join(", ", Through)}";
        if (When is { } when && Different(study.Circuit, load.Control, when) is { } state) yield return $"{{{load.Control}}} differs at {state}";
        string? until = load.Until is { } end ? $"{end.Part} {end.Actuator} {end.Position}" : null;
        if (until != Until) yield return $"ends at {until ?? "nothing"}, expected {Until ?? "nothing"}";
        string? contact = load.Holds is { } hold ? hold.Relay + "." + hold.Element : null;
        if (contact != Holds?.Contact) yield return $"holds by {contact ?? "nothing"}, expected {Holds?.Contact ?? "nothing"}";
        else if (Holds is { } expected && Different(study.Circuit, load.Holds!.Released, expected.Released) is { } release)
            yield return $"released by {{{load.Holds.Released}}} differs at {release}";
    }

    private static ImmutableArray<string> Split(string text) => text.Length == 0 ? [] : [.. Regex.Split(text, " or | and |, ")];

    private static ImmutableArray<ImmutableArray<string>> Combinations(string text) =>
        [.. Regex.Split(text, ",? or ").Select(c => c.Split(" and ").ToImmutableArray())];

    // The first choice of positions in which the two disagree, over all choices of the positions that either names.
    private static string? Different(Circuit circuit, Control actual, ImmutableArray<ImmutableArray<string>> expected)
    {
        var wanted = expected.Select(c => c.Select(t => Find(circuit, t)).ToArray()).ToArray();
        var variables = wanted.SelectMany(c => c.Select(t => t.Variable)).Concat(actual.Any.SelectMany(c => c.All.Select(s => s.Variable))).Distinct().ToArray();
        IEnumerable<ImmutableDictionary<Variable, string>> states = [ImmutableDictionary<Variable, string>.Empty];
        foreach (var variable in variables) states = states.SelectMany(s => variable.Actuator.Positions.Select(p => s.Add(variable, p)));
        foreach (var state in states)
        {
            bool isWanted = wanted.Any(c => c.All(t => state[t.Variable] == t.Position));
            bool isActual = actual.Any.Any(c => c.All.All(s => s.Positions.Contains(state[s.Variable])));
            if (isWanted != isActual) return string.Join(", ", variables.Select(v => v + " " + state[v])) + (isWanted ? " (expected)" : " (not expected)");
        }
        return null;
    }

    private static (Variable Variable, string Position) Find(Circuit circuit, string text)
    {
        string[] words = text.Split(' ');
        var found = circuit.Variables.Where(v => (v.Part ?? v.Actuator.Name) == words[0] && (words.Length == 2 || v.Actuator.Name == words[1]) && v.Actuator.Positions.Contains(words[^1]));
        return (found.First(), words[^1]);
    }
}
