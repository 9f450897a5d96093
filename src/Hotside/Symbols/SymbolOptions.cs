using System.Collections.Immutable;
using Hotside.Symbols.Texts;

namespace Hotside.Symbols;

/// <summary>What a symbol may need to know beside its terminals.</summary>
internal sealed record SymbolOptions
{
    /// <summary>Nothing special.</summary>
    public static readonly SymbolOptions None = new();

    /// <summary>The terminal nearer to the feed, which is drawn on top; <see langword="null"/> for the one whose kind says so.</summary>
    public string? HotTerminal { get; init; }

    /// <summary>Modules between the axes of a relay's contact and coil, 6 or more.</summary>
    public int Spread { get; init; } = 6;

    /// <summary>Whether a relay's coil stands left of its contact, which closes rightwards all the same.</summary>
    public bool CoilAtLeft { get; init; }

    /// <summary>Modules between the ways of a connector, where its marks ask for less.</summary>
    public int LeastPitch { get; init; }

    /// <summary>The contacts of a switch with several; empty where each lower terminal has one to the first upper terminal.</summary>
    public ImmutableArray<SymbolContact> Contacts { get; init; } = [];

    /// <summary>What is inside, for a symbol that is drawn from it.</summary>
    public ImmutableArray<SymbolElement> Elements { get; init; } = [];

    /// <summary>Whether a symbol without enclosure prints its terminals' marks beside its leads.</summary>
    public bool TerminalMarks { get; init; }

    /// <summary>A short text inside: what a box is, or the upper value of a reducer ("12 V").</summary>
    public string? Inside { get; init; }

    /// <summary>A second text inside: the lower value of a reducer ("6 V").</summary>
    public string? InsideToo { get; init; }

    /// <summary>Lettering.</summary>
    public Lettering Lettering { get; init; } = Lettering.Normal;
}
