using Hotside.Circuits;

namespace Hotside.Alterations;

/// <summary>
/// By which marks a list of changes writes terminals. A part that stays has one name for a terminal in both circuits, the first that is written; a new one has its own, and what is
/// not written of it is as on the old one where both are of one kind.
/// </summary>
internal sealed class EditMarks
{
    private readonly EditRoster roster;
    private readonly List<(End Written, Spot Spot)> later = [];

    private EditMarks(EditRoster roster) => this.roster = roster;

    /// <summary>Reads the list, and gives the before circuit the marks of terminals that only the list writes.</summary>
    public static EditMarks Of(ref Circuit before, IReadOnlyList<(Edit Edit, Spot Spot)> edits, EditRoster roster, EditProblems problems)
    {
        var read = new EditMarks(roster);
        var marks = new TerminalMarks();
        foreach (var (edit, spot) in edits)
        {
            read.later.AddRange(Later(edit).Select(e => (e, spot)));
            foreach (var written in Sooner(edit).Concat(Later(edit)))
            {
                if (written.Part is not { } id || roster.ChangeOf(id) is ReplaceEdit || before.FindPart(id) is not { } part || part.Kind.TerminalMeant(written.Terminal) is not { } terminal) continue;
                // What something is on is written there.
                string? first = before.IsUsed(part, terminal) && written.Terminal.Length > 0 && written.Terminal is not "case" ? terminal == written.Terminal ? null : terminal : marks.Note(part, terminal, written.Terminal);
                if (first is not null) problems.Add(spot, EndNames.WrittenOtherwise.Of([], written.ToString(), $"{id}.{first}") with { Word = written.ToString(), Hint = EndNames.OneMark(id, first) });
            }
        }
        before = marks.On(before);
        return read;
    }

    /// <summary>A new part's kind by the marks that are written of it.</summary>
    /// <param name="id">The part's id.</param>
    /// <param name="kind">Its kind, by the marks of its own line.</param>
    /// <param name="old">The kind of the part in whose place it stands, or <see langword="null"/>.</param>
    public PartKind New(string id, PartKind kind, PartKind? old)
    {
        var written = later.Where(w => w.Written.Part == id && w.Written.Terminal.Length > 0).Select(w => w.Written.Terminal);
        var inherited = old?.Id == kind.Id && roster.ChangeOf(id) is ReplaceEdit ? old.Terminals.Select(t => t.Name) : [];
        return kind.MarkedAs(kind.Terminals.Where(t => t.Own != t.Name).Select(t => t.Name).Concat(written).Concat(inherited));
    }

    // Ends named as they were.
    private static IEnumerable<End> Sooner(Edit edit) => edit is MoveEdit move ? move.Ends.Select(e => e.From) : [];

    // Ends named as they will be.
    private static IEnumerable<End> Later(Edit edit) => edit switch
    {
        RunEdit run => [run.Conductor.From, run.Conductor.To],
        MoveEdit move => move.Ends.Select(e => e.To),
        CutEdit cut => [cut.First, cut.Second],
        RemountEdit { Case.On: { } on } => [on],
        FitEdit fit => OfSpec(fit.Spec),
        ReplaceEdit replace => OfSpec(replace.Spec).Concat(replace.Map.SelectMany(m => replace.Ids.Select(id => End.At(id, m.New)))),
        _ => [],
    };

    private static IEnumerable<End> OfSpec(PartSpec spec) => spec.Joints.Select(j => j.On).Concat(spec.Case?.On is { } on ? [on] : Array.Empty<End>());
}
