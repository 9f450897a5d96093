using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Charging;

/// <summary>Row 22: too little current to wake an alternator that is excited through its charge lamp.</summary>
internal static class Exciter
{
    // Nine tenths of what 2 W at 12 V let through: bulbs differ by as much (own choice).
    private const double Amperes = 0.15;

    public static readonly DiagnosticKind Kind = new("HS3322", Severity.Warning, "Alternator poorly excited",
        "{0} gets {1} A at {2} with the key on and the engine stopped; about {3} A (a lamp of 2 W at 12 V) wake it, less may not")
    {
        Source = "a car maker's service manual of 1998: a charge lamp of 2 W, less does not excite",
    };

    public static readonly DiagnosticKind Unknown = new("HS3393", Severity.Warning, "Charge lamp of unknown watts",
        "the watts of {0}, which wakes {1}, are not stated; a lamp below 2 W may not wake it") { Source = Kind.Source };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit)
    {
        foreach (var part in circuit.Circuit.Parts.Where(Trade.IsAlternator))
        {
            // At rest the rotor, or the regulator before it, takes its current where the running machine gives it.
            var exciter = part.Kind.Elements.Where(Trade.IsMachine).Skip(1).FirstOrDefault();
            var rotor = exciter is null ? null : part.Kind.Elements.FirstOrDefault(e => e.Type == ElementType.Coil && e.From == exciter.From);
            if (exciter is null || rotor is null) continue;
            double most = circuit.Points.Steady.Where(p => !p.IsRunning).Select(p => Math.Abs(p.Solution.Element(part.Id, rotor.Name).Amperes)).DefaultIfEmpty(0).Max();
            foreach (var lamp in circuit.Loads.Where(l => l.Element.Type == ElementType.Lamp && l.InSeriesWith.Any(w => w.Split('.')[0] == part.Id)))
                if (lamp.Part.Rated(lamp.Element.Name, Unit.Watt) is null && lamp.Part.Rated(lamp.Element.Name, Unit.Ampere) is null)
                    yield return Unknown.Of([lamp.Part.Id, part.Id], lamp.Name, part.Id) with { Hint = "read it on the bulb and state it (\"2 W\")" };
            if (most >= Amperes) continue;
            yield return Kind.Of([part.Id], part.Id, Numbers.Plain(most, 2), part.Kind.TerminalNamed(exciter.From) ?? exciter.From, Numbers.Plain(2.0 / 12, 2)) with
            {
                Hint = "take a charge lamp of 2 W or more, or put a resistor beside it; an LED alone does not do",
            };
        }
    }
}
