using UnitsNet;

namespace Hotside.Proposals;

/// <summary>What the solver found for a part with the new source in its place and all else as it was, the engine standing; a gauge's with its sender at its least ohms, a relay coil's before its contact moves.</summary>
/// <param name="Rated">The volts that it is made for.</param>
/// <param name="Before">Its greatest volts before.</param>
/// <param name="After">Its greatest volts then.</param>
/// <param name="CurrentBefore">Its current before.</param>
/// <param name="CurrentAfter">Its current then.</param>
public sealed record DecisionFigures(ElectricPotential Rated, ElectricPotential Before, ElectricPotential After, ElectricCurrent CurrentBefore, ElectricCurrent CurrentAfter)
{
    /// <summary>How many times the volts it is made for it would get.</summary>
    public double Share => After.Volts / Rated.Volts;

    /// <summary>Whether the sign of its volts turns.</summary>
    public bool Turns { get; init; }
}
