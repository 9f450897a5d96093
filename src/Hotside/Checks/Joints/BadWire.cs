using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Joints;

/// <summary>Row 69: an old wire that stays though its insulation is brittle or burnt.</summary>
internal static class BadWire
{
    public static readonly DiagnosticKind Kind = new("HS3369", Severity.Error, "Bad wire kept",
        "{0} is {1} and stays: its insulation gives way where it is moved, and it touches metal")
    {
        Source = "common practice, no source",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit) =>
        from wire in circuit.Circuit.Conductors
        where wire.Wire is { Condition: WireCondition.Brittle or WireCondition.Burnt, Role: not WireRole.Spare }
        select Kind.Of([wire.Id], wire.Id, wire.Wire.Condition == WireCondition.Burnt ? "burnt" : "brittle") with
        {
            Hint = wire.Wire.Condition == WireCondition.Burnt ? "renew it, and find what burnt it first" : "renew it",
        };
}
