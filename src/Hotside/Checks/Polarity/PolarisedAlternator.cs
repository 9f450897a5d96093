using Hotside.Diagnostics;

namespace Hotside.Checks.Polarity;

/// <summary>Row 24: work that would polarise an alternator.</summary>
internal static class PolarisedAlternator
{
    public static readonly DiagnosticKind Kind = new("HS3324", Severity.Stop, "Alternator to be polarised",
        "the work on {0} says \"{1}\"; an alternator is never polarised: that destroys its diodes")
    {
        Source = "TM 10-3930-671-24",
    };

    public static IEnumerable<Diagnostic> Of(CheckedAlteration alteration) =>
        from part in alteration.After.Circuit.Parts
        where Trade.IsAlternator(part)
        from work in alteration.WorkFor(part.Id)
        where Trade.SaysToPolarise(work)
        select Kind.Of([part.Id], part.Id, work) with { Hint = "take the line out; only a generator with a field of its own is polarised" };
}
