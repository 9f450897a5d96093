using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Alterations;

/// <summary>The parts of the after circuit, and where what stood on a terminal of the before circuit stands by itself.</summary>
internal sealed class PartsAfter
{
    public static readonly DiagnosticKind NotTwoTerminals = new("HS4020", Severity.Error, "Cannot be reversed",
        "{0} cannot be reversed: only a part with two terminals can, and {1} has {2}");

    public static readonly DiagnosticKind NoCase = new("HS4021", Severity.Error, "No case", "{0} cannot be remounted: {1} has no case");

    public static readonly DiagnosticKind JointLost = new("HS4022", Severity.Error, "Bolted to what is taken out", "{0} is bolted to {1}, which is taken out");

    public static readonly DiagnosticKind CaseLost = new("HS4023", Severity.Error, "Stands on what is taken out", "{0} stands on {1}, which is taken out");

    public static readonly DiagnosticKind AssemblyLost = new("HS4024", Severity.Error, "Belongs to what is taken out", "{0} is in {1}, which is taken out");

    private readonly EditRoster roster;
    private readonly EditMarks marks;
    private readonly EditProblems problems;
    private readonly TerminalsLost lost;
    private readonly Dictionary<string, TerminalMap> maps = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Part> parts = new(StringComparer.Ordinal);
    private readonly List<string> order = [];

    private PartsAfter(EditRoster roster, EditMarks marks, EditProblems problems, TerminalsLost lost)
    {
        this.roster = roster;
        this.marks = marks;
        this.problems = problems;
        this.lost = lost;
    }

    /// <summary>The parts, those of before in their order, then those fitted.</summary>
    public ImmutableArray<Part> All => [.. order.Select(id => parts[id])];

    /// <summary>Applies the part lines of a list.</summary>
    public static PartsAfter Of(Circuit before, IReadOnlyList<(Edit Edit, Spot Spot)> edits, EditRoster roster, EditMarks marks, EditProblems problems, TerminalsLost lost)
    {
        var after = new PartsAfter(roster, marks, problems, lost);
        foreach (var part in before.Parts)
            if (!roster.IsTakenOut(part.Id))
                after.Keep(part);
        foreach (var (edit, _) in edits)
            if (edit is FitEdit fit)
                foreach (string id in fit.Ids)
                    after.Put(after.New(id, fit.Spec, null));
        var spots = edits.Where(e => e.Edit is FitEdit).SelectMany(e => ((FitEdit)e.Edit).Ids.Select(id => (id, e.Spot)))
            .DistinctBy(p => p.id).ToDictionary(p => p.id, p => p.Spot, StringComparer.Ordinal);
        foreach (string id in after.order.ToArray())
            after.parts[id] = before.FindPart(id) is { } old ? after.Joined(old) : after.Joined(after.parts[id], spots[id]);
        return after;
    }

    /// <summary>The part of an id.</summary>
    public Part? Find(string id) => parts.GetValueOrDefault(id);

    /// <summary>Resolves an end named as it is after; silent about what is broken already.</summary>
    /// <returns>The end, or <see langword="null"/> when it was reported.</returns>
    public End? Resolve(End written, Spot spot)
    {
        if (problems.IsBroken(written.Part)) return null;
        if (EndNames.Resolve(written, Find, order, out var end) is not { } fault) return end;
        // A wrong end breaks nothing but its own line: the part it names is sound.
        problems.Add(spot, fault with { Items = [] });
        return null;
    }

    /// <summary>Where what stood on an end stands by itself; <see langword="null"/> where it cannot stay.</summary>
    public End? Carried(End end)
    {
        if (end.Part is not { } id) return end;
        if (roster.IsTakenOut(id) || !parts.ContainsKey(id)) return null;
        return !maps.TryGetValue(id, out var map) ? end : map[end.Terminal] is { } terminal ? End.At(id, terminal) : null;
    }

    private void Put(Part part)
    {
        if (parts.TryAdd(part.Id, part)) order.Add(part.Id);
    }

    private void Keep(Part old)
    {
        var spot = roster.SpotOf(old.Id);
        switch (roster.ChangeOf(old.Id))
        {
            case ReplaceEdit replace:
                var fresh = New(old.Id, Inheritance.Of(old, replace.Spec), old);
                maps[old.Id] = new(old.Kind, fresh.Kind, Pairs(old, fresh.Kind, replace.Map, spot), replace.Reversed);
                if (replace.Reversed) CheckTwo(old.Id, fresh.Kind, spot);
                Put(fresh);
                break;
            case ReverseEdit:
                maps[old.Id] = new(old.Kind, old.Kind, [], reversed: true);
                CheckTwo(old.Id, old.Kind, spot);
                Put(old);
                break;
            case RemountEdit remount:
                if (!old.Kind.HasCaseTerminal || old.Kind.Terminals.Any(t => t.IsCase))
                    problems.Add(spot, NoCase.Of([old.Id], old.Id, old.Kind.WithArticle()));
                Put((old.Spec with { Case = remount.Case }).As(old.Id));
                break;
            default:
                Put(old);
                break;
        }
    }

    // By the marks that the list writes of it.
    private Part New(string id, PartSpec spec, Part? old)
    {
        var kind = marks.New(id, spec.Kind, old?.Kind);
        return (ReferenceEquals(kind, spec.Kind) ? spec : spec with { Kind = kind, FreeTerminals = [.. spec.FreeTerminals.Select(t => kind.TerminalNamed(t) ?? t)] }).As(id);
    }

    private void CheckTwo(string id, PartKind kind, Spot spot)
    {
        if (kind.Terminals.Length == 2) return;
        string count = kind.TakesAnyTerminal ? "any number" : Numbers.Whole(kind.Terminals.Length);
        problems.Add(spot, NotTwoTerminals.Of([id], id, kind.WithArticle(), count));
    }

    private ImmutableArray<(string Old, string New)> Pairs(Part old, PartKind kind, ImmutableArray<(string Old, string New)> map, Spot spot)
    {
        var pairs = ImmutableArray.CreateBuilder<(string, string)>();
        foreach (var (first, second) in map)
        {
            string? from = old.Kind.TerminalMeant(first), to = kind.TerminalMeant(second);
            if (from is null) problems.Add(spot, EndNames.UnknownTerminal.Of([old.Id], "the old " + old.Id, first) with { Hint = old.Kind.TerminalHint(first) });
            if (to is null)
                problems.Add(spot, EndNames.UnknownTerminal.Of([old.Id], "the new " + old.Id, second) with { Hint = kind.TerminalHint(second) });
            if (from is not null && to is not null) pairs.Add((from, to));
        }
        return pairs.ToImmutable();
    }

    private Part Joined(Part fitted, Spot spot) => fitted with
    {
        Spec = fitted.Spec with { Joints = Said(fitted.Id, fitted.Kind, fitted.Joints, spot), Case = SaidCase(fitted.Spec.Case, spot) },
    };

    private Part Joined(Part old)
    {
        var part = parts[old.Id];
        var change = roster.ChangeOf(old.Id);
        var spot = change is null ? Spot.None : roster.SpotOf(old.Id);
        if (part.Assembly is { } home && roster.IsTakenOut(home)) Report(AssemblyLost, home, old.Id, home);
        var given = change is ReplaceEdit { Spec.Joints: var stated } ? Said(old.Id, part.Kind, stated, spot) : [];
        var closed = change is ReplaceEdit ? part.Spec.FreeTerminals : [];
        var kept = old.Joints.Select(j => Kept(old, j, given, closed)).OfType<Joint>();
        bool isCaseSaid = change is RemountEdit or ReplaceEdit { Spec.Case: not null };
        return part with
        {
            Spec = part.Spec with
            {
                Joints = [.. kept, .. given],
                Case = isCaseSaid ? SaidCase(part.Spec.Case, spot) : KeptCase(old.Id, part.Spec.Case),
                FreeTerminals = change is ReverseEdit ? [.. old.Spec.FreeTerminals.Select(t => maps[old.Id][t] ?? t)] : part.Spec.FreeTerminals,
            },
        };
    }

    private Joint? Kept(Part old, Joint joint, ImmutableArray<Joint> given, ImmutableArray<string> closed)
    {
        string? own = maps.TryGetValue(old.Id, out var map) ? map[joint.Terminal] : joint.Terminal;
        if (own is not null && (given.Any(g => g.Terminal == own) || closed.Contains(own))) return null;
        string text = $"{old.Id}.{joint.Terminal}";
        if (own is null)
            lost.Add(End.At(old.Id, joint.Terminal), $"the joint on {joint.On}");
        else if (Carried(joint.On) is { } on)
            return new(own, on);
        else if (roster.IsTakenOut(joint.On.Part!))
            Report(JointLost, joint.On.Part!, text, joint.On.ToString());
        else
            lost.Add(joint.On, text);
        return null;
    }

    private CaseMount? KeptCase(string id, CaseMount? mount)
    {
        if (mount?.On is not { Part: { } on } end) return mount;
        if (Carried(end) is { } carried) return new(carried);
        if (roster.IsTakenOut(on)) Report(CaseLost, on, id, on);
        else lost.Add(end, $"{id}.case");
        return mount;
    }

    private void Report(DiagnosticKind kind, string culprit, params string[] arguments)
    {
        if (!problems.IsBroken(arguments[0].Split('.')[0])) problems.Add(roster.SpotOf(culprit), kind.Of([culprit], arguments));
    }

    private ImmutableArray<Joint> Said(string id, PartKind kind, ImmutableArray<Joint> joints, Spot spot)
    {
        var all = ImmutableArray.CreateBuilder<Joint>();
        foreach (var joint in joints)
        {
            string? own = kind.TerminalMeant(joint.Terminal);
            if (own is null) problems.Add(spot, EndNames.UnknownTerminal.Of([id], id, joint.Terminal) with { Hint = kind.TerminalHint(joint.Terminal) });
            var on = LandsOnTakenOut(joint.On, $"{id}.{joint.Terminal}", JointLost, spot) ? null : Resolve(joint.On, spot);
            if (own is not null && on is { } end) all.Add(new(own, end));
        }
        return all.ToImmutable();
    }

    private CaseMount? SaidCase(CaseMount? mount, Spot spot) =>
        mount?.On is { } on && !LandsOnTakenOut(on, "the case", CaseLost, spot) && Resolve(on, spot) is { } end ? new(end) : mount;

    private bool LandsOnTakenOut(End end, string what, DiagnosticKind kind, Spot spot)
    {
        if (end.Part is not { } id || !roster.IsTakenOut(id)) return false;
        if (!problems.IsBroken(id)) problems.Add(spot, kind.Of([id], what, id));
        return true;
    }
}
