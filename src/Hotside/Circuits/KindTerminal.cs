using System.Collections.Immutable;

namespace Hotside.Circuits;

/// <summary>A terminal of a part kind.</summary>
/// <param name="Name">Its name, as stamped or as the standard numbers it.</param>
/// <param name="Side">The side of the symbol on which it is drawn.</param>
public sealed record KindTerminal(string Name, TerminalSide Side)
{
    /// <summary>What the trade calls it, such as <c>coil start</c>; empty when the name says it all.</summary>
    public string Meaning { get; init; } = "";

    /// <summary>Other marks that stand for the same terminal.</summary>
    public ImmutableArray<string> Aliases { get; init; } = [];

    /// <summary>Its name in the data of the kind, where a part bears it by another mark; else its name.</summary>
    internal string Own { get => field ?? Name; init; }

    /// <summary>Whether the part's shell is this terminal, so that <c>case</c> means it too.</summary>
    public bool IsCase { get; init; }
}
