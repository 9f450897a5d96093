using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Loads;

/// <summary>Row 7: a contact carries more than it is made for.</summary>
internal static class ContactLoad
{
    public static readonly DiagnosticKind Kind = new("HS3307", Severity.Error, "Contact over its rating",
        "{0} carries {1} A {2}, and is made for {3} A: it burns or welds")
    {
        Source = "common practice, no source: a maker's rating is the most a contact carries; AC 43.13-1B, table 11-4 asks for more where lamps or motors are switched",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit) => OverRating.Of(
        circuit, Kind, (part, element) => element.Type == ElementType.Contact && part.Kind.Current != "carries" && !Trade.IsThermalFlasher(part),
        "fit a relay, so that the contact carries its coil alone, or a contact of a higher rating");
}
