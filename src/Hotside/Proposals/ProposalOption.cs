using System.Collections.Immutable;

namespace Hotside.Proposals;

/// <summary>A choice with several good answers.</summary>
/// <param name="Name">Its name, as <c>--option NAME=VALUE</c> has it.</param>
/// <param name="Value">The answer that this proposal follows.</param>
/// <param name="Choices">All answers, the default first.</param>
/// <param name="Meaning">What it is about.</param>
public sealed record ProposalOption(string Name, string Value, ImmutableArray<string> Choices, string Meaning)
{
    /// <summary>Whether the proposal hangs on it.</summary>
    public bool IsUsed { get; init; }
}
