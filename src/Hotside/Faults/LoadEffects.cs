using System.Collections.Immutable;
using Hotside.Solving;
using Hotside.Solving.Relays;
using Hotside.Studies;
using UnitsNet;

namespace Hotside.Faults;

/// <summary>Compares the volts of the loads with and without a fault.</summary>
internal sealed class LoadEffects
{
    // Works from 85 % of the volts that it had; below three tenths of its rated volts a load does nothing anybody notices (own choices).
    private const double Works = 0.85, Notices = 0.3;

    private readonly ImmutableArray<(ModelElement Element, string Name)> loads;

    /// <summary>The loads of a model.</summary>
    public LoadEffects(CircuitModel model) => loads =
    [
        .. model.Elements.Where(e => e.Element is { IsConsumer: true, IsInternal: false }).Select(e => (e, LoadStudy.NameOf(e.Part, e.Element))),
    ];

    /// <summary>What becomes of the loads from one point to another.</summary>
    public ImmutableArray<LoadConsequence> Between(StatePoint before, StatePoint now)
    {
        var found = ImmutableArray.CreateBuilder<LoadConsequence>();
        foreach (var (element, name) in loads)
        {
            double was = StateSolver.VoltsOf(before, element), becomes = StateSolver.VoltsOf(now, element), least = Notices * element.RatedVolts;
            if (EffectOf(was, becomes, least) is { } effect) found.Add(new(name, effect, ElectricPotential.FromVolts(was), ElectricPotential.FromVolts(becomes)));
        }
        return found.ToImmutable();
    }

    private static LoadEffect? EffectOf(double was, double becomes, double least) =>
        Math.Abs(was) < least ? (Math.Abs(becomes) >= least ? LoadEffect.OnThoughOff : null)
        : Math.Abs(becomes) < least ? LoadEffect.Dead
        : was * becomes < 0 ? LoadEffect.Reversed
        : Math.Abs(becomes) < Works * Math.Abs(was) ? LoadEffect.Weak : null;
}
