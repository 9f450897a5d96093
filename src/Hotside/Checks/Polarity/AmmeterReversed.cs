using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Polarity;

/// <summary>Row 28: an ammeter whose current turns round with the polarity, and whose leads were not swapped.</summary>
internal static class AmmeterReversed
{
    public static readonly DiagnosticKind Kind = new("HS3328", Severity.Warning, "Ammeter reads backward",
        "the current of {0} goes the other way through it now: with the lamps on and the engine stopped it would swing to charge")
    {
        Source = "common practice, no source; TM 9-8000, 17-2a for the principle",
    };

    public static IEnumerable<Diagnostic> Of(CheckedAlteration alteration) =>
        from kept in alteration.Kept
        let part = kept.After
        where part.Kind is { Polarity: "reverses", Current: "scale" }
        let works = part.Kind.Elements.FirstOrDefault(e => e.Type is ElementType.Shunt or ElementType.Gauge)
        where works is not null && Signs.OfDischarge(alteration.Before, part.Id, works.Name) * Signs.OfDischarge(alteration.After, part.Id, works.Name) < 0
        select Kind.Of([part.Id], part.Id) with { Hint = $"swap its two leads (\"reverse {part.Id}\"); of a clip-on meter, pass the wire the other way" };
}
