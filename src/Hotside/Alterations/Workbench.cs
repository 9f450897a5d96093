using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Alterations;

/// <summary>A circuit while a list of changes is worked through it.</summary>
internal sealed class Workbench
{
    private readonly Circuit before;
    private readonly ImmutableArray<EditGroup> groups;
    private readonly List<Part> parts;
    private readonly List<Conductor> conductors;
    private readonly Dictionary<string, Replacement> replacements = new(StringComparer.Ordinal);
    private readonly HashSet<string> takenOut = new(StringComparer.Ordinal);
    private readonly HashSet<string> taken;
    private readonly Dictionary<Edit, Act> acts = new(ReferenceEqualityComparer.Instance);
    private (int Group, int Edit) at;

    public Workbench(Circuit before, ImmutableArray<EditGroup> groups)
    {
        this.before = before;
        this.groups = groups;
        parts = [.. before.Parts];
        conductors = [.. before.Conductors];
        taken = [.. before.Parts.Select(p => p.Id), .. before.Conductors.Select(c => c.Id)];
    }

    public List<EditProblem> Problems { get; } = [];

    public ImmutableArray<Part> Parts => [.. parts];

    public ImmutableArray<Conductor> Conductors => [.. conductors];

    /// <summary>The act that an edit became; for one with errors, an act without items.</summary>
    public Act ActOf(Edit edit) => acts.GetValueOrDefault(edit) ?? new TakeOut([]);

    public void Report(Diagnostic problem, int group, int edit) => Problems.Add(new(problem, group, edit));

    /// <summary>Takes out, fits, replaces, reverses and remounts parts.</summary>
    public void DoParts() => Each(edit =>
    {
        switch (edit)
        {
            case TakeOutEdit take: TakeOut(take); break;
            case FitEdit fit: Fit(fit); break;
            case ReplaceEdit replace: Replace(replace); break;
            case ReverseEdit reverse: Reverse(reverse); break;
            case RemountEdit remount: Remount(remount); break;
            case DoEdit work: Do(work); break;
        }
    });

    /// <summary>Brings wires and joints on replaced and reversed parts to the new terminals.</summary>
    public void CarryOver()
    {
        conductors.RemoveAll(c => takenOut.Contains(c.Id));
        var moved = MovedEnds();
        for (int i = 0; i < conductors.Count; i++)
        {
            var c = conductors[i];
            conductors[i] = c with { From = Carried(c.From, c.Id, moved), To = Carried(c.To, c.Id, moved) };
        }
        for (int i = 0; i < parts.Count; i++)
        {
            var spec = parts[i].Spec;
            parts[i] = parts[i] with
            {
                Spec = spec with
                {
                    Joints = [.. spec.Joints.Select(j => j with { On = Resolved(Carried(j.On, parts[i].Id, [])) })],
                    Case = spec.Case?.On is { } on ? new(Resolved(Carried(on, parts[i].Id, []))) : spec.Case,
                },
            };
        }
    }

    /// <summary>Runs, moves, renews and cuts wires.</summary>
    public void DoWires() => Each(edit =>
    {
        switch (edit)
        {
            case RunEdit run: Run(run); break;
            case MoveEdit move: Move(move); break;
            case RenewEdit renew: Renew(renew); break;
            case CutEdit cut: Cut(cut); break;
        }
    });

    /// <summary>Reports wires and joints left on parts that are taken out.</summary>
    public void FindHanging() => Each(edit =>
    {
        if (edit is not TakeOutEdit take) return;
        foreach (string id in take.Ids.Where(id => before.FindPart(id) is not null))
        {
            foreach (var wire in conductors.Where(c => c.Ends.Any(e => e.Part == id)))
                Report(AlterationProblems.WireHangs.Of([wire.Id, id], wire.Id, id) with { Hint = $"take {wire.Id} out or move it" });
            foreach (var part in parts.Where(p => p.Joints.Any(j => j.On.Part == id) || p.CaseOn?.Part == id))
                Report(AlterationProblems.JointHangs.Of([part.Id, id], part.Id, id) with { Hint = $"take {part.Id} out, or replace it with another joint" });
        }
    });

    /// <summary>Notes new ends on reversed parts, where before and after are easily confused.</summary>
    public void FindDoubtful() => Each(edit =>
    {
        IEnumerable<End> ends = edit switch
        {
            RunEdit run => run.Conductor.Ends,
            MoveEdit move => move.Ends.Select(e => e.To),
            CutEdit cut => [cut.First, cut.Second],
            _ => [],
        };
        foreach (var end in ends.Where(e => e.Part is { } id && replacements.TryGetValue(id, out var r) && r.Reversed))
            Report(AlterationProblems.OnReversed.Of([end.Part!], end.ToString(), end.Part!));
    });

    /// <summary>The end that a name of the after circuit means; itself when it means none.</summary>
    public End Resolved(End end) =>
        end.Part is { } id && Find(id) is { } part && (end.Terminal.Length == 0 ? part.Kind.OnlyTerminal : part.Kind.TerminalNamed(end.Terminal)) is { } terminal
            ? End.At(id, terminal) : end;

    private Part? Find(string id) => parts.FirstOrDefault(p => p.Id == id);

    private void Each(Action<Edit> work)
    {
        for (int g = 0; g < groups.Length; g++)
            for (int e = 0; e < groups[g].Edits.Length; e++)
            {
                at = (g, e);
                work(groups[g].Edits[e]);
            }
    }

    private void Report(Diagnostic problem) => Problems.Add(new(problem, at.Group, at.Edit));

    private void TakeOut(TakeOutEdit edit)
    {
        foreach (string id in edit.Ids)
        {
            if (!taken.Contains(id)) Unknown(id, "take out");
            else if (!takenOut.Add(id) || replacements.ContainsKey(id)) Twice(id, "take it out, or change it, in one line");
            else parts.RemoveAll(p => p.Id == id);
        }
        acts[edit] = new TakeOut(edit.Ids);
    }

    private void Fit(FitEdit edit)
    {
        foreach (string id in edit.Ids)
        {
            if (taken.Add(id)) parts.Add(edit.Spec.As(id));
            else Report(AlterationProblems.IdTaken.Of([id], id) with { Hint = before.FindPart(id) is null ? "choose another id" : $"to put another in its place: \"replace {id}: …\"" });
        }
        acts[edit] = new Fit(edit.Ids);
    }

    private void Replace(ReplaceEdit edit)
    {
        foreach (string id in edit.Ids)
        {
            if (Old(id, "replace") is not { } old) continue;
            var replacement = new Replacement(old, Inheriting(old, edit), edit.Reversed, edit.Map);
            foreach (var (from, to) in edit.Map)
            {
                if (old.Kind.TerminalNamed(from) is null) Report(AlterationProblems.BadMap.Of([id], from, "the old " + id) with { Hint = "the old terminal comes first: \"S = 85\"" });
                if (replacement.New.Kind.TerminalNamed(to) is null) Report(AlterationProblems.BadMap.Of([id], to, "the new " + id));
            }
            Put(id, replacement);
        }
        acts[edit] = new Replace(edit.Ids, edit.Reversed);
    }

    // Name, place, assembly, joints and mount stay with the place in the vehicle; ratings belong to the part.
    private static Part Inheriting(Part old, ReplaceEdit edit)
    {
        var spec = edit.Spec;
        var bare = new Replacement(old, spec.As(old.Id), edit.Reversed, edit.Map);
        var inherited = old.Joints.Select(j => (Terminal: bare.TerminalFor(j.Terminal), j.On))
            .Where(j => j.Terminal is not null && spec.Joints.All(own => own.Terminal != j.Terminal)).Select(j => new Joint(j.Terminal!, j.On));
        return (spec with
        {
            Name = spec.Name ?? old.Name,
            Assembly = spec.Assembly ?? old.Assembly,
            Place = spec.Place ?? old.Place,
            Joints = [.. spec.Joints, .. inherited],
            Case = spec.Case ?? (spec.Kind.Case != CaseKind.None && old.Kind.Case != CaseKind.None ? old.Spec.Case : null),
        }).As(old.Id);
    }

    private void Reverse(ReverseEdit edit)
    {
        if (Old(edit.Id, "reverse") is { } old) Put(edit.Id, new(old, old with { Spec = old.Spec with { Joints = [.. Swapped(old)] } }, Reversed: true, []));
        acts[edit] = new Reverse([edit.Id]);
    }

    private static IEnumerable<Joint> Swapped(Part part)
    {
        var turn = new Replacement(part, part, part.Kind.Terminals.Length == 2, []);
        return part.Joints.Select(j => j with { Terminal = turn.TerminalFor(j.Terminal) ?? j.Terminal });
    }

    private void Put(string id, Replacement replacement)
    {
        if (replacement.Reversed && !replacement.CanTurn) Report(AlterationProblems.NotTwoTerminals.Of([id], id));
        replacements[id] = replacement;
        parts[parts.FindIndex(p => p.Id == id)] = replacement.New;
    }

    private void Remount(RemountEdit edit)
    {
        acts[edit] = new Remount([edit.Id]);
        if (Find(edit.Id) is not { } part) Unknown(edit.Id, "remount");
        else if (!part.Kind.HasCaseTerminal) Report(AlterationProblems.NoCase.Of([edit.Id], edit.Id));
        else if (part.Spec.Case == edit.Case) Report(AlterationProblems.NothingNew.Of([edit.Id], edit.Id));
        else parts[parts.IndexOf(part)] = part with { Spec = part.Spec with { Case = edit.Case } };
    }

    private void Do(DoEdit edit)
    {
        acts[edit] = new Work([edit.Id], edit.Sentence);
        bool known = taken.Contains(edit.Id) || groups.SelectMany(g => g.Edits).Any(e => e is FitEdit fit && fit.Ids.Contains(edit.Id));
        if (!known) Unknown(edit.Id, "do something to");
        string[] words = edit.Sentence.Split([' ', ',', ';', '.', ':'], StringSplitOptions.RemoveEmptyEntries);
        if (before.Parts.FirstOrDefault(p => p.Id != edit.Id && words.Contains(p.Id)) is { } other)
            Report(AlterationProblems.AboutAnother.Of([edit.Id], other.Id, edit.Id));
        else if (before.Parts.FirstOrDefault(p => p.Kind.Elements.Any(e => e.IsSource) && p.Id != edit.Id && words.Contains(p.Kind.Id)) is { } kind && !words.Contains(edit.Id))
        {
            var own = before.FindPart(edit.Id)?.Kind.Id;
            if (own is null || !words.Contains(own)) Report(AlterationProblems.AboutAnother.Of([edit.Id], $"the {kind.Kind.Id}", edit.Id) with { Hint = $"perhaps \"do {kind.Id}: …\"" });
        }
    }

    private Part? Old(string id, string verb)
    {
        if (before.FindPart(id) is not { } old)
        {
            if (before.FindConductor(id) is not null) Report(AlterationProblems.NotAPart.Of([id], id, verb + "d") with { Hint = $"to change a wire: \"renew {id}: …\" or \"move {id}: …\"" });
            else Unknown(id, verb);
            return null;
        }
        if (takenOut.Contains(id) || replacements.ContainsKey(id))
        {
            Twice(id, $"to do both in one line: \"replace {id} reversed: …\"");
            return null;
        }
        return old;
    }

    private void Unknown(string id, string verb) =>
        Report(AlterationProblems.UnknownId.Of([id], id, verb) with { Hint = NearestName.Of(id, taken.Order(StringComparer.Ordinal)) is { } near ? $"did you mean \"{near}\"?" : null });

    private void Twice(string id, string hint) => Report(AlterationProblems.ChangedTwice.Of([id], id) with { Hint = hint });

    // The ends that moves take away, so that a terminal the new part lacks is no error for them.
    private HashSet<(string, End)> MovedEnds() =>
        [.. groups.SelectMany(g => g.Edits).OfType<MoveEdit>().SelectMany(m => m.Ends.Select(e => (m.Id, ResolvedBefore(e.From))))];

    private End ResolvedBefore(End end) =>
        end.Part is { } id && before.FindPart(id) is { } part && (end.Terminal.Length == 0 ? part.Kind.OnlyTerminal : part.Kind.TerminalNamed(end.Terminal)) is { } terminal
            ? End.At(id, terminal) : end;

    private End Carried(End end, string owner, HashSet<(string, End)> moved)
    {
        if (end.Part is not { } id || !replacements.TryGetValue(id, out var replacement)) return end;
        if (replacement.TerminalFor(end.Terminal) is { } terminal) return End.At(id, terminal);
        if (!moved.Contains((owner, end)))
        {
            var edit = groups.Select((g, i) => (g, i)).FirstOrDefault(g => g.g.Edits.Any(e => e is ReplaceEdit r && r.Ids.Contains(id)));
            at = (edit.i, 0);
            string candidate = replacement.New.Kind.Terminals.Select(t => t.Name).FirstOrDefault(t => replacement.Map.All(m => m.New != t)) ?? "…";
            Report(AlterationProblems.NotMapped.Of([owner, id], owner, end.ToString(), replacement.New.Kind.Id) with
            {
                Hint = $"say where it goes, such as \"{end.Terminal} = {candidate}\"; a {replacement.New.Kind.Id} has {string.Join(", ", replacement.New.Kind.Terminals.Select(t => t.Name))}",
            });
        }
        return end;
    }

    private void Run(RunEdit edit)
    {
        string id = edit.Conductor.Id;
        acts[edit] = new Run([id]);
        if (!taken.Add(id))
        {
            Report(AlterationProblems.IdTaken.Of([id], id) with { Hint = before.FindConductor(id) is null ? "choose another id" : $"to change it: \"move {id}: …\" or \"renew {id}: …\"" });
            return;
        }
        if (After(edit.Conductor.From) is { } from && After(edit.Conductor.To) is { } to) Land(edit.Conductor with { From = from, To = to });
    }

    private void Land(Conductor conductor)
    {
        if (conductor.From == conductor.To) Report(AlterationProblems.ToItself.Of([conductor.Id], conductor.Id, conductor.From.ToString()));
        conductors.Add(conductor);
    }

    private void Move(MoveEdit edit)
    {
        acts[edit] = new Move([edit.Id], [], false);
        if (Wire(edit.Id, "moved") is not { } now) return;
        var was = before.FindConductor(edit.Id)!;
        End from = now.From, to = now.To;
        var moved = ImmutableArray.CreateBuilder<MovedEnd>();
        foreach (var (end, target) in edit.Ends)
        {
            if (After(target) is not { } landing) continue;
            var oldName = ResolvedBefore(end);
            bool first = was.From == oldName || now.From == Resolved(end), second = was.To == oldName || now.To == Resolved(end);
            if (!first && !second)
            {
                Report(AlterationProblems.NotThere.Of([edit.Id], edit.Id, end.ToString()) with { Hint = $"it runs from {before.TextOf(was.From)} to {before.TextOf(was.To)}" });
                continue;
            }
            moved.Add(new(first ? was.From : was.To, landing));
            if (first) from = landing;
            else to = landing;
        }
        var wire = edit.Wire is { } given ? Overlaid(now.Wire, given) : now.Wire;
        if (from == to) Report(AlterationProblems.ToItself.Of([edit.Id], edit.Id, from.ToString()));
        conductors[conductors.IndexOf(now)] = now with { From = from, To = to, Wire = wire };
        acts[edit] = new Move([edit.Id], moved.ToImmutable(), wire.Label != now.Wire.Label);
    }

    private void Renew(RenewEdit edit)
    {
        acts[edit] = new Renew(edit.Ids);
        foreach (string id in edit.Ids)
        {
            if (Wire(id, "renewed") is not { } now) continue;
            var wire = Overlaid(now.Wire, edit.Wire);
            if (wire == now.Wire) Report(AlterationProblems.NothingNew.Of([id], id) with { Hint = "say what is new about it: size, colour, length" });
            conductors[conductors.IndexOf(now)] = now with { Wire = wire };
        }
    }

    private void Cut(CutEdit edit)
    {
        acts[edit] = new Cut([edit.Id, edit.NewId], edit.First, edit.Second);
        if (Wire(edit.Id, "cut") is not { } now) return;
        if (!taken.Add(edit.NewId))
        {
            Report(AlterationProblems.IdTaken.Of([edit.NewId], edit.NewId) with { Hint = "choose another id for the other half" });
            return;
        }
        if (After(edit.First) is not { } first || After(edit.Second) is not { } second) return;
        // Where the copper was cut nobody knows before it is done: neither half keeps the length.
        conductors[conductors.IndexOf(now)] = now with { To = first, Wire = now.Wire with { LengthInMetres = null, ResistanceInOhms = null } };
        Land(new(edit.NewId, second, now.To, now.Wire with { LengthInMetres = null, ResistanceInOhms = null }));
        acts[edit] = new Cut([edit.Id, edit.NewId], first, second);
    }

    private Conductor? Wire(string id, string done)
    {
        if (conductors.FirstOrDefault(c => c.Id == id) is { } wire && before.FindConductor(id) is not null) return wire;
        if (takenOut.Contains(id)) Twice(id, "take it out, or change it, in one line");
        else if (Find(id) is not null || before.FindPart(id) is not null) Report(AlterationProblems.NotAWire.Of([id], id, done));
        else Unknown(id, done == "moved" ? "move" : done == "cut" ? "cut" : "renew");
        return null;
    }

    private End? After(End end)
    {
        if (end.Part is not { } id) return end;
        if (Find(id) is not { } part)
        {
            string? near = NearestName.Of(id, parts.Select(p => p.Id));
            Report(AlterationProblems.UnknownPart.Of([id], id) with { Hint = takenOut.Contains(id) ? $"{id} is taken out" : near is null ? null : $"did you mean \"{near}\"?" });
            return null;
        }
        var resolved = Resolved(end);
        if (resolved.Terminal.Length > 0 && (part.Kind.TakesAnyTerminal || part.Kind.TerminalNamed(resolved.Terminal) == resolved.Terminal))
        {
            // A terminal left open on purpose is not open any more.
            parts[parts.IndexOf(part)] = part with { Spec = part.Spec with { FreeTerminals = part.Spec.FreeTerminals.Remove(resolved.Terminal) } };
            return resolved;
        }
        Report(AlterationProblems.UnknownTerminal.Of([id], id, end.Terminal) with { Hint = $"a {part.Kind.Id} has {string.Join(", ", part.Kind.Terminals.Select(t => t.Name))}" });
        return null;
    }

    // What a change says of a wire wins; what it leaves out stays as it was.
    private static Wire Overlaid(Wire old, Wire given) => old with
    {
        Size = given.Size ?? old.Size,
        Colour = given.Colour ?? (given.IsBraid ? null : old.Colour),
        IsBraid = given.IsBraid || (old.IsBraid && given.Colour is null),
        LengthInMetres = given.LengthInMetres ?? old.LengthInMetres,
        ResistanceInOhms = given.ResistanceInOhms ?? (given.Size is null ? old.ResistanceInOhms : null),
        Insulation = given.Insulation ?? old.Insulation,
        Loom = given.Loom ?? old.Loom,
        Name = given.Name ?? old.Name,
        Condition = given.Condition ?? (given.Size is null ? old.Condition : null),
        Place = given.Place ?? old.Place,
    };
}
