using Hotside.Alterations;
using Hotside.Circuits;

namespace Hotside.Wording;

/// <summary>A change as a line of the list: what to do, in the imperative, and why where that is said.</summary>
internal static class ChangeText
{
    private static readonly string[] Verbs = ["fit ", "replace ", "run ", "move ", "swap the leads of "];

    public static string Of(Change change, Alteration alteration, Vocabulary words)
    {
        // What is alike under one number is said once: "fit N1, N2, N3 (voltage reducers): 12 V each".
        var groups = change.Acts.Where(a => !a.Items.IsEmpty).GroupBy(a => Likeness(a, alteration, words), StringComparer.Ordinal);
        string text = "", verb = "";
        foreach (string line in groups.Select(g => Of([.. g], alteration, words)))
        {
            // The same verb need not be said twice: "fit X3 (...); X4 (...)".
            text += text.Length == 0 ? line : "; " + (verb.Length > 0 && line.StartsWith(verb, StringComparison.Ordinal) ? line[verb.Length..] : line);
            verb = Verbs.FirstOrDefault(v => line.StartsWith(v, StringComparison.Ordinal)) ?? "";
        }
        return change.Reason is { Length: > 0 } reason ? $"{text}; because {reason}" : text;
    }

    private static string Of(Act[] acts, Alteration alteration, Vocabulary words) => acts[0] switch
    {
        TakeOut => "take out " + TakenOut([.. acts.SelectMany(a => a.Items)], alteration, words),
        Fit => PartChangeText.Fitted([.. acts.SelectMany(a => a.Items)], alteration, words),
        Replace replace => PartChangeText.Replaced([.. acts.SelectMany(a => a.Items)], replace.Reversed, alteration, words),
        Reverse => "swap the leads of " + PartChangeText.Called([.. acts.SelectMany(a => a.Items)], alteration.Before, words),
        Remount => Mounted(acts[0].Items[0], alteration, words),
        Run => Ran([.. acts.SelectMany(a => a.Items)], alteration.After),
        Move move => Moved(move, alteration),
        Renew => "renew " + Renewed([.. acts.SelectMany(a => a.Items)], alteration),
        Cut cut => $"cut {Wire(alteration.Before.FindConductor(cut.Items[0]), alteration.Before)}; ends to {EndWords.Of(cut.First, alteration.After)} and {EndWords.Of(cut.Second, alteration.After)}",
        Work work => $"{work.Items[0]}: {work.Sentence}",
        var other => string.Join(", ", other.Items),
    };

    // Acts with one key stand together; all others keep to themselves.
    private static string Likeness(Act act, Alteration alteration, Vocabulary words) => act switch
    {
        TakeOut => "out",
        Fit => "fit " + PartChangeText.Specification(act.Items[0], alteration.After, words),
        Replace replace => $"replace {replace.Reversed} {PartChangeText.Specification(act.Items[0], alteration.After, words)} {TerminalMapText.Of(act.Items, alteration)}",
        Run => "run " + (alteration.After.FindConductor(act.Items[0]) is { } wire ? Label(wire) : act.Items[0]),
        Renew => "renew",
        _ => act.GetType().Name + " " + string.Join(",", act.Items) + (act is Work work ? work.Sentence : ""),
    };

    private static string TakenOut(string[] ids, Alteration alteration, Vocabulary words)
    {
        string parts = string.Join(", ", ids.Where(i => alteration.Before.FindConductor(i) is null).Select(i => PartChangeText.Called([i], alteration.Before, words)));
        Conductor[] wires = [.. ids.Select(alteration.Before.FindConductor).OfType<Conductor>()];
        string copper = wires.Length == 0 ? "" : (wires.Length == 1 ? "wire " : "wires ") + string.Join(", ", wires.Select(w => Wire(w, alteration.Before)));
        return parts.Length > 0 && copper.Length > 0 ? $"{parts}; {copper}" : parts + copper;
    }

    private static string Mounted(string id, Alteration alteration, Vocabulary words)
    {
        string what = PartChangeText.Called([id], alteration.After, words);
        return alteration.After.FindPart(id)?.CaseOn is { } on ? $"mount {what} with its case on {EndWords.Of(on, alteration.After)}" : $"mount {what} insulated";
    }

    private static string Ran(string[] ids, Circuit circuit)
    {
        Conductor[] wires = [.. ids.Select(circuit.FindConductor).OfType<Conductor>()];
        return wires.Length == 0 ? "run " + string.Join(", ", ids) : $"run {Label(wires[0])} from {string.Join("; from ", wires.Select(w => Ends(w, circuit)))}";
    }

    private static string Moved(Move move, Alteration alteration)
    {
        var wire = alteration.Before.FindConductor(move.Items[0]);
        string ends = string.Join(", ", move.Ends.Select(e => $"from {EndWords.Of(e.From, alteration.Before)} to {EndWords.Of(e.To, alteration.After)}"));
        string renewed = move.IsRenewed && alteration.After.FindConductor(move.Items[0]) is { } now ? $"; renew it as {Label(now)}" : "";
        return $"move {(wire is null ? move.Items[0] : Label(wire) + WhichOf(wire, move, alteration.Before))} {ends}{renewed}";
    }

    // Of two wires that look alike at one terminal, the far end tells which is meant.
    private static string WhichOf(Conductor wire, Move move, Circuit before)
    {
        if (move.Ends.Length != 1) return "";
        var at = move.Ends[0].From;
        bool isAlone = !before.Conductors.Any(c => c.Id != wire.Id && c.Ends.Contains(at) && Label(c) == Label(wire));
        return isAlone ? "" : $" (the one from {EndWords.Of(wire.From == at ? wire.To : wire.From, before)})";
    }

    private static string Renewed(string[] ids, Alteration alteration)
    {
        var wires = ids.Select(i => (Was: alteration.Before.FindConductor(i), Now: alteration.After.FindConductor(i))).Where(w => w.Now is not null);
        return string.Join("; ", wires.GroupBy(w => (Was: w.Was is null ? "" : Label(w.Was), Now: Label(w.Now!))).Select(g =>
            (g.Key.Was == g.Key.Now || g.Key.Was.Length == 0 ? g.Key.Now : $"{g.Key.Was} as {g.Key.Now}") + $" ({string.Join("; ", g.Select(w => Ends(w.Now!, alteration.After)))})"));
    }

    private static string Wire(Conductor? wire, Circuit circuit) => wire is null ? "" : $"{Label(wire)} ({Ends(wire, circuit)})";

    private static string Ends(Conductor wire, Circuit circuit) => $"{EndWords.Of(wire.From, circuit)} to {EndWords.Of(wire.To, circuit)}";

    // A wire of which nothing is known goes by its id.
    private static string Label(Conductor wire) => wire.Wire.Label is { Length: > 0 } label ? label : wire.Wire.Name ?? wire.Id;
}
