using UnitsNet;

namespace Hotside.Proposals;

/// <summary>What the solver found for a part with the new source in its place and all else as it was, the engine standing, without signs; a gauge's with its sender at its least ohms, a relay coil's before its contact moves.</summary>
/// <param name="Rated">The volts that it is made for, above 0.</param>
/// <param name="Before">The magnitude of its greatest volts before, 0 or more.</param>
/// <param name="After">The magnitude of its greatest volts then, 0 or more.</param>
/// <param name="CurrentBefore">The magnitude of its greatest current before, 0 or more; 0 for a flasher, which is told by volts alone.</param>
/// <param name="CurrentAfter">The magnitude of its greatest current then, 0 or more.</param>
public sealed record DecisionFigures(ElectricPotential Rated, ElectricPotential Before, ElectricPotential After, ElectricCurrent CurrentBefore, ElectricCurrent CurrentAfter)
{
    /// <summary>How many times the volts it is made for it would get: 1 is right, 2 is 12 V on a part for 6 V.</summary>
    public double Share => After.Volts / Rated.Volts;

    /// <summary>Whether the sign of its volts turns.</summary>
    public bool Turns { get; init; }
}
