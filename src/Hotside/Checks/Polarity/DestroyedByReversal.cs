using Hotside.Diagnostics;

namespace Hotside.Checks.Polarity;

/// <summary>Rows 11 and 26: electronics, diodes or an alternator that stay and get the other polarity.</summary>
internal static class DestroyedByReversal
{
    public static readonly DiagnosticKind Kind = new("HS3311", Severity.Stop, "Electronics reversed",
        "{0} worked with {1} at its {2} terminal and gets {3} there now: its semiconductors are destroyed at once")
    {
        Source = "TM 10-3930-671-24 for diodes; that its kind minds polarity stands in the kind's data",
    };

    public static readonly DiagnosticKind Alternator = new("HS3326", Severity.Stop, "Alternator kept with the battery reversed",
        "{0} stays while {1} is turned round: its diodes are destroyed the moment the cable goes on")
    {
        Source = "TM 10-3930-671-24: reversed polarity destroys an alternator's diodes",
    };

    public static IEnumerable<Diagnostic> Of(CheckedAlteration alteration)
    {
        foreach (var (_, part) in alteration.Kept.Where(k => k.After.Kind.Polarity == "destroyed"))
        {
            if (Trade.IsAlternator(part))
            {
                if (alteration.TurnsPolarity)
                    yield return Alternator.Of([part.Id], part.Id, alteration.After.Batteries) with { Hint = "fit one for the new polarity, or keep the battery as it was; never try it" };
                continue;
            }
            foreach (var element in part.Kind.Elements.Where(e => e.IsConsumer))
            {
                int was = Signs.OfVolts(alteration.Before, part.Id, element.Name), now = Signs.OfVolts(alteration.After, part.Id, element.Name);
                // What is dead since it is turned round is told as that.
                if (was * now >= 0 || alteration.After.Study.Loads.Any(l => l.Part == part && l.Element == element && l.IsNeverFed)) continue;
                yield return Kind.Of([part.Id], part.Id, was > 0 ? "plus" : "minus", part.Kind.TerminalNamed(element.From) ?? element.From, now > 0 ? "plus" : "minus") with
                {
                    Hint = "replace it by one for the new polarity, or insulate it and swap its leads, before the battery goes in",
                };
                break;
            }
        }
    }
}
