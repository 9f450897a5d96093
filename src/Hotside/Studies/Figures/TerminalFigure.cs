using Hotside.Circuits;
using UnitsNet;

namespace Hotside.Studies.Figures;

/// <summary>What a voltmeter shows at a terminal, its black lead on the return.</summary>
/// <param name="End">The terminal.</param>
/// <param name="Voltage">Volts against the return, with their sign: below 0 on the hot side of a positive-ground vehicle. <see langword="null"/> where nothing ties it: it floats.</param>
public sealed record TerminalFigure(End End, ElectricPotential? Voltage)
{
    /// <summary>
    /// What enters its part there, through wires and bolted joints alike, counted from the feed to the return as in conductors; below 0 what leaves it. Ends of nothing but
    /// wires, such as splices and the chassis, have 0.
    /// </summary>
    public ElectricCurrent Current { get; init; }
}
