using UnitsNet;

namespace Hotside.Faults;

/// <summary>What a fault does to a load.</summary>
/// <param name="Load">The load's name: <c>H1</c>, <c>E3.tail</c>.</param>
/// <param name="Effect">What becomes of it.</param>
/// <param name="Before">The volts that it has without the fault, with the sign from its first end to its second.</param>
/// <param name="Now">The volts that it has with the fault; once fuses have opened, where they do.</param>
public sealed record LoadConsequence(string Load, LoadEffect Effect, ElectricPotential Before, ElectricPotential Now);
