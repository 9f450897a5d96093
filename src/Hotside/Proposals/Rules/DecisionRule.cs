using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Proposals.Rules;

/// <summary>A row of the table by which parts are decided.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Decision">What it decides.</param>
internal sealed record DecisionRule(string Id, DecisionKind Decision)
{
    /// <summary>The word that the part's kind has for voltage, polarity and current; <see langword="null"/>: any.</summary>
    public string? Voltage { get; init; }

    public string? Polarity { get; init; }

    public string? Current { get; init; }

    /// <summary>The types of elements that it is about; empty: any.</summary>
    public ImmutableArray<string> On { get; init; } = [];

    /// <summary>The kinds that it is about; empty: any.</summary>
    public ImmutableArray<string> Kinds { get; init; } = [];

    /// <summary>Above which share of the rated volts it decides; <see langword="null"/> where it asks for no volts.</summary>
    public double? VoltsAbove { get; init; }

    /// <summary>Whether it decides where the sign turns.</summary>
    public bool IfTurns { get; init; }

    /// <summary>The option that has a say; <see langword="null"/>: none.</summary>
    public string? Option { get; init; }

    /// <summary>The unit of the figure without which its decision is a guess; <see langword="null"/>: none.</summary>
    public string? Needs { get; init; }

    /// <summary>Why, with places for figures.</summary>
    public required string Reason { get; init; }

    /// <summary>What is to be done to a part that stays; <see langword="null"/>: nothing.</summary>
    public string? Work { get; init; }

    /// <summary>What is to be minded; <see langword="null"/>: nothing.</summary>
    public string? Caution { get; init; }

    /// <summary>What only the owner can say; <see langword="null"/>: nothing.</summary>
    public string? Question { get; init; }

    /// <summary>Where it is from.</summary>
    public required string Source { get; init; }

    /// <summary>Whether the rule is about an element of a kind.</summary>
    public bool IsAbout(PartKind kind, Element element) =>
        (Voltage is null || Voltage == kind.Voltage) && (Polarity is null || Polarity == kind.Polarity) && (Current is null || Current == kind.Current)
        && (On.IsEmpty || On.Contains(element.Type.ToString().ToLowerInvariant())) && (Kinds.IsEmpty || Kinds.Contains(kind.Id));
}
