using Hotside.Circuits;
using Hotside.Proposals.Exposures;
using Hotside.Proposals.Rules;

namespace Hotside.Proposals.Steps;

/// <summary>Each part that would get too many volts, by the first row of the table that fits.</summary>
internal static class LoadStep
{
    /// <summary>Decides the loads; gauges that are to be protected are only written down, for they go in groups.</summary>
    public static List<(Part Part, Exposure Exposure)> Run(Workbench work)
    {
        List<(Part, Exposure)> gauges = [];
        if (work.Target.IsSame) return gauges;
        foreach (var part in work.Draft.Before.Parts.Where(p => !work.IsDecided(p.Id) && !p.IsStandingSource))
        {
            if (part.Kind.TakesAnyTerminal)
            {
                work.Decide(part.Id, DecisionKind.Check, "what lies behind it is not in this file, and minds the new supply as well");
                work.Draft.Note(part.Id).Works.Add("what lies behind this end of the page needs the same decisions before it is fed");
                work.Ask(part.Id, "what lies behind it?");
                continue;
            }
            var exposures = work.Exposures.Of(part).Where(e => e.Rises).ToArray();
            var found = DecisionTable.Standard.Rules.Where(r => r.VoltsAbove is not null)
                .SelectMany(r => exposures.Where(e => r.IsAbout(part.Kind, e.Element) && e.Share > r.VoltsAbove).Select(e => (Rule: r, Exposure: e))).FirstOrDefault();
            if (found.Rule is null) continue;
            var worst = exposures.Where(e => found.Rule.IsAbout(part.Kind, e.Element)).MaxBy(e => e.Share)!;
            if (found.Rule.Decision == DecisionKind.Protect && work.Choices[found.Rule.Option!] == "reducer") gauges.Add((part, worst));
            else Decide(work, part, found.Rule, worst);
        }
        return gauges;
    }

    private static void Decide(Workbench work, Part part, DecisionRule rule, Exposure exposure)
    {
        string reason = work.ReasonOf(rule, exposure);
        string? choice = rule.Option is { } option ? work.Choices[option] : null;
        if (rule.Decision == DecisionKind.Check && choice != "replace" || choice == "keep" && rule.Decision == DecisionKind.Replace)
        {
            work.Decide(part.Id, DecisionKind.Check, reason, rule, exposure);
            work.Draft.Note(part.Id).Works.Add(rule.Work!);
            return;
        }
        if (choice == "dropper" && DropperStep.Run(work, part, rule, exposure, reason)) return;
        Replace(work, part, rule, exposure, reason);
        if (choice == "led") LedStep.Of(work, part.Id);
    }

    private static void Replace(Workbench work, Part part, DecisionRule rule, Exposure exposure, string reason)
    {
        double volts = work.Nominal(exposure.Volts);
        var equal = Equivalent.Of(part, exposure.Rated, volts);
        // What it stands on and is bolted to stays as drafted.
        var drafted = work.Draft.Part(part.Id).Spec;
        work.Draft.Replace(part.Id, equal.Spec with { Joints = drafted.Joints, Case = drafted.Case, FreeTerminals = drafted.FreeTerminals }, reason);
        work.Decide(part.Id, DecisionKind.Replace, reason, rule, exposure);
        if (!equal.Stated && rule.Needs is { } unit) work.Ask(part.Id, $"{Called(unit)}? the file states none; what is usual was taken");
        else if (equal.Work.Length > 0) work.Ask(part.Id, $"stamped {Called(unit: rule.Needs!)}? {equal.Work}");
        if (part.Kind.Polarity == "reverses" || part.Kind.Polarity == "destroyed") work.Ask(part.Id, $"is the new one made for {work.Draft.System}?");
    }

    private static string Called(string unit) => unit switch { "W" => "watts", "A" => "amperes", "ohm" => "ohms", _ => unit };
}
