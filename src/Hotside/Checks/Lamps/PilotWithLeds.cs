using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Studies;

namespace Hotside.Checks.Lamps;

/// <summary>Row 33: a pilot lamp between left and right, which returned through cold filaments, and has light-emitting diodes there now.</summary>
internal static class PilotWithLeds
{
    public static readonly DiagnosticKind Kind = new("HS3333", Severity.Warning, "Pilot lamp returns through LED lamps",
        "{0} returns through {1}, which are LED lamps: it stays dark, or makes them glow")
    {
        Source = "own derivation: a cold filament is nearly a wire, a light-emitting diode is none",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit) =>
        from load in circuit.Loads
        where load.Element.Type == ElementType.Lamp && load.Side is SwitchedSide.InSeries
        let with = load.InSeriesWith.Select(circuit.Study.LoadsNamed).SelectMany(l => l).ToArray()
        where with.Length > 0 && with.Any(l => Trade.IsLed(l.Element))
        select Kind.Of([load.Part.Id, .. with.Where(l => Trade.IsLed(l.Element)).Select(l => l.Part.Id).Distinct()], load.Name, Listing.Of(with.Where(l => Trade.IsLed(l.Element)).Select(l => l.Name))) with
        {
            Hint = "fit a pilot for each side, grounded, or two diodes",
        };
}
