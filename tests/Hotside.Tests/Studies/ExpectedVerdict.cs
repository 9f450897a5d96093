using System.Text.RegularExpressions;
using Hotside.Circuits;
using Hotside.Studies;

namespace Hotside.Tests.Studies;

/// <summary>A verdict written down beside a circuit, in a comment of its job file: <c># expect after H1.horn: hot-switched by K1, when S1 pressed</c>.</summary>
public sealed partial record ExpectedVerdict(bool After, string Load, string Side, string? By, string[] Through, string[] When, string? HoldsBy, string? HoldsUntil, string? OnlyUntil)
{
    public static IEnumerable<ExpectedVerdict> In(string jobFile)
    {
        foreach (Match line in Line().Matches(jobFile))
        {
            string rest = line.Groups["rest"].Value.Trim();
            string? Take(string pattern)
            {
                var match = Regex.Match(rest, pattern);
                if (!match.Success) return null;
                rest = rest.Remove(match.Index, match.Length);
                return match.Groups[1].Value.Trim();
            }
            string? only = Take(", only until (.+)$"), holds = Take(", holds by (.+)$"), when = Take(", when (.+)$");
            string? by = Take(" by (\\S+)"), through = Take(" through (.+)$");
            string[]? hold = holds?.Split(" until ");
            yield return new(line.Groups["view"].Value == "after", line.Groups["load"].Value, rest.Trim(), by, through?.Split(" or ") ?? [], when is null ? [] : Regex.Split(when, ",? or "), hold?[0], hold?[1], only);
        }
    }

    /// <summary>What differs from what was found; empty when nothing does.</summary>
    public IEnumerable<string> Against(CircuitStudy study)
    {
        var found = study.Load(Load);
        if (SideText(found.Side) != Side) yield return $"{Load} is {SideText(found.Side)}, not {Side}";
        if (By is not null && !found.Chain.Contains(By)) yield return $"{Load} is not switched by {By} but by [{string.Join(", ", found.Chain)}]";
        if (Through.Length > 0 && !Through.Any(t => found.InSeriesWith.Contains(t))) yield return $"{Load} is in series with [{string.Join(", ", found.InSeriesWith)}], not {string.Join(" or ", Through)}";
        if (When.Length > 0 && !Same(found.Control, When, study.Circuit)) yield return $"{Load} is on when {found.Control}, not when {string.Join(", or ", When)}";
        string? until = found.Until is { } u ? $"{u.Part} {u.Actuator} {u.Position}" : null;
        if (OnlyUntil != until) yield return $"{Load} is on until \"{until}\", not \"{OnlyUntil}\"";
        string? holder = found.Holds is { } h ? $"{h.Relay}.{h.Element}" : null;
        if (HoldsBy != holder) yield return $"{Load} is held by \"{holder}\", not \"{HoldsBy}\"";
        if (HoldsUntil is not null && found.Holds is { } hold && !Same(hold.Released, [HoldsUntil], study.Circuit)) yield return $"{Load} is released when {hold.Released}, not {HoldsUntil}";
    }

    private static string SideText(SwitchedSide side) => side switch
    {
        SwitchedSide.HotSwitched => "hot-switched",
        SwitchedSide.GroundSwitched => "ground-switched",
        SwitchedSide.BothSides => "both-sides",
        SwitchedSide.InSeries => "in-series",
        SwitchedSide.Unswitched => "unswitched",
        _ => "dead",
    };

    // Compared over every combination of the positions that either names.
    private static bool Same(Control control, string[] expected, Circuit circuit)
    {
        var wanted = expected.Select(e => e.Split(" and ").Select(p => Position(p, circuit)).ToArray()).ToArray();
        Variable[] variables = [.. control.Any.SelectMany(c => c.All).Select(s => s.Variable).Concat(wanted.SelectMany(w => w).Select(w => w.Variable)).Distinct()];
        return States(variables).All(state =>
            control.Any.Any(c => c.All.All(s => s.Positions.Contains(state[s.Variable]))) == wanted.Any(w => w.All(p => state[p.Variable] == p.Position)));
    }

    private static (Variable Variable, string Position) Position(string text, Circuit circuit)
    {
        string[] words = text.Trim().Split(' ');
        string position = words[^1], owner = words[0];
        var variable = circuit.Variables.FirstOrDefault(v => v.Part is null && v.Actuator.Name == owner)
            ?? circuit.Variables.First(v => v.Part == owner && v.Actuator.Positions.Contains(position) && (words.Length < 3 || v.Actuator.Name == words[1]));
        return (variable, position);
    }

    private static IEnumerable<Dictionary<Variable, string>> States(Variable[] variables)
    {
        IEnumerable<Dictionary<Variable, string>> all = [[]];
        foreach (var variable in variables)
            all = all.SelectMany(s => variable.Actuator.Positions.Select(p => new Dictionary<Variable, string>(s) { [variable] = p }));
        return all;
    }

    [GeneratedRegex(@"^# expect (?<view>before|after) (?<load>[^:]+): (?<rest>.+)$", RegexOptions.Multiline)]
    private static partial Regex Line();
}
