using Hotside.Circuits;

namespace Hotside.Alterations;

/// <summary>Gives parts and conductors of a circuit other ids, so that two circuits written apart can be compared.</summary>
internal sealed class CircuitRenaming
{
    private readonly Dictionary<string, string> names;

    private CircuitRenaming(Dictionary<string, string> names) => this.names = names;

    /// <summary>The after circuit with the ids of the before circuit.</summary>
    /// <param name="before">The before circuit.</param>
    /// <param name="after">The after circuit.</param>
    /// <param name="same">Pairs of ids that mean the same thing, before and after.</param>
    /// <exception cref="ArgumentException">A pair names what does not exist or is of two sorts, or an id would then be there twice.</exception>
    public static Circuit Of(Circuit before, Circuit after, IEnumerable<(string Before, string After)> same)
    {
        var names = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var (was, now) in same)
        {
            Check(before, was, "before", nameof(same));
            Check(after, now, "after", nameof(same));
            if (before.FindPart(was) is null != after.FindPart(now) is null)
                throw new ArgumentException($"\"{was} = {now}\" makes a part of a wire.", nameof(same));
            if (!names.TryAdd(now, was)) throw new ArgumentException($"\"{now}\" is paired twice.", nameof(same));
        }
        foreach (string id in after.Parts.Select(p => p.Id).Concat(after.Conductors.Select(c => c.Id)))
            if (!names.ContainsKey(id) && names.ContainsValue(id))
                throw new ArgumentException($"\"{id}\" is something else after; pair it too, or give it another id.", nameof(same));
        var renamed = names.Count == 0 ? after : new CircuitRenaming(names).Renamed(after);
        foreach (var part in renamed.Parts)
            if (before.FindConductor(part.Id) is not null) throw new ArgumentException($"\"{part.Id}\" is a wire before and a part after.", nameof(after));
        foreach (var wire in renamed.Conductors)
            if (before.FindPart(wire.Id) is not null) throw new ArgumentException($"\"{wire.Id}\" is a part before and a wire after.", nameof(after));
        return renamed;
    }

    private static void Check(Circuit circuit, string id, string view, string argument)
    {
        if (circuit.FindPart(id) is not null || circuit.FindConductor(id) is not null) return;
        var known = circuit.Parts.Select(p => p.Id).Concat(circuit.Conductors.Select(c => c.Id));
        throw new ArgumentException($"There is no \"{id}\" {view}{NearestName.Suggestion(id, known)}", argument);
    }

    private Circuit Renamed(Circuit circuit) => new Circuit(
        circuit.System.Return is { } node ? circuit.System with { Return = Renamed(node) } : circuit.System,
        [.. circuit.Parts.Select(p => new Part(Name(p.Id), Renamed(p.Spec)))],
        [.. circuit.Conductors.Select(c => c with { Id = Name(c.Id), From = Renamed(c.From), To = Renamed(c.To) })],
        [.. circuit.Settings.Select(Renamed)])
        .With([.. circuit.Sequences.Select(s => s with { Steps = [.. s.Steps.Select(Renamed)] })]);

    private PartSpec Renamed(PartSpec spec) => spec with
    {
        Joints = [.. spec.Joints.Select(j => j with { On = Renamed(j.On) })],
        Case = spec.Case?.On is { } on ? new(Renamed(on)) : spec.Case,
        Assembly = spec.Assembly is { } home ? Name(home) : null,
    };

    private Setting Renamed(Setting setting) => setting with
    {
        Positions = [.. setting.Positions.Select(p => p with { Part = p.Part is { } id ? Name(id) : null })],
        Values = [.. setting.Values.Select(v => v with { Part = Name(v.Part) })],
    };

    private End Renamed(End end) => end.Part is { } id ? End.At(Name(id), end.Terminal) : end;

    private string Name(string id) => names.GetValueOrDefault(id, id);
}
