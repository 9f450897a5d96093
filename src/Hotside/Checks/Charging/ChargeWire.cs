using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Charging;

/// <summary>Row 64: the wire on a machine's output carries less than the machine gives.</summary>
internal static class ChargeWire
{
    public static readonly DiagnosticKind Kind = new("HS3364", Severity.Stop, "Charge wire thinner than the output",
        "{0} gives {1} A to an empty battery, and {2} ({3}) carries {4} A")
    {
        Source = "33 CFR 183.425, table 5; that the charge wire carries the machine's rating: common practice, no source",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit) =>
        from source in circuit.Circuit.Sources
        where Trade.IsMachine(source.Element)
        let rated = source.Part.Rated(source.Element.Name, Unit.Ampere)
        where rated is not null && source.Element == source.Part.Kind.Elements.First(Trade.IsMachine)
        let wires = circuit.Circuit.ConductorsAt(source.Feed).Select(c => circuit.Sizes.Conductor(c.Id)).ToArray()
        where wires.Length == 1
        from wire in wires
        where wire.AmpacityAlone is { } alone && alone.Amperes < rated
        select Kind.Of([wire.Conductor.Id, source.Part.Id], source.Part.Id, Numbers.Plain(rated.Value), wire.Conductor.Id, wire.Conductor.Wire.Label, Numbers.Plain(wire.AmpacityAlone!.Value.Amperes, 1)) with
        {
            Hint = "run a thicker one, with a fuse of 1.25 to 1.5 times the machine's amperes at the battery's end",
        };
}
