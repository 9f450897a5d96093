using Hotside.Alterations;
using Hotside.Circuits;

namespace Hotside.Reading;

/// <summary>Writes what a replacement says: the new parts, what differs from what they inherit, and where old terminals went.</summary>
internal sealed class ReplacementWriter(Alteration alteration, Replace replace)
{
    private readonly Circuit before = alteration.Before, after = alteration.After;

    public string Line()
    {
        var now = Now(replace.Items[0]);
        bool Kept(Func<Part, object?> said) => replace.Items.All(id => Equals(said(Was(id)), said(Now(id))));
        bool keepsJoints = replace.Items.All(KeepsJoints);
        var spec = now.Spec with
        {
            Name = Kept(p => p.Name) ? null : now.Name,
            Joints = keepsJoints ? [] : now.Joints,
            FreeTerminals = keepsJoints ? now.Spec.FreeTerminals : [.. now.Spec.FreeTerminals.Union(Dropped(now))],
            Case = replace.Items.All(KeepsMount) ? null : now.Spec.Case,
            Assembly = Kept(p => p.Assembly) ? null : now.Assembly,
            Place = Kept(p => p.Place) ? null : now.Place,
        };
        return string.Join(", ", new[] { LineWriter.Part(spec, after) }.Concat(replace.Items.SelectMany(Map).Distinct()));
    }

    private Part Was(string id) => before.FindPart(id)!;

    private Part Now(string id) => after.FindPart(id)!;

    private TerminalMap Straight(string id) => new(Was(id).Kind, Now(id).Kind, [], replace.Reversed);

    // Stating what would be inherited anyway is never wrong; what hangs on a part that changes itself is stated.
    private bool KeepsMount(string id) =>
        (Inheritance.MountOf(Was(id), Now(id).Kind) ?? Now(id).Kind.DefaultMount) == Now(id).Spec.Case && (Now(id).CaseOn is not { } on || IsSteady(on));

    private bool KeepsJoints(string id) =>
        Was(id).Joints.All(j => IsSteady(j.On)) && Was(id).Joints.Select(j => new Joint(Mapped(id)[j.Terminal] ?? "", j.On)).SequenceEqual(Now(id).Joints);

    private bool IsSteady(End end) => end.Part is not { } id || alteration.StateOf(id) is PartState.Left or PartState.Remounted;

    // A joint that is no longer there is not inherited where its terminal is said to be free.
    private IEnumerable<string> Dropped(Part now) =>
        Was(now.Id).Joints.Select(j => Mapped(now.Id)[j.Terminal]).OfType<string>().Where(t => now.Joints.All(j => j.Terminal != t));

    private TerminalMap Mapped(string id) => new(Was(id).Kind, Now(id).Kind, [.. Pairs(id)], replace.Reversed);

    private IEnumerable<string> Map(string id) => Pairs(id).Select(p => $"{p.Old} = {p.New}");

    // What equal names and aliases do not say: seen from wires that no line moves, else from joints.
    private IEnumerable<(string Old, string New)> Pairs(string id)
    {
        var straight = Straight(id);
        var stayed = Wires(id).Distinct().ToArray();
        var joints = Joints(id).Distinct().Where(j => stayed.All(s => s.Old != j.Old)).DistinctBy(j => j.Old);
        return stayed.Concat(joints).Where(p => straight[p.Old] != p.New).Select(p => (p.Old, replace.Reversed ? Other(Now(id).Kind, p.New) : p.New));
    }

    private static string Other(PartKind kind, string terminal) => kind.Terminals.First(t => t.Name != terminal).Name;

    // Where the ends of wires went that no line moves.
    private IEnumerable<(string Old, string New)> Wires(string id)
    {
        var moved = alteration.Changes.SelectMany(c => c.Acts).OfType<Move>().SelectMany(m => m.Ends.Select(e => (Wire: m.Items[0], e.From))).ToHashSet();
        var halves = alteration.Changes.SelectMany(c => c.Acts).OfType<Cut>().ToDictionary(c => c.Items[0], c => c.Items[1], StringComparer.Ordinal);
        foreach (var wire in before.Conductors)
        {
            if (after.FindConductor(wire.Id) is not { } now) continue;
            // The second end of a cut wire is that of its other half.
            var end = halves.TryGetValue(wire.Id, out string? half) ? after.FindConductor(half)!.To : now.To;
            if (wire.From.Part == id && now.From.Part == id && !moved.Contains((wire.Id, wire.From))) yield return (wire.From.Terminal, now.From.Terminal);
            if (wire.To.Part == id && end.Part == id && !moved.Contains((wire.Id, wire.To))) yield return (wire.To.Terminal, end.Terminal);
        }
    }

    // Others' joints on the part, and its own.
    private IEnumerable<(string Old, string New)> Joints(string id)
    {
        foreach (var part in before.Parts)
        {
            if (after.FindPart(part.Id) is not { } now) continue;
            foreach (var joint in part.Joints)
            {
                if (joint.On.Part == id && now.Joints.FirstOrDefault(j => j.Terminal == joint.Terminal && j.On.Part == id) is { } on)
                    yield return (joint.On.Terminal, on.On.Terminal);
                if (part.Id == id && now.Joints.FirstOrDefault(j => j.On == joint.On) is { } own) yield return (joint.Terminal, own.Terminal);
            }
            if (part.CaseOn is { } was && was.Part == id && now.CaseOn is { } mount && mount.Part == id) yield return (was.Terminal, mount.Terminal);
        }
    }
}
