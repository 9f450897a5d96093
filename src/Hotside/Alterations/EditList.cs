using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Alterations;

/// <summary>Applies a list of edits to a before circuit.</summary>
internal static class EditList
{
    public static readonly DiagnosticKind NamesOther = new("HS4102", Severity.Note, "Work that names another part",
        "The work on {0} names {1}, which is another part");

    /// <summary>The alteration that a list makes, with its numbers in the order of work.</summary>
    /// <remarks>
    /// Part lines come first, then what is mapped or turned round carries conductors and joints over, then conductors are run, moved,
    /// renewed and cut; so new ends are named as they are after, wherever a line stands.
    /// </remarks>
    /// <param name="before">The before circuit.</param>
    /// <param name="title">What the alteration is called.</param>
    /// <param name="afterSystem">The supply after.</param>
    /// <param name="afterSettings">The settings after.</param>
    /// <param name="groups">What stands under one number each, in the user's order.</param>
    public static EditResult Apply(
        Circuit before, string title, ElectricalSystem afterSystem, ImmutableArray<Setting> afterSettings, ImmutableArray<EditGroup> groups)
    {
        var edits = groups.SelectMany((g, i) => g.Edits.Select((e, j) => (Edit: e, Spot: new Spot(i, j)))).ToList();
        var problems = new EditProblems();
        var lost = new TerminalsLost();
        var roster = new EditRoster(before, edits, problems);
        var parts = PartsAfter.Of(before, edits, roster, problems, lost);
        var wires = WiresAfter.Of(before, edits, roster, parts, problems, lost);
        lost.Report(roster, parts, problems);
        var system = afterSystem.Return is { } node ? afterSystem with { Return = parts.Resolve(node, Spot.None) } : afterSystem;
        NoteWorkOnOthers(edits, before, parts, problems);
        if (problems.HasError) return new(null, problems.InOrder()) { Parts = parts.All };

        bool isSame = groups.IsEmpty && system == before.System && afterSettings == before.Settings;
        var after = isSame ? before : new Circuit(system, parts.All, [.. wires.All], afterSettings);
        var acts = groups.Select(g => g.Edits.Select(e => Acts.Of(e, before, wires)).ToImmutableArray()).ToImmutableArray();
        var order = OrderOfWork.Of(before, after, acts);
        foreach (var (group, note) in order.Notes) problems.Add(new(group, 0), note);
        var changes = order.Groups.Select((g, i) => new Change(i + 1, acts[g], groups[g].Reason));
        return new(new(title, before, after, [.. changes]), problems.InOrder()) { Parts = parts.All };
    }

    private static void NoteWorkOnOthers(List<(Edit Edit, Spot Spot)> edits, Circuit before, PartsAfter parts, EditProblems problems)
    {
        var known = before.Parts.Concat(parts.All).DistinctBy(p => p.Id).ToList();
        foreach (var (edit, spot) in edits)
            if (edit is DoEdit work && known.FirstOrDefault(p => p.Id != work.Id && Names(work.Sentence, p)) is { } other)
                problems.Add(spot, NamesOther.Of([work.Id, other.Id], work.Id, Called(other)));
    }

    private static string Called(Part part) => part.Name is null ? part.Id : $"{part.Id} ({part.Name})";

    private static bool Names(string sentence, Part part) =>
        HasWord(sentence, part.Id) || (part.Name is { } name && HasWord(sentence, name));

    private static bool HasWord(string sentence, string word)
    {
        int Next(int from) => sentence.IndexOf(word, from, StringComparison.Ordinal);
        for (int at = Next(0); at >= 0; at = Next(at + 1))
        {
            int end = at + word.Length;
            if ((at == 0 || !IsOfWord(sentence[at - 1])) && (end == sentence.Length || !IsOfWord(sentence[end]))) return true;
        }
        return false;
    }

    private static bool IsOfWord(char c) => char.IsLetterOrDigit(c) || c is '-' or '_';
}
