using Hotside.Solving.Laws;
using Hotside.Solving.Networks;

namespace Hotside.Solving.Relays;

/// <summary>The operating point of a circuit in one state.</summary>
/// <param name="State">The position of each variable of the circuit.</param>
/// <param name="Laws">The law of each edge.</param>
/// <param name="Point">The potentials.</param>
/// <param name="RegulatorAmperes">The current of each regulator from its input to its output.</param>
internal sealed record StatePoint(int[] State, Law?[] Laws, NetworkPoint Point, double[] RegulatorAmperes);
