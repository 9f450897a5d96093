using Hotside.Checks;
using Hotside.Circuits;

namespace Hotside.Proposals.Steps;

/// <summary>What charges: an alternator in the place of generator and regulator, machines of the new volts, or the old ones polarised.</summary>
internal static class ChargingStep
{
    /// <summary>Decides the machines; an alternator gets its size later, when the loads are known.</summary>
    /// <returns>The alternator that was fitted; <see langword="null"/>: none.</returns>
    public static AlternatorPlace? Run(Workbench work)
    {
        var set = ChargingSet.Of(work.Draft.Before);
        if (work.Target.IsSame || set.Machines.IsEmpty) return null;
        string choice = work.Choices["charging"];
        bool isVolts = work.Target.Factor != 1;
        if (isVolts && choice == "keep")
            throw new ArgumentException($"charging=keep goes with a change of polarity alone: {set.Machines[0].Id} cannot charge {work.Draft.System}.");
        bool isGenerator = set.Machines.All(Trade.IsGenerator);
        if (!isVolts && !(work.Choices.IsStated("charging") && choice != "keep")) work.Choices.Settle("charging", choice = "keep");
        if (work.Thought.Circuit.Sources.Any(s => s.Element.When is null && !s.PlusIsFeed))
        {
            // Those for positive ground are rare, and no kind of the catalogue.
            if (!isGenerator && work.Target.Turns)
            {
                string volts = Numbers.Brief(work.Draft.System.Volts.Max());
                foreach (var part in set.Machines.Concat(set.Regulators)) work.DecideBy("positive-alternator", part.Id, ("was", "minus on the return"), ("to", $"{volts} V with plus on the return"));
                return null;
            }
            if (choice == "alternator" && work.Choices.IsStated("charging"))
                throw new ArgumentException($"An alternator for {work.Draft.System} is a special one, and none is proposed; take charging=generator.");
            if (choice == "alternator" && isGenerator) choice = "generator";
        }
        if (!isGenerator || choice == "generator") Renew(work, set, isVolts);
        else if (choice == "keep") Polarise(work, set);
        else return AlternatorStep.Fit(work, set);
        return null;
    }

    // Alternators of the new volts or ground, or generators that were asked for.
    private static void Renew(Workbench work, ChargingSet set, bool isVolts)
    {
        foreach (var part in set.Machines.Concat(set.Regulators))
        {
            bool minds = isVolts || part.Kind.Polarity == "destroyed";
            string reason = minds ? $"the old one is for {work.Draft.Before.System}" : "";
            if (isVolts)
            {
                var spec = Equivalent.Of(part, work.Draft.Before.System.Volts.Max(), work.Draft.System.Volts.Max()).Spec;
                work.Draft.Replace(part.Id, spec, reason);
                work.Ask(part.Id, "amperes? equal power was taken; machine and regulator must be a pair");
            }
            else if (minds) work.Draft.Renewed.Add(part.Id);
            if (minds)
            {
                work.Draft.Note(part.Id).Reason = reason;
                work.Decide(part.Id, DecisionKind.Replace, reason);
                if (Trade.IsAlternator(part)) work.Comment(part.Id, "the wrong polarity destroys its diodes at once, and it is never polarised; fit it last, battery cables off");
                else if (!Trade.IsGenerator(part)) work.Ask(part.Id, $"is it marked for {work.Draft.System}?");
            }
            else if (!Trade.IsGenerator(part)) Mark(work, part);
            if (Trade.IsGenerator(part) && (work.Target.Turns || isVolts)) PolariseWork(work, part);
        }
    }

    private static void Polarise(Workbench work, ChargingSet set)
    {
        foreach (var part in set.Machines)
        {
            work.Decide(part.Id, DecisionKind.Polarise, "it keeps the magnetism of the old polarity, and would burn the cut-out's points on its first run");
            PolariseWork(work, part);
        }
        foreach (var part in set.Regulators) Mark(work, part);
    }

    private static void Mark(Workbench work, Part part)
    {
        work.Decide(part.Id, DecisionKind.Check, "contacts of two metals are made for one ground");
        work.Draft.Note(part.Id).Works.Add($"read its mark: it stays if it is for {Ground(work)} or for either; never close its cut-out by hand");
        work.Ask(part.Id, $"is it marked for {Ground(work)}?");
    }

    private static string Ground(Workbench work) => work.Draft.System.Ground.ToString().ToLowerInvariant() + " ground";

    // Which way is told by the wiring, never by the letters A and B, which manuals use both ways.
    private static void PolariseWork(Workbench work, Part machine)
    {
        string way = Trade.WayToPolarise(work.Draft.Circuit, machine) ?? "as the manual of the vehicle says";
        work.Draft.Note(machine.Id).Works.Add($"polarise it when every wire is on and before the first run; {way}");
        work.Comment(machine.Id, "the manual of the vehicle comes first; an alternator is never polarised (TM 5-3810-300-24&P-3)");
    }
}
