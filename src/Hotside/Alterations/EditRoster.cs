using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Alterations;

/// <summary>Which line of a list is about which part or conductor; each is changed by one line at most.</summary>
internal sealed class EditRoster
{
    public static readonly DiagnosticKind UnknownItem = new("HS4001", Severity.Error, "Unknown part or wire", "there is no {0} before the alteration");

    public static readonly DiagnosticKind WrongSort = new("HS4002", Severity.Error, "Part for wire or wire for part", "{0} is a {1}; only a {2} can be {3}");

    public static readonly DiagnosticKind ChangedTwice = new("HS4003", Severity.Error, "Changed twice", "{0} is changed twice");

    public static readonly DiagnosticKind IdTaken = new("HS4004", Severity.Error, "Id exists already", "{0} exists already; what is new needs an id of its own");

    private readonly Circuit before;
    private readonly EditProblems problems;
    private readonly Dictionary<string, (Edit Edit, Spot Spot)> changes = new(StringComparer.Ordinal);
    private readonly HashSet<string> news = new(StringComparer.Ordinal) { "chassis", "free" };

    /// <summary>Reads who is changed by what.</summary>
    public EditRoster(Circuit before, IReadOnlyList<(Edit Edit, Spot Spot)> edits, EditProblems problems)
    {
        this.before = before;
        this.problems = problems;
        // What is new first, so that a change of something the list itself brings is not called unknown.
        foreach (var (edit, _) in edits)
            if (edit is UnreadEdit unread)
                problems.Break(unread.Ids);
        foreach (var (edit, spot) in edits) EnterNew(edit, spot);
        foreach (var (edit, spot) in edits) EnterChange(edit, spot);
    }

    /// <summary>The line that changes a part or conductor of the before circuit, or <see langword="null"/>.</summary>
    public Edit? ChangeOf(string id) => changes.TryGetValue(id, out var entry) ? entry.Edit : null;

    /// <summary>Where the line stands that changes a part or conductor.</summary>
    public Spot SpotOf(string id) => changes.TryGetValue(id, out var entry) ? entry.Spot : Spot.None;

    /// <summary>Whether a part or conductor is taken out.</summary>
    public bool IsTakenOut(string id) => ChangeOf(id) is TakeOutEdit;

    /// <summary>Whether a part's leads are swapped.</summary>
    public bool IsReversed(string id) => ChangeOf(id) is ReverseEdit or ReplaceEdit { Reversed: true };

    private void EnterNew(Edit edit, Spot spot)
    {
        string[] ids = edit switch
        {
            FitEdit fit => [.. fit.Ids],
            RunEdit run => [run.Conductor.Id],
            CutEdit cut => [cut.NewId],
            _ => [],
        };
        foreach (string id in ids)
            if (before.FindPart(id) is not null || before.FindConductor(id) is not null || !news.Add(id))
                problems.Add(spot, IdTaken.Of([id], id) with { Word = id, Hint = TakenHint(id, edit) });
    }

    private void EnterChange(Edit edit, Spot spot)
    {
        switch (edit)
        {
            case TakeOutEdit takeOut: foreach (string id in takeOut.Ids) Enter(id, edit, spot, "", "taken out"); break;
            case ReplaceEdit replace: foreach (string id in replace.Ids) Enter(id, edit, spot, "part", "replaced"); break;
            case ReverseEdit reverse: Enter(reverse.Id, edit, spot, "part", "reversed"); break;
            case RemountEdit remount: Enter(remount.Id, edit, spot, "part", "remounted"); break;
            case MoveEdit move: Enter(move.Id, edit, spot, "wire", "moved"); break;
            case RenewEdit renew: foreach (string id in renew.Ids) Enter(id, edit, spot, "wire", "renewed"); break;
            case CutEdit cut: Enter(cut.Id, edit, spot, "wire", "cut"); break;
            case DoEdit work: Look(work.Id, spot, "", ""); break;
            default: break;
        }
    }

    private void Enter(string id, Edit edit, Spot spot, string sort, string done)
    {
        if (!Look(id, spot, sort, done)) return;
        if (changes.TryAdd(id, (edit, spot))) return;
        if (!problems.IsBroken(id)) problems.Add(spot, ChangedTwice.Of([id], id) with { Word = id, Hint = OneLine(id, changes[id].Edit, edit) });
    }

    private bool Look(string id, Spot spot, string sort, string done)
    {
        bool isPart = before.FindPart(id) is not null, isWire = before.FindConductor(id) is not null;
        bool isNew = !isPart && !isWire && news.Contains(id) && sort.Length == 0 && done.Length == 0;
        if (problems.IsBroken(id)) return isPart || isWire;
        if (isNew) return false;
        if (!isPart && !isWire)
            problems.Add(spot, UnknownItem.Of([id], id) with { Word = id, Hint = Nearest(id, sort) });
        else if ((sort == "part" && !isPart) || (sort == "wire" && !isWire))
            problems.Add(spot, WrongSort.Of([id], id, isPart ? "part" : "wire", sort, done) with { Word = id });
        else
            return true;
        return false;
    }

    private string? Nearest(string id, string sort)
    {
        if (news.Contains(id)) return "it is new: give its own line what it needs";
        var parts = sort == "wire" ? [] : before.Parts.Select(p => p.Id);
        string fresh = sort == "wire" ? $"a new wire is `run {id}: A to B`" : sort == "part" ? $"a new part is `fit {id}: …`" : "name what is there before";
        return EditProblems.DidYouMean(id, parts.Concat(sort == "part" ? [] : before.Conductors.Select(c => c.Id))) ?? fresh;
    }

    private string? TakenHint(string id, Edit edit) =>
        before.FindConductor(id) is not null && edit is RunEdit ? $"the old wire is `move {id}: …` or `renew {id}: …`"
        : before.FindPart(id) is not null && edit is FitEdit ? $"another part in its place is `replace {id}: …`" : null;

    private static string? OneLine(string id, Edit first, Edit second) => (first, second) switch
    {
        (ReplaceEdit, ReverseEdit) or (ReverseEdit, ReplaceEdit) => $"write one line: `replace {id} reversed: …`",
        (ReplaceEdit, RemountEdit) or (RemountEdit, ReplaceEdit) => $"write one line: `replace {id}: …, case on …`",
        (MoveEdit, MoveEdit) => $"write one line: `move {id}: A to B, C to D`",
        (MoveEdit, RenewEdit) or (RenewEdit, MoveEdit) => $"write one line: `move {id}: A to B, 14 RD`",
        _ => null,
    };
}
