using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Joints;

/// <summary>Row 49: a wire where it is hotter than its insulation stands. How much less it carries where it is merely warm, its ampacity says.</summary>
internal static class HotPlace
{
    public static readonly DiagnosticKind Kind = new("HS3349", Severity.Error, "Place too hot for the insulation",
        "{0} runs where it is {1} °C, and its insulation stands {2} °C: it softens or turns brittle, and touches metal")
    {
        Source = "SAE J1127 and J1128, ISO 6722-1: temperature classes; unknown insulation is taken as 60 °C (common practice, no source)",
    };

    private const double Gxl = 125;

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit) =>
        from sizing in circuit.Sizes.Conductors
        let wire = sizing.Conductor
        where wire.Wire.Role != WireRole.Spare && wire.Wire.TemperatureInCelsius >= sizing.Insulation.Celsius
        select Kind.Of([wire.Id], wire.Id, Numbers.Plain(wire.Wire.TemperatureInCelsius!.Value, 0), Numbers.Plain(sizing.Insulation.Celsius, 0)) with
        {
            Hint = "run it elsewhere, shield it, or take wire whose insulation stands more" + (wire.Wire.TemperatureInCelsius < Gxl ? ", such as GXL for 125 °C" : ""),
        };
}
