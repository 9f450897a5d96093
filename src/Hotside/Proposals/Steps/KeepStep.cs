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
            work.Decide(part.Id, DecisionKind.Keep, Reason(work, part));
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
