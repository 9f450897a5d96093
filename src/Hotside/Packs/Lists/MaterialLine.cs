using System.Collections.Immutable;
using UnitsNet;

namespace Hotside.Packs.Lists;

/// <summary>What sort of thing is bought.</summary>
public enum MaterialSort
{
    /// <summary>Wire and cable off the reel.</summary>
    Wire,

    /// <summary>What goes on the ends of wires.</summary>
    Terminal,

    /// <summary>Fuses, and as many to spare.</summary>
    Fuse,

    /// <summary>Lamps and bulbs.</summary>
    Lamp,

    /// <summary>Relays, machines, switches and all other parts.</summary>
    Part,

    /// <summary>Labels, clamps and what else the work needs.</summary>
    Sundry,
}

/// <summary>A thing to buy.</summary>
/// <param name="Sort">What sort of thing it is.</param>
/// <param name="Name">What it is called, with its ratings.</param>
public sealed record MaterialLine(MaterialSort Sort, string Name)
{
    /// <summary>How much is bought of what comes by length: all cut lengths and 15 %, to a tenth of a metre upwards; <see langword="null"/> for what is counted.</summary>
    public Length? Length { get; init; }

    /// <summary>How many pieces; <see langword="null"/> for what comes by length.</summary>
    public int? Count { get; init; }

    /// <summary>How many more are bought to spare.</summary>
    public int Spares { get; init; }

    /// <summary>The parts and wires that it is for; ids and ends.</summary>
    public ImmutableArray<string> For { get; init; } = [];

    /// <summary>The wires among them that have to be measured before it is known how much is needed; ids.</summary>
    public ImmutableArray<string> NotMeasured { get; init; } = [];
}
