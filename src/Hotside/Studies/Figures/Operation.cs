using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Solving;
using Hotside.Studies.Figures.Budgets;

namespace Hotside.Studies.Figures;

/// <summary>The figures of a circuit, each worked out when it is first asked for. Safe to share between threads.</summary>
internal sealed class Operation(Circuit circuit)
{
    private readonly Lock gate = new();
    private readonly Dictionary<Setting, SettingFigures> known = [];
    private readonly Dictionary<Sequence, ImmutableArray<SettingFigures>> passed = [];
    private CircuitSolver? solver;
    private ChargingBudget? budget;

    /// <summary>The figures of a setting, relays released before.</summary>
    public SettingFigures In(Setting setting)
    {
        lock (gate)
            return known.TryGetValue(setting, out var figures) ? figures : known[setting] = FigureTelling.Of(circuit, Solver.Solve(setting));
    }

    /// <summary>What the solver says of a setting, not kept: for a search through many.</summary>
    public Solution Tried(Setting setting)
    {
        lock (gate) return Solver.Solve(setting);
    }

    /// <summary>The figures of settings one after the other, each from where the one before left the relays.</summary>
    public ImmutableArray<SettingFigures> Through(Sequence sequence)
    {
        lock (gate)
            return passed.TryGetValue(sequence, out var steps) ? steps
                : passed[sequence] = [.. Solver.SolveSequence(sequence.Steps).Select(s => FigureTelling.Of(circuit, s))];
    }

    /// <summary>The charging budget, made once.</summary>
    public ChargingBudget Budget(Func<ChargingBudget> make)
    {
        lock (gate) return budget ??= make();
    }

    // Laying out the network costs; who asks for no figures does not pay.
    private CircuitSolver Solver => solver ??= new(circuit);
}
