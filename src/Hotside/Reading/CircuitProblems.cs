using Hotside.Diagnostics;

namespace Hotside.Reading;

/// <summary>What can be wrong with a circuit as such, whatever it is for.</summary>
internal static class CircuitProblems
{
    public static readonly DiagnosticKind WireToItself = new("HS2001", Severity.Error, "Wire to itself", "both ends of {0} are {1}");
    public static readonly DiagnosticKind NothingAtPart = new("HS2002", Severity.Warning, "Part without wires", "nothing is joined to {0}");
    public static readonly DiagnosticKind GroundContradicts = new("HS2003", Severity.Error, "Ground contradicts the circuit", "the system line says {0} ground, but the other pole of {1} stands on the return");
    public static readonly DiagnosticKind FreeTerminalUsed = new("HS2004", Severity.Warning, "Free terminal in use", "{0} is said to be free, but {1} ends on it");
    public static readonly DiagnosticKind OneWireSplice = new("HS2005", Severity.Warning, "Splice with one wire", "only {1} ends on the splice {0}");
    public static readonly DiagnosticKind SamePair = new("HS2010", Severity.Warning, "Two wires between the same ends", "{0} runs from {1} to {2}, as {3} does");
    public static readonly DiagnosticKind NoSource = new("HS2006", Severity.Warning, "No source", "there is neither battery nor generator in the circuit");
}
