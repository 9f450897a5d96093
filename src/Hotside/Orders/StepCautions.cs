using Hotside.Circuits;
using Hotside.Wording;

namespace Hotside.Orders;

/// <summary>
/// What to mind before the first step, and before a step: what happens and how to avoid it. Sources: 29 CFR 1926.441 and 1910.178(g) for batteries (drenching, no tools or metal
/// on top), TM 10-3930-671-24 for diodes and for the starter's rests; the rest common practice, no source.
/// </summary>
internal static class StepCautions
{
    /// <summary>The cautions of the whole work.</summary>
    public static IEnumerable<string> Of(WorkPlan plan, Vocabulary words)
    {
        if (plan.Steps.IsEmpty) yield break;
        yield return Cautions.Aid;
        // What stands on no metal is a boat, or has its brake like any other.
        yield return $"{(plan.Alteration.After.System.Ground == Ground.Isolated ? "Take it out of gear, hold it by moorings, wheels or brake." : "Chock the wheels, take it out of gear, put the brake on.")} Air fuel vapor out.".Replace("vapor", words.IsBritish ? "vapour" : "vapor", StringComparison.Ordinal);
        if (plan.Done.Any(d => d) && !plan.Done.All(d => d)) yield return "The work goes on half-way: if a battery went back in the meantime, take its cables off and lift it out first.";
        var panels = plan.Alteration.Before.Parts.Concat(plan.Alteration.After.Parts).Where(p => p.Kind.Elements.Any(e => e.Traits.HasFlag(ElementTraits.Solar))).Select(p => p.Id).Distinct().ToArray();
        if (panels.Length > 0) yield return $"{PartWords.And(panels)} {(panels.Length > 1 ? "give" : "gives")} current in daylight with the battery out: cover {(panels.Length > 1 ? "them" : "it")} before the first wire comes off, until the last is on.";
        foreach (string caution in Cautions.OfWork(plan.Alteration, words)) yield return caution;
    }

    /// <summary>The caution of a step; <see langword="null"/> where none holds.</summary>
    /// <param name="acts">The acts of the step.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="words">Whose words.</param>
    public static string? Of(IReadOnlyList<HandAct> acts, WorkPlan plan, Vocabulary words)
    {
        if (acts.Any(a => a.Type == WorkActType.CableOff)) return "A spark lights hydrogen at the battery: no flame, no tool on top, eyes covered.";
        if (acts.Any(a => a.Type == WorkActType.CableOn && a.Said == "ground")) return "This cable makes the vehicle live: if the lamp glows bright, take the cable off and look for the short.";
        if (acts.Any(a => a.Said == "crank")) return "A starter overheats in seconds: crank 10 s at most, then let it cool 2 min.";
        if (acts.Any(a => a.Said == "charge")) return $"An alternator dies without its battery and a belt takes fingers: no cable off while it runs, sleeves buttoned.";
        if (acts.Any(a => a.Words.Contains("battery") && a.ChangesCircuit)) return "Acid burns and gas explodes: gloves, eyes covered, water for drenching within reach.";
        var minding = acts.Where(a => a.Type is WorkActType.Swap or WorkActType.Fit && a.Words.Contains("electronics")).Select(a => a.Item).Distinct().ToArray();
        if (minding.Length > 0) return $"The wrong sign destroys {PartWords.And(minding)}: match plus and minus to the mark at the tray.";
        if (Cautions.OfBulbs(plan.Alteration, acts.Where(a => a.Type is WorkActType.Swap or WorkActType.Fit or WorkActType.PartOut).Select(a => a.Item)) is { } bulbs) return bulbs;
        if (acts.Any(a => IsAtFuel(a, plan))) return $"Fuel {(words.IsBritish ? "vapour" : "vapor")} burns: air the place, no flame, no lamp with a bare bulb.";
        return acts.Any(a => a.Type == WorkActType.Cut) ? "A cut cannot be undone: measure twice, and leave 150 mm on each side of the new part." : null;
    }

    private static bool IsAtFuel(HandAct act, WorkPlan plan)
    {
        if (!act.ChangesCircuit) return false;
        var part = act.Parts.Select(p => plan.Alteration.After.FindPart(p) ?? plan.Alteration.Before.FindPart(p)).OfType<Part>().FirstOrDefault();
        // A fuse of the pump is in the fuse block; a sender says by its name what it stands in.
        string text = $"{act.Place} {part?.Kind.Id} {(part?.Kind.Elements.Any(e => e.Type == ElementType.Sender) == true ? part.Name : "")}";
        return new[] { "fuel", "tank", "petrol", "gasoline", "carburet" }.Any(w => text.Contains(w, StringComparison.OrdinalIgnoreCase));
    }
}
