using Hotside.Circuits;
using Hotside.Proposals.Exposures;
using Hotside.Proposals.Rules;

namespace Hotside.Proposals.Steps;

/// <summary>What stays and gets the other polarity.</summary>
internal static class PolarityStep
{
    /// <summary>Decides the parts that are not replaced.</summary>
    public static void Run(Workbench work)
    {
        if (!work.Target.Turns) return;
        foreach (var part in work.Draft.Before.Parts.Where(p => work.Draft.Circuit.FindPart(p.Id) is not null && !p.IsStandingSource))
        {
            // A new part is bought for the new ground; one that is only protected or checked has a polarity all the same.
            if (work.Decisions.Any(d => d.Item == part.Id && d.Kind is DecisionKind.Replace or DecisionKind.Polarise)) continue;
            if (part.Kind.Elements is [{ Type: ElementType.Diode }]) Reverse(work, part, part.Kind.Terminals[0].Name, part.Kind.Terminals[1].Name, "a diode passes current one way, and its way turns with the ground", null, null);
            else if (Found(work, part) is var (rule, exposure)) Decide(work, part, rule, exposure);
        }
    }

    private static (DecisionRule Rule, Exposure Exposure)? Found(Workbench work, Part part)
    {
        string polarity = PolarityOf(part);
        var turned = work.Exposures.Of(part).Where(e => e.Turns).ToArray();
        foreach (var rule in DecisionTable.Standard.Rules.Where(r => r.IfTurns))
            if (turned.FirstOrDefault(e => rule.IsAbout(part.Kind with { Polarity = polarity }, e.Element)) is { } exposure)
                return (rule, exposure);
        return null;
    }

    // An option of a motor says whether it has magnets; where none is stated, nobody knows.
    private static string PolarityOf(Part part)
    {
        const string says = "polarity ";
        string[] meanings = [.. part.Kind.Options.Where(o => o.Value.StartsWith(says, StringComparison.Ordinal)).Select(o => o.Key)];
        if (meanings.Length == 0) return part.Kind.Polarity;
        return part.Spec.Options.FirstOrDefault(meanings.Contains) is { } stated ? part.Kind.Options[stated][says.Length..] : "test";
    }

    private static void Decide(Workbench work, Part part, DecisionRule rule, Exposure exposure)
    {
        string reason = work.ReasonOf(rule, exposure);
        string[] terminals = [.. part.Kind.Terminals.Select(t => t.Name)];
        bool isOnMetal = part.Joints.Any(j => j.On == work.Return) || part.Kind.Elements.Any(e => e.From == "case" || e.To == "case");
        if (rule.Decision == DecisionKind.Check)
        {
            if (work.Decisions.Any(d => d.Item == part.Id && d.Kind == DecisionKind.Check)) return;
            work.Decide(part.Id, DecisionKind.Check, reason, rule, exposure);
            work.Draft.Note(part.Id).Works.Add(rule.Work!);
            work.Ask(part.Id, "does it mind the polarity? it stays if it works on the bench, else one for the new ground takes its place");
        }
        else if (rule.Decision == DecisionKind.Reverse && terminals.Length >= 2 && (!isOnMetal || rule.Id == "turned-coil"))
            Reverse(work, part, exposure.Element.From, exposure.Element.To, reason, rule, exposure);
        else
        {
            // With one terminal on metal its leads cannot change places; stamped plus and minus go with the poles.
            if (exposure.Element.IsOneWay && terminals.Length == 2) work.Draft.Swap(part.Id, terminals[0], terminals[1]);
            work.Draft.Renewed.Add(part.Id);
            work.Draft.Note(part.Id).Reason = rule.Decision == DecisionKind.Reverse ? $"{reason}; one terminal on metal, its leads cannot be swapped" : reason;
            work.Decide(part.Id, DecisionKind.Replace, work.Draft.Note(part.Id).Reason!, rule, exposure);
            work.Ask(part.Id, $"is the new one made for {work.Draft.System}? the same figures were taken");
        }
    }

    private static void Reverse(Workbench work, Part part, string first, string second, string reason, DecisionRule? rule, Exposure? exposure)
    {
        work.Draft.Note(part.Id).Reason = reason;
        work.Draft.Swap(part.Id, part.Kind.TerminalNamed(first) ?? first, part.Kind.TerminalNamed(second) ?? second);
        // A part of three terminals has no line of its own: its wires have.
        if (part.Kind.Terminals.Length > 2)
            foreach (var wire in work.Draft.Circuit.Conductors.Where(c => work.Draft.Before.FindConductor(c.Id) is { } was && (was.From != c.From || was.To != c.To) && c.Ends.Any(e => e.Part == part.Id)))
                work.Draft.Note(wire.Id).Reason ??= reason;
        work.Decide(part.Id, DecisionKind.Reverse, reason, rule, exposure);
    }
}
