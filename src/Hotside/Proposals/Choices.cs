using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Proposals.Rules;

namespace Hotside.Proposals;

/// <summary>The answers that a proposal follows, and which of them it asked for.</summary>
internal sealed class Choices
{
    private readonly Dictionary<string, string> stated = new(StringComparer.Ordinal);
    private readonly HashSet<string> used = new(StringComparer.Ordinal);

    /// <summary>The choices of a request.</summary>
    /// <exception cref="ArgumentException">A name or a value is none; the message names the nearest.</exception>
    public Choices(ImmutableArray<(string Name, string Value)> options)
    {
        foreach (var (name, value) in options)
        {
            string asked = name.Trim().Replace('-', ' '), answer = value.Trim();
            var rule = All.FirstOrDefault(o => o.Name == asked)
                ?? throw new ArgumentException($"There is no option \"{name}\"{Meant(asked, All.Select(o => o.Name))}", nameof(options));
            string chosen = rule.Choices.FirstOrDefault(c => c == answer || c.Replace(' ', '-') == answer)
                ?? throw new ArgumentException($"The option {rule.Name} has no answer \"{value}\"{Meant(answer, rule.Choices)}", nameof(options));
            if (!stated.TryAdd(rule.Name, chosen) && stated[rule.Name] != chosen) throw new ArgumentException($"The option {rule.Name} is given twice.", nameof(options));
        }
    }

    private static ImmutableArray<OptionRule> All => DecisionTable.Standard.Options;

    /// <summary>Takes an answer where nobody has given one and the usual one does not fit.</summary>
    public void Settle(string name, string answer) => stated.TryAdd(name, answer);

    /// <summary>Whether somebody has answered.</summary>
    public bool IsStated(string name) => stated.ContainsKey(name);

    /// <summary>The answer of an option, on which the proposal now hangs.</summary>
    public string this[string name]
    {
        get
        {
            used.Add(name);
            return stated.GetValueOrDefault(name) ?? All.First(o => o.Name == name).Choices[0];
        }
    }

    /// <summary>All options, with what was answered.</summary>
    public ImmutableArray<ProposalOption> Told =>
        [.. All.Select(o => new ProposalOption(o.Name, stated.GetValueOrDefault(o.Name) ?? o.Choices[0], o.Choices, o.Meaning) { IsUsed = used.Contains(o.Name) })];

    private static string Meant(string asked, IEnumerable<string> known) =>
        NearestName.Of(asked, known) is { } near ? $"; did you mean \"{near}\"?" : $"; there are {string.Join(", ", known)}.";
}
