using Hotside.Circuits;
using Hotside.Kinds;

namespace Hotside.Proposals.Steps;

/// <summary>What stays, and why: nothing is decided silently.</summary>
internal static class KeepStep
{
    /// <summary>Writes down all parts that no step decided.</summary>
    public static void Run(Workbench work)
    {
        foreach (var part in work.Draft.Before.Parts.Where(p => !work.IsDecided(p.Id)))
            if (DoubtOf(work, part) is var (reason, task, question)) Check(work, part, reason, task, question);
            else work.Decide(part.Id, DecisionKind.Keep, Reason(work, part));
    }

    private static void Check(Workbench work, Part part, string reason, string task, string question)
    {
        work.Decide(part.Id, DecisionKind.Check, reason);
        work.Draft.Note(part.Id).Works.Add(task);
        work.Ask(part.Id, question);
    }

    // What must suit the volts and takes none that the solver could tell of: capacitors, breakers, resistors; and what nothing in the file feeds.
    private static (string Reason, string Task, string Question)? DoubtOf(Workbench work, Part part)
    {
        if (!work.Scope.IsWhole || work.Target.Factor == 1 || part.Kind.Voltage is not ("match" or "misreads")) return null;
        double volts = work.Draft.System.Volts.Max();
        if (part.Ratings.Any(r => r.Quantity.Unit == Unit.Volt && r.Quantity.Values.All(v => v >= volts))) return null;
        if (!part.Kind.Elements.Any(e => e.IsConsumer && !e.IsInternal))
            return part.Kind.Elements.Any(e => e.IsSource) ? null : ($"it must suit {Numbers.Brief(volts)} V, and nothing in the file says whether it does", "read its mark for volts, amperes and ohms before it is fed; one that does not suit is replaced", $"does it suit {Numbers.Brief(volts)} V and the current there then?");
        return work.Exposures.Of(part).All(e => Math.Abs(e.Volts) < 0.05 * e.Rated)
            ? ("nothing in this file feeds it, so nothing can be computed for it", "find out how it is fed before anything is powered", "how is it fed? it must suit the new supply as well") : null;
    }

    private static string Reason(Workbench work, Part part)
    {
        if (!work.Scope.IsWhole) return "it is not part of this job";
        if (work.Target.IsSame) return "the supply stays as it is";
        if (part.Kind.Elements.Any(e => e.Type == ElementType.Sender)) return "it belongs to its gauge, which keeps its volts";
        if (part.Kind.Elements.IsEmpty) return "it joins, and minds neither volts nor polarity";
        if (part.Kind.Current == "opens") return "its rating serves its circuit as before";
        if (part.Kind.Voltage is "match" or "misreads" or "brief" && work.Exposures.Of(part).MaxBy(e => e.Share) is { } worst)
            return worst.Share < 0.05 ? "it gets no volts from the battery" : $"{Numbers.Brief(Math.Abs(worst.Volts))} V stand on {Numbers.Brief(worst.Rated)} V";
        if (part.Kind.Voltage == "contact") return "only current and breaking matter to it, and no more current passes it than it may carry";
        return Sensitivity.MeaningOfVoltage(part.Kind.Voltage) ?? "it minds neither volts nor polarity";
    }
}
