using Hotside.Circuits;

namespace Hotside.Orders;

/// <summary>What becomes of one wire through the acts of an order. Its sides are the ends in the order of the circuit that has it last.</summary>
/// <param name="Id">Its id.</param>
internal sealed record WireHistory(string Id)
{
    /// <summary>The copper before; <see langword="null"/> where it is not there before.</summary>
    public Wire? Was { get; init; }

    /// <summary>The copper after; <see langword="null"/> where it is not there after.</summary>
    public Wire? Will { get; init; }

    /// <summary>Whether the before circuit writes its ends the other way round.</summary>
    public bool IsFlipped { get; init; }

    /// <summary>Where its ends are at first, as named before; <see langword="null"/> where they are nowhere yet.</summary>
    public End?[] Start { get; } = new End?[2];

    /// <summary>Where its ends are at last, as named after; <see langword="null"/> where the wire is gone.</summary>
    public End?[] Final { get; } = new End?[2];

    /// <summary>The act that takes an end off; −1: none.</summary>
    public int[] Off { get; } = [-1, -1];

    /// <summary>The act that puts an end on; −1: none.</summary>
    public int[] On { get; } = [-1, -1];

    /// <summary>The act with which the old copper is gone; −1: none.</summary>
    public int Pull { get; set; } = -1;

    /// <summary>The act with which the new copper is there; −1: none.</summary>
    public int Lay { get; set; } = -1;

    /// <summary>Whether it is there once some acts are done.</summary>
    public bool IsThere(bool[] done) => (Lay >= 0 && done[Lay]) || (Was is not null && !(Pull >= 0 && done[Pull]));

    /// <summary>The copper once some acts are done.</summary>
    public Wire CopperIn(bool[] done)
    {
        if (Will is null || Was is null) return Was ?? Will!;
        if (Lay >= 0) return done[Lay] ? Will : Was;
        return On.All(act => act < 0 || done[act]) ? Will : Was;
    }
}
