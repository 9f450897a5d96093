using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.Diagnostics;

namespace Hotside.Proposals;

/// <summary>
/// An alteration that is proposed for a circuit: what becomes of each part and why, the lines of an ordinary job file, and what is asked. To be edited by hand. Immutable.
/// </summary>
/// <remarks>An aid: the workshop manual, local codes and licensed practice take precedence.</remarks>
public sealed record Proposal
{
    internal Proposal(string from, string to, Alteration alteration)
    {
        (From, To, Alteration) = (from, to, alteration);
        Title = alteration.Title.Length > 0 ? alteration.Title : to;
    }

    /// <summary>What the alteration is called.</summary>
    public string Title { get; }

    /// <summary>The supply as it is: <c>6 V, positive ground</c>.</summary>
    public string From { get; }

    /// <summary>The supply to come.</summary>
    public string To { get; }

    /// <summary>Both circuits and what changes; nothing does where nothing is proposed.</summary>
    public Alteration Alteration { get; }

    /// <summary>What becomes of each part, and of wires that are renewed, in the order in which it was decided: sources first, what stays last.</summary>
    public ImmutableArray<Decision> Decisions { get; internal init; } = [];

    /// <summary>The lines of the change list in the order of work.</summary>
    public ImmutableArray<ProposedLine> Lines { get; internal init; } = [];

    /// <summary>What only the owner or the vehicle can answer.</summary>
    public ImmutableArray<OpenQuestion> Questions { get; internal init; } = [];

    /// <summary>The choices with several good answers.</summary>
    public ImmutableArray<ProposalOption> Options { get; internal init; } = [];

    /// <summary>What the checks find of the proposed circuit, warnings and worse, gravest first.</summary>
    public ImmutableArray<Diagnostic> Findings { get; internal init; } = [];

    /// <summary>What is to be told of the file that it begins with, and of what was asked.</summary>
    public ImmutableArray<Diagnostic> Notes { get; internal init; } = [];

    /// <summary>Whether nothing is to be altered.</summary>
    public bool IsEmpty => Lines.IsEmpty;

    internal string Text { get; init; } = "";

    /// <summary>
    /// The proposal as a job file: the text of the circuit before as it was given, its comments too, then decisions, choices and questions as comments, and the alteration.
    /// </summary>
    public string ToYaml() => Text;
}
