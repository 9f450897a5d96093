using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Alterations;

/// <summary>Applies a list of edits to a before circuit.</summary>
internal static class EditList
{
    public static readonly DiagnosticKind NamesOther = new("HS4102", Severity.Note, "Work that names another part",
        "the work on {0} names {1}, which is another part");

    /// <summary>The alteration that a list makes, with its numbers in the order of work.</summary>
    /// <remarks>
    /// Part lines come first, then what is mapped or turned round carries conductors and joints over, then conductors are run, moved, renewed
    /// and cut; so new ends are named as they are after, wherever a line stands. Settings are the caller's to state: those of before stand in both circuits.
    /// </remarks>
    /// <param name="before">The before circuit.</param>
    /// <param name="title">What the alteration is called.</param>
    /// <param name="afterSystem">The supply after.</param>
    /// <param name="groups">What stands under one number each, in the user's order.</param>
    public static EditResult Apply(
        Circuit before, string title, ElectricalSystem afterSystem, ImmutableArray<EditGroup> groups)
    {
        var edits = groups.SelectMany((g, i) => g.Edits.Select((e, j) => (Edit: e, Spot: new Spot(i, j)))).ToList();
        var problems = new EditProblems();
        var lost = new TerminalsLost();
        var roster = new EditRoster(before, edits, problems);
        var marks = EditMarks.Of(ref before, edits, roster, problems);
        var parts = PartsAfter.Of(before, edits, roster, marks, problems, lost);
        var wires = WiresAfter.Of(before, edits, roster, parts, problems, lost);
        lost.Report(roster, parts, problems);
        var system = afterSystem.Return is { } node ? afterSystem with { Return = parts.Resolve(node, Spot.None) } : afterSystem;
        NoteWorkOnOthers(edits, before, parts, problems);
        if (problems.HasError) return new(null, problems.InOrder()) { Parts = parts.All };

        bool isSame = groups.IsEmpty && system == before.System;
        var after = isSame ? before : new Circuit(system, [.. parts.All.Select(p => Occupied(p, [.. wires.All]))], [.. wires.All], before.Settings);
        var acts = groups.Select(g => g.Edits.Select(e => Acts.Of(e, before, wires)).ToImmutableArray()).ToImmutableArray();
        var order = OrderOfWork.Of(before, after, acts);
        foreach (var (group, note) in order.Notes) problems.Add(new(group, 0), note);
        var changes = order.Groups.Select((g, i) => new Change(i + 1, acts[g], groups[g].Reason));
        return new(new(title, before, after, [.. changes]), problems.InOrder()) { Parts = parts.All };
    }

    // A terminal that was left open on purpose is not open once a conductor lands on it.
    private static Part Occupied(Part part, ImmutableArray<Conductor> wires)
    {
        var free = part.Spec.FreeTerminals.RemoveAll(t => wires.Any(w => w.From == End.At(part.Id, t) || w.To == End.At(part.Id, t)));
        return free.Length == part.Spec.FreeTerminals.Length ? part : part with { Spec = part.Spec with { FreeTerminals = free } };
    }

    private static void NoteWorkOnOthers(List<(Edit Edit, Spot Spot)> edits, Circuit before, PartsAfter parts, EditProblems problems)
    {
        var known = before.Parts.Concat(parts.All).DistinctBy(p => p.Id).ToList();
        foreach (var (edit, spot) in edits)
            if (edit is DoEdit work && known.FirstOrDefault(p => p.Id != work.Id && Names(work.Sentence, p)) is { } other)
                problems.Add(spot, NamesOther.Of([work.Id, other.Id], work.Id, other.Name is null ? other.Id : $"{other.Id} ({other.Name})"));
    }

    private static bool Names(string sentence, Part part) => HasWord(sentence, part.Id) || (part.Name is { } name && HasWord(sentence, name));

    private static bool HasWord(string sentence, string word)
    {
        for (int at = sentence.IndexOf(word, StringComparison.Ordinal); at >= 0; at = sentence.IndexOf(word, at + 1, StringComparison.Ordinal))
        {
            int end = at + word.Length;
            if ((at == 0 || !IsOfWord(sentence[at - 1])) && (end == sentence.Length || !IsOfWord(sentence[end]))) return true;
        }
        return false;
    }

    private static bool IsOfWord(char c) => char.IsLetterOrDigit(c) || c is '-' or '_';
}
