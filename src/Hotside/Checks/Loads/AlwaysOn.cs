using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Studies;

namespace Hotside.Checks.Loads;

/// <summary>Row 17: a load that is on whatever the switches do, and is none that is meant to be.</summary>
internal static class AlwaysOn
{
    // What a vehicle may draw at rest (common practice, no source).
    private const double Rest = 0.05;

    public static readonly DiagnosticKind Kind = new("HS3317", Severity.Warning, "Always on",
        "{0} is on whatever the switches do and draws {1} A: the battery ({2}) is flat in about {3}")
    {
        Source = "50 mA at rest: common practice, no source",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit)
    {
        var rest = circuit.Points.All.FirstOrDefault(p => p is { IsAtRest: true, IsRunning: false });
        if (rest is null) yield break;
        foreach (var load in circuit.Loads.Where(l => l.Side == SwitchedSide.Unswitched && !l.Part.IsStarter(l.Element) && !l.Part.Kind.Id.StartsWith("clock", StringComparison.Ordinal)))
        {
            // What electronics draw that state nothing is anybody's guess.
            if (load.Element.Type == ElementType.Electronics && load.Part.Rated(load.Element.Name, Unit.Ampere) is null && load.Part.Rated(load.Element.Name, Unit.Watt) is null) continue;
            double amperes = Math.Abs(rest.Solution.Element(load.Part.Id, load.Element.Name).Amperes);
            if (amperes <= Rest) continue;
            double? hours = circuit.Circuit.Sources.Where(s => s.Element.When is null).Select(s => s.Part.Rated(s.Element.Name, Unit.AmpereHour)).FirstOrDefault() / amperes;
            yield return Kind.Of([load.Part.Id], load.Name, Numbers.Plain(amperes, 2), circuit.Batteries, hours is { } h ? Duration(h) : "a time that its ampere-hours would tell") with
            {
                Hint = "find the switch that is bridged or missing; if it is meant, accept the finding with the reason",
            };
        }
    }

    private static string Duration(double hours) => hours < 48 ? $"{Numbers.Plain(hours, 0)} h" : $"{Numbers.Plain(hours / 24, 0)} days";
}
