using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Solving;
using Hotside.Studies;

namespace Hotside.Sizing.Currents;

/// <summary>The greatest current of each load: at the highest volts of the running vehicle, or computed where something in its way takes volts.</summary>
internal sealed class LoadCurrents
{
    // What else is on makes the sources sag otherwise than when a load was computed (own choice; a hundredth was seen). What is less than a hundredth of it, no load notices.
    private const double Sag = 1.03, Notices = 0.01;

    private readonly CircuitStudy study;
    private readonly RunningCircuit running;
    private readonly PieceCurrents pieces;
    private readonly Dictionary<(string, string), LoadCurrent> known;

    /// <summary>The currents of a circuit's loads.</summary>
    public LoadCurrents(CircuitStudy study, RunningCircuit running, LoadPieces pieces)
    {
        (this.study, this.running, this.pieces) = (study, running, new(running, pieces));
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
        bool isFree = load.IsApproximate || load.IsInRace || load.Holds is not null || !load.AlsoFedBy.IsEmpty || load.Control.Whole is not null;
        var combinations = load.Control.Any.AddRange(load.Sneaks?.Any ?? []);
        var when = isFree ? [new Combination([])] : combinations;
        bool isComputed = !isFree && (running.HasSeveralVoltages || load.Side == SwitchedSide.InSeries || load.Sneaks is not null || load.Paths.Any(p => TakesVolts(p.HotWay) || TakesVolts(p.GroundWay)));
        double amperes = !isSteady || when.IsEmpty ? 0 : isComputed ? Computed(element, when) : running.AtHighest(element);
        double stray = !isSteady || isFree ? 0 : Stray(element, when);
        return new(load, element, Math.Max(amperes, stray), stray, when) { Combinations = combinations, IsSteady = isSteady, IsComputed = isComputed, IsShort = IsShort(load) };
    }

    // In every state of its piece; where there are too many, in the states that are known to feed it.
    private double Computed(ModelElement element, ImmutableArray<Combination> when)
    {
        var states = pieces.Of(element);
        var points = states.IsEmpty ? when.SelectMany(running.StatesOf).Select(running.Solve) : states.Select(s => s.Point);
        return Math.Min(Sag * points.Max(p => Math.Abs(running.AmperesOf(p, element))), running.AtHighest(element));
    }

    // What it gets, through other loads, in states in which it does not count as fed.
    private double Stray(ModelElement element, ImmutableArray<Combination> when)
    {
        double most = pieces.Of(element).Where(s => !when.Any(c => c.All.All(set => IsIn(set, s.Positions)))).Select(s => Math.Abs(running.AmperesOf(s.Point, element))).DefaultIfEmpty().Max();
        double all = running.AtHighest(element);
        return most < Notices * all ? 0 : Math.Min(Sag * most, all);
    }

    // What stands outside the piece does not matter to it.
    private static bool IsIn(PositionSet set, IReadOnlyDictionary<Variable, string> positions) => !positions.TryGetValue(set.Variable, out string? at) || set.Positions.Contains(at);

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
/// <param name="Stray">The part of it that it may get, through other loads, in any combination.</param>
/// <param name="When">In which combinations it may be on; an empty one where nobody can exclude it.</param>
internal sealed record LoadCurrent(LoadStudy Load, ModelElement Element, double Amperes, double Stray, ImmutableArray<Combination> When)
{
    /// <summary>The greatest steady current, whatever of it is counted.</summary>
    public double Most { get; } = Amperes;

    /// <summary>The combinations that are known to feed it.</summary>
    public required ImmutableArray<Combination> Combinations { get; init; }

    /// <summary>Whether it is on for longer than a moment; a cranking motor is not.</summary>
    public required bool IsSteady { get; init; }

    /// <summary>Whether its current was computed, alone, rather than told from the highest volts.</summary>
    public required bool IsComputed { get; init; }

    /// <summary>Whether it is on for a short time only.</summary>
    public required bool IsShort { get; init; }
}
