using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Studies.Figures;

/// <summary>
/// The positions in which the loads together take most power, what is used briefly left out. Searched: first the combination of each load, the hungriest first, as far as they
/// go together; then one actuator at a time to where more is taken, until none helps. Nothing says that no other choice takes more.
/// </summary>
internal sealed class MostDrawn
{
    // Own choice: a second round finds what the first one made possible.
    private const int MostRounds = 3;

    private readonly CircuitStudy study;
    private readonly ImmutableArray<SetPosition> conditions;

    /// <summary>Searches.</summary>
    /// <param name="study">The circuit.</param>
    /// <param name="conditions">What stands anyway.</param>
    public MostDrawn(CircuitStudy study, ImmutableArray<SetPosition> conditions)
    {
        (this.study, this.conditions) = (study, conditions);
        var chosen = conditions;
        foreach (var load in study.Loads.Where(l => !l.Element.IsInternal && !BriefLoad.Is(l.Part)).OrderByDescending(RatedWatts))
            if (load.Control.Any.Select(PositionChoice.Of).FirstOrDefault(c => GoesWith(c, chosen)) is { IsDefault: false } wanted)
                chosen = Both(chosen, wanted);
        Positions = Improved(chosen);
    }

    /// <summary>The positions, in the order of the circuit's variables.</summary>
    public ImmutableArray<SetPosition> Positions { get; }

    // What would turn the starter goes with nothing.
    private bool GoesWith(ImmutableArray<SetPosition> wanted, ImmutableArray<SetPosition> chosen) =>
        wanted.All(p => !PositionChoice.Has(chosen, p) || chosen.Contains(p)) && !double.IsNegativeInfinity(Watts(Both(chosen, wanted)));

    private static ImmutableArray<SetPosition> Both(ImmutableArray<SetPosition> chosen, ImmutableArray<SetPosition> wanted) => [.. chosen, .. wanted.Where(p => !chosen.Contains(p))];

    private ImmutableArray<SetPosition> Improved(ImmutableArray<SetPosition> chosen)
    {
        var running = new PositionChoice(study.Circuit).SourcesRunning;
        var free = study.Circuit.Variables.Where(v => v.Actuator is { Cycles: false, IsNoControl: false } && v.Actuator.Drive != ActuatorDrive.Driven
            && !PositionChoice.Has(running, PositionChoice.Put(v, v.Actuator.Rest))).ToArray();
        double most = Watts(chosen);
        bool better = true;
        for (int round = 0; round < MostRounds && better; round++)
        {
            better = false;
            foreach (var variable in free)
            foreach (string position in variable.Actuator.Positions)
            {
                var put = PositionChoice.Put(variable, position);
                if (chosen.Contains(put)) continue;
                ImmutableArray<SetPosition> other = [.. chosen.Where(p => p.Part != put.Part || p.Actuator != put.Actuator), put];
                double watts = Watts(other);
                // Equal within rounding is not more: what does not matter rests.
                if (watts <= most * (1 + 1e-6) + 1e-6) continue;
                (chosen, most, better) = (other, watts, true);
            }
        }
        var order = study.Circuit.Variables;
        return [.. order.SelectMany(v => chosen.Where(p => p.Part == v.Part && p.Actuator == v.Actuator.Name && (p.Position != v.Actuator.Rest || conditions.Contains(p))))];
    }

    private double Watts(ImmutableArray<SetPosition> positions)
    {
        var loads = study.Operation.Tried(new("", positions, [])).Elements.Where(e => e.Element.IsConsumer).ToArray();
        return loads.Any(l => BriefLoad.Is(l.Part) && Math.Abs(l.Amperes) > 0.01 * Math.Abs(l.RatedAmperes)) ? double.NegativeInfinity : loads.Sum(l => Math.Max(l.Watts, 0));
    }

    // Ordering only; what states nothing comes last.
    private static double RatedWatts(LoadStudy load) =>
        load.Part.Rated(load.Element.Name, Unit.Watt) ?? (load.Part.Rated(load.Element.Name, Unit.Ampere) * load.Part.Rated(load.Element.Name, Unit.Volt)) ?? 0;
}
