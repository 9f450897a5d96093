using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Reading;

namespace Hotside.Proposals.Drafts;

/// <summary>Tells from a draft the numbered changes: what differs from the circuit before, in the order in which the steps came to it, alike ones under one number.</summary>
internal static class DraftChanges
{
    /// <summary>The alteration that a draft makes.</summary>
    public static Alteration Of(Draft draft, string title)
    {
        var (before, after) = (draft.Before, draft.Circuit);
        List<Act> acts = [.. CircuitComparison.Acts(before, after).Select(g => g[0])];
        acts = [.. acts.Select(a => Turned(draft, a)).OfType<Act>()];
        foreach (string id in draft.Turned.Order(StringComparer.Ordinal).Where(id => after.FindPart(id) is not null && acts.All(a => a is not (Replace or Reverse) || !a.Items.Contains(id)))) acts.Add(new Reverse([id]));
        foreach (string id in draft.Renewed.Order(StringComparer.Ordinal).Where(id => acts.All(a => !a.Items.Contains(id)))) acts.Add(new Replace([id], Reversed: false));
        acts.AddRange(draft.Order.SelectMany(id => draft.NoteOf(id)!.Works.Select(w => new Work([id], w))));
        if (acts.Count == 0) return new("", before, before, []);
        var placed = acts.Select((a, i) => (Act: a, Place: PlaceOf(draft, a), i))
            .OrderBy(p => p.Place).ThenBy(p => p.Act is Work == (p.Place < int.MaxValue && !draft.IsNew(p.Act.Items[0])) ? 1 : 0).ThenBy(p => p.i).Select(p => p.Act);
        var groups = Merged(draft, placed, after);
        var order = OrderOfWork.Of(before, after, groups);
        return new(title, before, after, [.. order.Groups.Select((g, i) => new Change(i + 1, groups[g], draft.NoteOf(groups[g][0].Items[0])?.Reason is { } reason && groups[g][0] is not Work ? reason : null))]);
    }

    // A part that is turned round while one of its wires goes elsewhere looks like one whose other wire was moved.
    private static Act? Turned(Draft draft, Act act)
    {
        if (act is Replace { Reversed: false } replace && draft.Turned.Contains(replace.Items[0])) return replace with { Reversed = true };
        if (act is not Move move) return act;
        MovedEnd[] left = [.. move.Ends.Where(e => e.From.Part is not { } id || e.To.Part != id || !draft.Turned.Contains(id))];
        return left.Length == move.Ends.Length ? act : left.Length > 0 ? move with { Ends = [.. left] } : null;
    }

    // Sources and what is done to them come last.
    private static int PlaceOf(Draft draft, Act act) =>
        draft.Circuit.FindPart(act.Items[0]) is { IsStandingSource: true } || draft.Order.ToList().IndexOf(act.Items[0]) is not (>= 0 and var at) ? int.MaxValue : at;

    // What is taken out for one reason, and what becomes the same part for one reason, is one line.
    private static ImmutableArray<ImmutableArray<Act>> Merged(Draft draft, IEnumerable<Act> acts, Circuit after)
    {
        List<Act> merged = [];
        foreach (var act in acts)
        {
            int alike = merged.FindIndex(m => AreAlike(draft, m, act, after));
            if (alike < 0) merged.Add(act);
            else merged[alike] = merged[alike] switch
            {
                TakeOut t => t with { Items = [.. t.Items, .. act.Items] },
                Fit f => f with { Items = [.. f.Items, .. act.Items] },
                Replace r => r with { Items = [.. r.Items, .. act.Items] },
                Renew r => r with { Items = [.. r.Items, .. act.Items] },
                var other => other,
            };
        }
        return [.. merged.Select(a => ImmutableArray.Create(a))];
    }

    private static bool AreAlike(Draft draft, Act first, Act second, Circuit after)
    {
        if (first.GetType() != second.GetType()) return false;
        string a = first.Items[0], b = second.Items[0];
        if (!SaysSame(draft.NoteOf(a), draft.NoteOf(b))) return false;
        return (first, second) switch
        {
            (TakeOut, TakeOut) => true,
            (Replace { Reversed: false }, Replace { Reversed: false }) => Text(draft.Before.FindPart(a)!, after.FindPart(a)!, after) == Text(draft.Before.FindPart(b)!, after.FindPart(b)!, after),
            (Renew, Renew) => WireText(draft, a) == WireText(draft, b),
            _ => false,
        };
    }

    // What a line of replacement says of a part: its kind, ratings and options, and what it does not inherit.
    private static string Text(Part was, Part now, Circuit after)
    {
        var spec = now.Spec with
        {
            Name = was.Name == now.Name ? null : now.Name, Assembly = null, Place = null,
            Joints = was.Joints.SequenceEqual(now.Joints) ? [] : now.Joints, Case = was.Spec.Case == now.Spec.Case ? null : now.Spec.Case,
        };
        return was.Kind.Id + " " + LineWriter.Part(spec, after);
    }

    private static string WireText(Draft draft, string id)
    {
        var (was, now) = (draft.Before.FindConductor(id)!.Wire, draft.Wire(id).Wire);
        return string.Join(", ", LineWriter.WireItems(now with { LengthInMetres = null })) + (was.LengthInMetres == now.LengthInMetres);
    }

    private static bool SaysSame(DraftNote? a, DraftNote? b) =>
        a?.Reason == b?.Reason && (a?.Comments ?? []).SequenceEqual(b?.Comments ?? []) && (a?.Questions ?? []).SequenceEqual(b?.Questions ?? []);
}
