using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Polarity;

/// <summary>Row 12: a motor with magnets, or a meter, that gets the other polarity.</summary>
internal static class RunsBackward
{
    public static readonly DiagnosticKind Kind = new("HS3312", Severity.Error, "Runs or reads backward",
        "{0} gets the other polarity now and {1}")
    {
        Source = "physics: a motor with magnets turns with the direction of its current, a wound field turns with it (TM 9-8000, 17-2a for meters)",
    };

    public static readonly DiagnosticKind Plus = new("HS3384", Severity.Error, "Plus terminal on minus",
        "the terminal {0} of {1} is stamped plus and gets minus: it {2}")
    {
        Source = Kind.Source,
    };

    public static IEnumerable<Diagnostic> Of(CheckedAlteration alteration)
    {
        foreach (var (_, part) in alteration.Kept.Where(k => k.After.Kind.Polarity == "reverses"))
        foreach (var element in part.Kind.Elements.Where(e => e.IsConsumer && !HasPlus(part, e)))
            if (Signs.OfVolts(alteration.Before, part.Id, element.Name) * Signs.OfVolts(alteration.After, part.Id, element.Name) < 0)
                yield return Kind.Of([part.Id], part.Id, What(element)) with { Hint = $"swap its leads (\"reverse {part.Id}\"); one grounded by its case is to be insulated first, or replaced" };
    }

    /// <summary>The same where the terminals are stamped: no comparison is needed.</summary>
    public static IEnumerable<Diagnostic> OfStamped(CheckedCircuit circuit) =>
        from part in circuit.Circuit.Parts
        where part.Kind.Polarity == "reverses"
        from element in part.Kind.Elements
        where element.IsConsumer && HasPlus(part, element) && Signs.OfVolts(circuit, part.Id, element.Name) < 0
        select Plus.Of([part.Id], element.From, part.Id, What(element)) with { Hint = "swap its two wires" };

    private static bool HasPlus(Part part, Element element) => Signs.IsPlus(part.Kind, element.From);

    private static string What(Element element) => element.Type == ElementType.Motor ? "turns backward" : "reads backward";
}
