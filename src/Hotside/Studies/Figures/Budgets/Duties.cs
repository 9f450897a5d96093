using Hotside.Circuits;

namespace Hotside.Studies.Figures.Budgets;

/// <summary>
/// Duties of loads, by what they are and by what switches them. Ignition, pumps, gauges and running lamps 1, blower 0.5, stop and turn lamps 0.1, horn 0.02, starter by event:
/// common practice, no source. Points are closed 55 to 65 % of the time: common practice, no source. What is marked own choice has no source either.
/// </summary>
internal sealed class Duties(CircuitStudy study)
{
    private const string Practice = "common practice, no source", Own = "own choice, no source";

    private readonly Circuit circuit = study.Circuit;

    /// <summary>The duty of a load.</summary>
    public Duty Of(LoadStudy load) =>
        load.Part.Rated(load.Element.Name, Unit.Percent) is { } stated ? Duty.Of(stated / 100, stated / 100, "as the job states")
        : BriefLoad.Is(load.Part) ? Duty.Of(0, 0, "for seconds only, by event")
        : Relayed(load) ?? load.Element.Type switch
        {
            ElementType.Horn => Duty.Of(0.02, 0.02, $"horn: {Practice}"),
            ElementType.Lamp => Lamp(load),
            ElementType.Motor => Motor(load),
            ElementType.Heater => Heater(load),
            ElementType.Coil when Passes(load, IsInterrupter) => Duty.Of(0.6, 0.6, $"ignition, points closed 55 to 65 % of the time: {Practice}"),
            _ => Duty.Of(1, 1, $"while the engine runs: {Practice}"),
        };

    // The coil of a relay is on as long as what it switches.
    private Duty? Relayed(LoadStudy load)
    {
        if (load.Element.Type != ElementType.Coil || !load.Part.Kind.Actuators.Any(a => a.Drive == ActuatorDrive.Driven)) return null;
        var switched = study.Loads.Where(l => l.Chain.Contains(load.Part.Id) && !l.Element.IsInternal && l.Element.Type != ElementType.Coil).Select(Of).ToArray();
        return switched.Length == 0 ? null : Duty.Of(switched.Max(d => d.ByDay.DecimalFractions), switched.Max(d => d.ByNight.DecimalFractions), "as long as what it switches");
    }

    private Duty Lamp(LoadStudy load) =>
        Passes(load, p => p.Kind.Actuators.Any(a => a is { Cycles: true, Name: "flash" })) ? Duty.Of(0.05, 0.05, $"turn lamp, a tenth of the time and lit for half of it: {Practice}")
        : IsBehind(load, "stop-switch") ? Duty.Of(0.1, 0.1, $"stop lamp: {Practice}")
        : IsBehind(load, "door-switch") || IsBehind(load, "reverse-switch") || load.Part.Kind.Id is "roof-lamp" or "courtesy-lamp" ? Duty.Of(0, 0, $"not while driving on: {Own}")
        : load.Part.Kind.Letter == "H" ? Duty.Of(1, 1, $"tell-tale, with what current it has while the engine runs: {Own}")
        : Duty.Of(0, 1, $"running lamp: {Practice}");

    private static Duty Motor(LoadStudy load) =>
        load.Part.Kind.Id.StartsWith("wiper", StringComparison.Ordinal) ? Duty.Of(0, 1, $"wiper, all the time in rain: {Own}")
        : load.Part.Kind.Id.StartsWith("fuel-pump", StringComparison.Ordinal) ? Duty.Of(1, 1, $"pump: {Practice}")
        : load.Element.Traits.HasFlag(ElementTraits.Fan) || load.Part.Kind.Id.StartsWith("motor", StringComparison.Ordinal) ? Duty.Of(0.5, 0.5, $"blower or the like: {Practice}")
        : Duty.Of(0.1, 0.1, $"motor, now and then: {Own}");

    private static Duty Heater(LoadStudy load) =>
        load.Part.Kind.Id is "glow-plug" or "cigar-lighter" ? Duty.Of(0, 0, "for seconds only, by event") : Duty.Of(0, 1, $"heater, at night and in rain: {Own}");

    private static bool IsInterrupter(Part part) => part.Kind.Actuators.Any(a => a.Cycles);

    private bool IsBehind(LoadStudy load, string kind) => load.SwitchedBy.Any(id => circuit.FindPart(id) is { } part && part.Kind.Id.StartsWith(kind, StringComparison.Ordinal));

    private bool Passes(LoadStudy load, Predicate<Part> isMeant) =>
        load.Paths.SelectMany(p => p.HotWay.Concat(p.GroundWay)).Distinct(StringComparer.Ordinal).Any(id => circuit.FindPart(id) is { } part && isMeant(part));
}
