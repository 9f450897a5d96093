using Hotside.Circuits;
using UnitsNet;

namespace Hotside.Studies.Figures;

/// <summary>What a voltmeter shows at a terminal, its black lead on the return.</summary>
/// <param name="End">The terminal.</param>
/// <param name="Voltage">Volts against the return, with their sign: below 0 on the hot side of a positive-ground vehicle. <see langword="null"/> where nothing ties it: it floats.</param>
public sealed record TerminalFigure(End End, ElectricPotential? Voltage);
