using System.Collections.Immutable;
using Hotside.Solving;

namespace Hotside.Diagnoses;

/// <summary>A single fault of a circuit.</summary>
/// <param name="Mode">How something fails.</param>
/// <param name="Text">What is said of it.</param>
/// <param name="Items">The ids of parts and conductors concerned, the culprit first.</param>
/// <param name="Weight">How likely before anything is known; only ratios matter.</param>
internal sealed record Fault(FaultMode Mode, string Text, ImmutableArray<string> Items, double Weight)
{
    /// <summary>What is said to be concerned: <c>w7</c>, <c>the contact of S1</c>.</summary>
    public string Piece { get; init; } = "";

    /// <summary>How it is mended; may be empty.</summary>
    public string Repair => string.Format(System.Globalization.CultureInfo.InvariantCulture, Mode.Repair, Piece);

    /// <summary>The first of the edges that it changes; −1 for none.</summary>
    public int FirstEdge { get; init; } = -1;

    /// <summary>How many edges it changes, one behind the other.</summary>
    public int EdgeCount { get; init; } = 1;

    /// <summary>Whether it is that this fuse has opened by itself, which is seen.</summary>
    public bool IsBlown(ModelElement fuse) => Mode is { On: "fuse", Change: FaultChange.Out } && FirstEdge == fuse.FirstEdge;

    /// <summary>The circuit with wires crossed, for a fault that no other law of an edge can show.</summary>
    public StateSolver? Crossed { get; init; }

    /// <summary>Whether it can open fuses.</summary>
    public bool IsShort => Mode.Change is FaultChange.Bridge or FaultChange.Crossed or FaultChange.Closed or FaultChange.Turned;
}

/// <summary>A fault of a size.</summary>
/// <param name="Fault">The fault's number in the list.</param>
/// <param name="Size">Its size.</param>
internal readonly record struct FaultCell(int Fault, FaultSize Size);
