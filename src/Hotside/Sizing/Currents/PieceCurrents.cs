using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Solving;

namespace Hotside.Sizing.Currents;

/// <summary>The currents of the consumers of a piece in every combination of what stands within it.</summary>
internal sealed class PieceCurrents
{
    /// <summary>The most combinations of one piece that are all computed (own choice).</summary>
    public const int MostCombinations = 1_024;

    private readonly RunningCircuit running;
    private readonly LoadPieces pieces;
    private readonly Dictionary<int, ImmutableArray<PieceState>> states = [];

    /// <summary>The currents of a running circuit's pieces.</summary>
    public PieceCurrents(RunningCircuit running, LoadPieces pieces) => (this.running, this.pieces) = (running, pieces);

    /// <summary>Every state of the piece of a consumer; none where there are too many.</summary>
    public ImmutableArray<PieceState> Of(ModelElement consumer)
    {
        int piece = pieces.Of(consumer);
        return states.TryGetValue(piece, out var found) ? found : states[piece] = Solve(pieces.VariablesOf(piece));
    }

    private ImmutableArray<PieceState> Solve(ImmutableArray<Variable> variables)
    {
        double combinations = variables.Aggregate(1.0, (n, v) => n * v.Actuator.Positions.Length);
        if (combinations > MostCombinations) return [];
        var solved = ImmutableArray.CreateBuilder<PieceState>();
        for (int n = 0; n < combinations; n++)
        {
            Dictionary<Variable, string> at = [];
            int rest = n;
            foreach (var variable in variables)
            {
                at[variable] = variable.Actuator.Positions[rest % variable.Actuator.Positions.Length];
                rest /= variable.Actuator.Positions.Length;
            }
            var point = running.Solve(running.StateOf(at.Select(p => new SetPosition(p.Key.Part, p.Key.Actuator.Name, p.Value))));
            if (!running.IsShort(point)) solved.Add(new(at, point));
        }
        return solved.ToImmutable();
    }
}

/// <summary>A state of a piece.</summary>
/// <param name="Positions">What stands where within it.</param>
/// <param name="Point">The point of the circuit.</param>
internal sealed record PieceState(IReadOnlyDictionary<Variable, string> Positions, Solving.Relays.StatePoint Point);
