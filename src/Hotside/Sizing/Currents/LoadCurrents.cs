using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Solving;
using Hotside.Studies;

namespace Hotside.Sizing.Currents;

/// <summary>The greatest current of each load: at the highest volts of the running vehicle, or computed where something in its way takes volts.</summary>
internal sealed class LoadCurrents
{
    private readonly CircuitStudy study;
    private readonly RunningCircuit running;
    private readonly Dictionary<(string, string), LoadCurrent> known;

    /// <summary>The currents of a circuit's loads.</summary>
    public LoadCurrents(CircuitStudy study, RunningCircuit running)
    {
        (this.study, this.running) = (study, running);
        var loads = study.Loads.ToDictionary(l => (l.Part.Id, l.Element.Name));
        All =
        [
            .. running.Model.Elements.Where(e => e.Element.IsConsumer && loads.ContainsKey((e.Part.Id, e.Element.Name)))
                .Select(e => Of(e, loads[(e.Part.Id, e.Element.Name)])),
        ];
        known = All.ToDictionary(c => (c.Load.Part.Id, c.Load.Element.Name));
    }

    /// <summary>All loads with their currents.</summary>
    public ImmutableArray<LoadCurrent> All { get; }

    /// <summary>The load of a consumer.</summary>
    public LoadCurrent? Of(ModelElement element) => known.GetValueOrDefault((element.Part.Id, element.Element.Name));

    private LoadCurrent Of(ModelElement element, LoadStudy load)
    {
        bool isSteady = !load.IsMomentary && !load.Part.IsStarter(load.Element);
        // What may be on when nobody asks for it counts as always possible.
        bool isFree = load.IsApproximate || load.IsInRace || load.Holds is not null || !load.AlsoFedBy.IsEmpty || load.Control.IsCut;
        var combinations = load.Control.Any.AddRange(load.Sneaks?.Any ?? []);
        var when = isFree ? [new Combination([])] : combinations;
        bool isComputed = !isFree && (running.HasSeveralVoltages || load.Side == SwitchedSide.InSeries || load.Sneaks is not null || load.Paths.Any(p => TakesVolts(p.HotWay) || TakesVolts(p.GroundWay)));
        double amperes = !isSteady || when.IsEmpty ? 0
            : isComputed ? when.SelectMany(running.StatesOf).Max(s => Math.Abs(running.AmperesOf(running.Solve(s), element)))
            : running.AtHighest(element);
        return new(load, element, amperes, when) { Combinations = combinations, IsSteady = isSteady, IsComputed = isComputed, IsShort = IsShort(load) };
    }

    private bool TakesVolts(ImmutableArray<string> way) => way.Any(id => study.Circuit.FindPart(id) is { } part
        && part.Kind.Elements.Any(e => e.Type is ElementType.Resistor or ElementType.Dropper or ElementType.Sender or ElementType.Diode));

    // A horn, and whatever is on only while a hand or foot holds something that springs back, is no continuous load.
    private static bool IsShort(LoadStudy load) => load.Element.Type == ElementType.Horn
        || (!load.Control.IsAlways && !load.Control.Any.IsEmpty && load.Control.Any.All(c => c.All.Any(IsHeld)));

    private static bool IsHeld(PositionSet set) => set.Variable.Actuator is { Drive: ActuatorDrive.Hand or ActuatorDrive.Key } actuator
        && set.Positions.All(p => p != actuator.Rest && (actuator.Returns || actuator.ReturnsFrom == p));
}

/// <summary>The greatest current of a load.</summary>
/// <param name="Load">The load.</param>
/// <param name="Element">Its element in the model.</param>
/// <param name="Amperes">The greatest steady current in amperes; 0 where it is never on for long.</param>
/// <param name="When">In which combinations it may be on; an empty one where nobody can exclude it.</param>
internal sealed record LoadCurrent(LoadStudy Load, ModelElement Element, double Amperes, ImmutableArray<Combination> When)
{
    /// <summary>The combinations that are known to feed it.</summary>
    public required ImmutableArray<Combination> Combinations { get; init; }

    /// <summary>Whether it is on for longer than a moment; a cranking motor is not.</summary>
    public required bool IsSteady { get; init; }

    /// <summary>Whether its current was computed, alone, rather than told from the highest volts.</summary>
    public required bool IsComputed { get; init; }

    /// <summary>Whether it is on for a short time only.</summary>
    public required bool IsShort { get; init; }
}
