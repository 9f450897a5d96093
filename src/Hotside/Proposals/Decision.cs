using System.Collections.Immutable;

namespace Hotside.Proposals;

/// <summary>What is proposed for a part or a wire, and why.</summary>
/// <param name="Item">The id of the part or wire.</param>
/// <param name="Title">Its name, or what it is.</param>
/// <param name="Kind">What becomes of it.</param>
/// <param name="Reason">Why, as the end of a sentence with "because".</param>
public sealed record Decision(string Item, string Title, DecisionKind Kind, string Reason)
{
    /// <summary>The id of the rule that decided; empty where none did.</summary>
    public string Rule { get; init; } = "";

    /// <summary>Where the rule is from; <see langword="null"/> where no rule decided.</summary>
    public string? Source { get; init; }

    /// <summary>What is to be minded; <see langword="null"/>: nothing beyond the general cautions.</summary>
    public string? Caution { get; init; }

    /// <summary>What was computed for it; <see langword="null"/> where nothing was.</summary>
    public DecisionFigures? Figures { get; init; }

    /// <summary>What only the owner or the vehicle can answer; empty: nothing.</summary>
    public ImmutableArray<string> Questions { get; init; } = [];

    /// <summary>As a line: <c>H1 (Horn): replace, because …</c>.</summary>
    public override string ToString() => $"{Item} ({Title}): {Word}, because {Reason}";

    internal string Word => Kind == DecisionKind.TakeOut ? "take out" : Kind.ToString().ToLowerInvariant();
}
