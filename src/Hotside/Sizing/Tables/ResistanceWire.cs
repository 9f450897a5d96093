using Hotside.Circuits;
using Hotside.Solving.Laws;

namespace Hotside.Sizing.Tables;

/// <summary>Wires that are meant to resist: what they lose is no fault, and no table of ampacities is for them.</summary>
internal static class ResistanceWire
{
    // So many times what copper of its size would have, and so many ohms at least (own choice): bad joints are less.
    private const double Times = 3, LeastOhms = 0.05;

    /// <summary>Whether the resistance stated for a wire is that of a resistance wire.</summary>
    public static bool Is(Wire wire) => wire.ResistanceInOhms is > LeastOhms and var ohms
        && !(ohms <= Times * CopperResistance.Of(wire with { ResistanceInOhms = null }, CopperResistance.TableCelsius));
}
