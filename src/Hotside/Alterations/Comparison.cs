using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Alterations;

/// <summary>Finds the changes between two complete circuits, matched by id, and numbers them in the canonical order of work.</summary>
internal static class Comparison
{
    /// <summary>The alteration that turns one circuit into the other.</summary>
    /// <param name="before">The circuit as it was.</param>
    /// <param name="after">The circuit as it will be.</param>
    /// <param name="title">What the alteration is called.</param>
    /// <param name="same">Ids that mean one thing: the before circuit's and the after circuit's.</param>
    public static Alteration Between(Circuit before, Circuit after, string title, ImmutableArray<(string Before, string After)> same)
    {
        var renamed = Renamed(after, same.ToDictionary(s => s.After, s => s.Before, StringComparer.Ordinal));
        var edits = Edits(before, renamed).Select(e => new EditGroup([e], null)).ToImmutableArray();
        var result = EditList.Apply(before, title, renamed.System, renamed.Settings, edits);
        // What two sound circuits differ in can always be stated: a failure here would be our own.
        return result.Alteration ?? throw new InvalidOperationException(string.Join('\n', result.Problems.Select(p => p.Diagnostic)));
    }

    private static IEnumerable<Edit> Edits(Circuit before, Circuit after)
    {
        var replaced = before.Parts.Where(p => after.FindPart(p.Id) is not null).Select(p => PartDifference.Of(p, before, after)).OfType<PartDifference>().ToArray();
        foreach (var wire in before.Conductors.Where(c => after.FindConductor(c.Id) is null)) yield return new TakeOutEdit([wire.Id]);
        foreach (var part in before.Parts.Where(p => after.FindPart(p.Id) is null)) yield return new TakeOutEdit([part.Id]);
        foreach (var difference in replaced.Where(d => !d.IsBattery)) yield return difference.Edit;
        foreach (var part in after.Parts.Where(p => before.FindPart(p.Id) is null)) yield return new FitEdit([part.Id], part.Spec);
        var byId = replaced.ToDictionary(d => d.Id, StringComparer.Ordinal);
        foreach (var edit in Moved(before, after, byId)) yield return edit;
        foreach (var edit in Renewed(before, after, byId)) yield return edit;
        foreach (var wire in after.Conductors.Where(c => before.FindConductor(c.Id) is null)) yield return new RunEdit(wire);
        foreach (var difference in replaced.Where(d => d.IsBattery)) yield return difference.Edit;
    }

    private static IEnumerable<Edit> Moved(Circuit before, Circuit after, Dictionary<string, PartDifference> replaced)
    {
        foreach (var was in before.Conductors)
        {
            if (after.FindConductor(was.Id) is not { } now) continue;
            var (from, to) = Aligned(was, now, replaced);
            var ends = new List<(End, End)>();
            if (Carried(was.From, replaced) != from) ends.Add((was.From, from));
            if (Carried(was.To, replaced) != to) ends.Add((was.To, to));
            if (ends.Count > 0) yield return new MoveEdit(was.Id, [.. ends], was.Wire == now.Wire ? null : now.Wire);
        }
    }

    private static IEnumerable<Edit> Renewed(Circuit before, Circuit after, Dictionary<string, PartDifference> replaced) =>
        from was in before.Conductors
        let now = after.FindConductor(was.Id)
        where now is not null && was.Wire != now.Wire
        let ends = Aligned(was, now, replaced)
        where Carried(was.From, replaced) == ends.From && Carried(was.To, replaced) == ends.To
        select new RenewEdit([was.Id], now.Wire);

    // A wire may be written from either end.
    private static (End From, End To) Aligned(Conductor was, Conductor now, Dictionary<string, PartDifference> replaced)
    {
        End from = Carried(was.From, replaced), to = Carried(was.To, replaced);
        bool turned = now.From != from && now.To != to && (now.From == to || now.To == from);
        return turned ? (now.To, now.From) : (now.From, now.To);
    }

    private static End Carried(End end, Dictionary<string, PartDifference> replaced) =>
        end.Part is { } id && replaced.TryGetValue(id, out var difference) ? difference.Carried(end) : end;

    private static Circuit Renamed(Circuit circuit, Dictionary<string, string> names)
    {
        if (names.Count == 0) return circuit;
        string Name(string id) => names.GetValueOrDefault(id, id);
        End Of(End end) => end.Part is { } id ? End.At(Name(id), end.Terminal) : end;
        return new(
            circuit.System with { Return = circuit.System.Return is { } node ? Of(node) : null },
            [.. circuit.Parts.Select(p => (p.Spec with
            {
                Joints = [.. p.Joints.Select(j => j with { On = Of(j.On) })],
                Case = p.CaseOn is { } on ? new(Of(on)) : p.Spec.Case,
                Assembly = p.Assembly is { } assembly ? Name(assembly) : null,
            }).As(Name(p.Id)))],
            [.. circuit.Conductors.Select(c => c with { Id = Name(c.Id), From = Of(c.From), To = Of(c.To) })],
            [.. circuit.Settings.Select(s => s with
            {
                Positions = [.. s.Positions.Select(p => p with { Part = p.Part is { } id ? Name(id) : null })],
                Values = [.. s.Values.Select(v => v with { Part = Name(v.Part) })],
            })]);
    }
}
