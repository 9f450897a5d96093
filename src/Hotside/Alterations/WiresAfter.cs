using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Alterations;

/// <summary>The conductors of the after circuit, and which ends were moved.</summary>
internal sealed class WiresAfter
{
    public static readonly DiagnosticKind EndNotThere = new("HS4040", Severity.Error, "End is not there", "{0} has no end on {1}; it runs from {2} to {3}");

    public static readonly DiagnosticKind SameEndTwice = new("HS4041", Severity.Error, "Same end twice", "both pairs move the end of {0} that is on {1}");

    public static readonly DiagnosticKind NothingMoved = new("HS4042", Severity.Error, "Nothing moved", "{0} is on {1} already");

    public static readonly DiagnosticKind SameEnds = new("HS4043", Severity.Error, "Both ends the same", "both ends of {0} are on {1}");

    public static readonly DiagnosticKind NothingNew = new("HS4044", Severity.Error, "Renewed with nothing new", "{0} is renewed, but nothing about it is new");

    public static readonly DiagnosticKind HangsFree = new("HS4045", Severity.Error, "Wire end hangs free", "{0} hangs free at one end, and is no spare");

    public static readonly DiagnosticKind LandsOnTakenOut = new("HS4046", Severity.Error, "Lands on what is taken out", "{0} lands on {1}, which is taken out");

    public static readonly DiagnosticKind OnReversed = new("HS4101", Severity.Note, "New end on a reversed part",
        "{0} ends on {1}, and {2} is reversed: the end is named as it is after");

    private readonly Circuit before;
    private readonly EditRoster roster;
    private readonly PartsAfter parts;
    private readonly EditProblems problems;
    private readonly TerminalsLost lost;

    private WiresAfter(Circuit before, EditRoster roster, PartsAfter parts, EditProblems problems, TerminalsLost lost)
    {
        this.before = before;
        this.roster = roster;
        this.parts = parts;
        this.problems = problems;
        this.lost = lost;
    }

    /// <summary>The conductors, those of before in their order, then new ones in the order of the list.</summary>
    public List<Conductor> All { get; } = [];

    /// <summary>The ends that each moved conductor's line moves.</summary>
    public Dictionary<string, ImmutableArray<MovedEnd>> Moved { get; } = new(StringComparer.Ordinal);

    /// <summary>The two new ends of each cut conductor.</summary>
    public Dictionary<string, (End First, End Second)> CutEnds { get; } = new(StringComparer.Ordinal);

    /// <summary>Applies the wire lines of a list.</summary>
    public static WiresAfter Of(
        Circuit before, IReadOnlyList<(Edit Edit, Spot Spot)> edits, EditRoster roster, PartsAfter parts, EditProblems problems, TerminalsLost lost)
    {
        var after = new WiresAfter(before, roster, parts, problems, lost);
        var halves = new Dictionary<string, Conductor>(StringComparer.Ordinal);
        foreach (var conductor in before.Conductors)
            if (!roster.IsTakenOut(conductor.Id))
                after.All.Add(after.Changed(conductor, halves));
        foreach (var (edit, spot) in edits)
        {
            if (edit is RunEdit run && after.Run(run.Conductor, spot) is { } fresh) after.All.Add(fresh);
            if (edit is CutEdit cut && halves.TryGetValue(cut.Id, out var half)) after.All.Add(half);
        }
        return after;
    }

    private Conductor Changed(Conductor old, Dictionary<string, Conductor> halves)
    {
        var spot = roster.SpotOf(old.Id);
        switch (roster.ChangeOf(old.Id))
        {
            case MoveEdit move:
                return MovedOf(old, move, spot);
            case RenewEdit renew:
                var wire = WireMaterial.Renewed(old.Wire, renew.Wire);
                if (wire == old.Wire) problems.Add(spot, NothingNew.Of([old.Id], old.Id) with { Hint = "say what is new, such as size, colour or length" });
                return Carried(old) with { Wire = wire };
            case CutEdit cut:
                return CutOf(old, cut, spot, halves);
            default:
                return Carried(old);
        }
    }

    private Conductor Carried(Conductor old) => old with { From = Stays(old.Id, old.From), To = Stays(old.Id, old.To) };

    private End Stays(string id, End end)
    {
        if (parts.Carried(end) is { } carried) return carried;
        lost.Add(end, id);
        return end;
    }

    private Conductor MovedOf(Conductor old, MoveEdit move, Spot spot)
    {
        var to = new End?[2];
        var ends = ImmutableArray.CreateBuilder<MovedEnd>();
        foreach (var (written, target) in move.Ends)
        {
            if (EndOf(old, written, spot) is not { } which) continue;
            var from = which == 0 ? old.From : old.To;
            if (to[which] is not null)
            {
                problems.Add(spot, SameEndTwice.Of([old.Id], old.Id, before.TextOf(from)));
                continue;
            }
            to[which] = Land(old.Id, target, spot);
            if (to[which] is not { } landed) continue;
            if (landed == parts.Carried(from)) problems.Add(spot, NothingMoved.Of([old.Id], old.Id, TextOf(landed)));
            ends.Add(new(from, landed));
        }
        Moved[old.Id] = ends.ToImmutable();
        // An end that could not be found or placed was reported: what would follow from its staying is not worth a word.
        bool isWhole = ends.Count == move.Ends.Length;
        var moved = old with
        {
            From = to[0] ?? (isWhole ? Stays(old.Id, old.From) : old.From),
            To = to[1] ?? (isWhole ? Stays(old.Id, old.To) : old.To),
            Wire = WireMaterial.Remade(move.Wire is null ? old.Wire : WireMaterial.Renewed(old.Wire, move.Wire), to[0] is not null, to[1] is not null),
        };
        if (isWhole) CheckEnds(moved, spot);
        return moved;
    }

    // "As named before, or after mapping": the user looks at either circuit.
    private int? EndOf(Conductor old, End written, Spot spot)
    {
        if (EndNames.Resolve(written, before.FindPart, [], out var asBefore) is null)
        {
            if (asBefore == old.From) return 0;
            if (asBefore == old.To) return 1;
        }
        if (EndNames.Resolve(written, parts.Find, [], out var asAfter) is null)
        {
            if (asAfter == parts.Carried(old.From)) return 0;
            if (asAfter == parts.Carried(old.To)) return 1;
        }
        problems.Add(spot, EndNotThere.Of([old.Id], old.Id, written.ToString(), before.TextOf(old.From), before.TextOf(old.To)) with { Word = written.ToString(), Hint = "the first end of a pair is the one that moves, named as it was" });
        return null;
    }

    private Conductor CutOf(Conductor old, CutEdit cut, Spot spot, Dictionary<string, Conductor> halves)
    {
        var wire = WireMaterial.Half(old.Wire);
        End? first = Land(old.Id, cut.First, spot), second = Land(cut.NewId, cut.Second, spot);
        var (from, to) = (Stays(old.Id, old.From), Stays(old.Id, old.To));
        if (first is not { } a || second is not { } b) return old with { From = from, To = to };
        CutEnds[old.Id] = (a, b);
        var (kept, half) = (old with { From = from, To = a, Wire = wire with { JointAtFromInOhms = old.Wire.JointAtFromInOhms } },
            new Conductor(cut.NewId, b, to, wire with { JointAtToInOhms = old.Wire.JointAtToInOhms }));
        CheckEnds(kept, spot);
        CheckEnds(half, spot);
        halves[old.Id] = half;
        return kept;
    }

    private Conductor? Run(Conductor conductor, Spot spot)
    {
        End? from = Land(conductor.Id, conductor.From, spot), to = Land(conductor.Id, conductor.To, spot);
        if (from is not { } a || to is not { } b) return null;
        var run = conductor with { From = a, To = b };
        CheckEnds(run, spot);
        return run;
    }

    private End? Land(string id, End written, Spot spot)
    {
        if (written.Part is { } part && roster.IsTakenOut(part))
        {
            if (!problems.IsBroken(part)) problems.Add(spot, LandsOnTakenOut.Of([id], id, part));
            return null;
        }
        var end = parts.Resolve(written, spot);
        if (end is { Part: { } on } && roster.IsReversed(on)) problems.Add(spot, OnReversed.Of([id, on], id, TextOf(end.Value), on));
        return end;
    }

    private void CheckEnds(Conductor conductor, Spot spot)
    {
        if (problems.IsBroken(conductor.Id)) return;
        if (conductor.From == conductor.To) problems.Add(spot, SameEnds.Of([conductor.Id], conductor.Id, TextOf(conductor.From)));
        else if (conductor.Wire.Role != WireRole.Spare && conductor.Ends.Any(e => e.IsFree))
            problems.Add(spot, HangsFree.Of([conductor.Id], conductor.Id) with { Hint = "say `spare` if it is to be one" });
    }

    private string TextOf(End end) => end.Part is { } id && parts.Find(id)?.Kind.OnlyTerminal == end.Terminal ? id : end.ToString();
}
