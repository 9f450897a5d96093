using Hotside.Checks.Loads;
using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Joints;

/// <summary>Row 45: a plug or a joint carries more than it is made for.</summary>
internal static class ConnectorLoad
{
    public static readonly DiagnosticKind Kind = new("HS3345", Severity.Error, "Connector over its rating",
        "{0} carries {1} A {2}, and is made for {3} A: it heats and melts its housing")
    {
        Source = "common practice, no source: a maker's rating of a way is the most it carries",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit) => OverRating.Of(
        circuit, Kind, (part, element) => element.Type == ElementType.Link || (element.Type == ElementType.Contact && part.Kind.Current == "carries"), "share the current among several ways, or take a connector of a higher rating");
}
