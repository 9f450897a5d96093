using System.Collections.Immutable;
using Hotside.Alterations;

namespace Hotside.Proposals;

/// <summary>A line of the change list that is proposed.</summary>
/// <param name="Text">The line, without its dash.</param>
/// <param name="Change">The numbered change that it makes.</param>
public sealed record ProposedLine(string Text, Change Change)
{
    /// <summary>What stands above it as comments: cautions and what the line hangs on.</summary>
    public ImmutableArray<string> Comments { get; init; } = [];

    /// <summary>What is asked before it may count.</summary>
    public ImmutableArray<OpenQuestion> Questions { get; init; } = [];

    /// <summary>Whether its length is a guess, to be measured on the vehicle.</summary>
    public bool IsToMeasure { get; init; }
}
