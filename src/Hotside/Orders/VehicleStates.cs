using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.Circuits;

namespace Hotside.Orders;

/// <summary>The vehicle as a circuit while some acts of its alteration are done and others are not.</summary>
internal sealed class VehicleStates
{
    private readonly Alteration alteration;
    private readonly ActList acts;
    private readonly ImmutableArray<string> parts, wires;
    private readonly Dictionary<string, TerminalMap> maps = new(StringComparer.Ordinal);

    /// <summary>The states of an alteration.</summary>
    public VehicleStates(Alteration alteration, ActList acts)
    {
        (this.alteration, this.acts) = (alteration, acts);
        parts = Merged([.. alteration.Before.Parts.Select(p => p.Id)], [.. alteration.After.Parts.Select(p => p.Id)]);
        wires = Merged([.. alteration.Before.Conductors.Select(c => c.Id)], [.. alteration.After.Conductors.Select(c => c.Id)]);
        foreach (var act in acts.All)
            if (act.Type is WorkActType.Swap or WorkActType.Turn)
                maps[act.Item] = MapOf(act);
    }

    /// <summary>The circuit with all acts done that are marked so.</summary>
    /// <param name="done">A mark for each act of the list.</param>
    /// <param name="system">The supply.</param>
    /// <param name="looseEnds">Where a wire's end is that hangs free; <see langword="null"/>: nowhere.</param>
    public Circuit Of(bool[] done, ElectricalSystem system, Func<string, int, End>? looseEnds = null)
    {
        var there = parts.Select(id => PartIn(id, done)).OfType<Part>().ToImmutableArray();
        var laid = wires.Select(id => WireIn(acts.Wires[id], done, looseEnds)).OfType<Conductor>().ToImmutableArray();
        return new(system, there, laid, []);
    }

    /// <summary>Whether the battery that will be in the vehicle is in its tray.</summary>
    public bool HasNewBattery(bool[] done) =>
        acts.All.Any(a => done[a.Index] && a.Type is WorkActType.Swap or WorkActType.Fit or WorkActType.Turn && alteration.After.FindPart(a.Item)!.IsStandingSource) || acts.All.All(a => done[a.Index]);

    /// <summary>A circuit of the states as one would find it: wires that nothing holds at either end left out, and the settings of which it has all parts.</summary>
    public Circuit Found(Circuit circuit)
    {
        circuit = new(circuit.System, circuit.Parts, [.. circuit.Conductors.Where(c => c.Ends.Any(e => !e.IsFree))], []);
        bool IsThere(SetPosition p) => circuit.Variables.Any(v => v.Part == p.Part && v.Actuator.Name == p.Actuator && v.Actuator.Positions.Contains(p.Position));
        var settings = alteration.After.Settings.Concat(alteration.Before.Settings)
            .Where(s => s.Positions.All(IsThere) && s.Values.All(v => v.IsThere(circuit.Parts, circuit.Conductors))).DistinctBy(s => s.Name);
        return circuit.With([.. settings]);
    }

    /// <summary>Whether a part stands in the state as it is after; it may stand so in both.</summary>
    public bool IsAfter(string part, bool[] done) => !acts.Parts.TryGetValue(part, out int act) || done[act];

    /// <summary>Where what is on a terminal of a replaced part goes; <see langword="null"/> where the new part has no such terminal.</summary>
    public string? Counterpart(End before) => before.Part is { } id && maps.TryGetValue(id, out var map) ? map[before.Terminal] : before.Terminal;

    // Those after in their order, each that is gone behind the one it stood behind.
    private static ImmutableArray<string> Merged(string[] before, string[] after)
    {
        var merged = after.ToList();
        HashSet<string> there = new(after, StringComparer.Ordinal);
        int at = 0;
        foreach (string id in before)
        {
            if (there.Contains(id)) at = merged.IndexOf(id) + 1;
            else merged.Insert(at++, id);
        }
        return [.. merged];
    }

    private TerminalMap MapOf(HandAct act)
    {
        Part before = alteration.Before.FindPart(act.Item)!, after = alteration.After.FindPart(act.Item)!;
        bool isReversed = alteration.Changes.SelectMany(c => c.Acts).Any(a => a is Reverse or Replace { Reversed: true } && a.Items.Contains(act.Item));
        TerminalMap straight = new(before.Kind, after.Kind, [], reversed: false);
        // What stayed on the part says where its terminals went.
        var said = acts.Wires.Values.SelectMany(w => Enumerable.Range(0, 2).Where(s => w.Off[s] < 0 && w.On[s] < 0).Select(s => (Old: w.Start[s], New: w.Final[s])))
            .Where(s => s.Old?.Part == act.Item && s.New?.Part == act.Item && straight[s.Old.Value.Terminal] is null)
            .Select(s => (s.Old!.Value.Terminal, s.New!.Value.Terminal)).Distinct();
        return new(before.Kind, after.Kind, isReversed ? [] : [.. said], isReversed);
    }

    private Part? PartIn(string id, bool[] done)
    {
        Part? before = alteration.Before.FindPart(id), after = alteration.After.FindPart(id);
        bool isAfter = IsAfter(id, done);
        if ((isAfter ? after : before) is not { } part) return null;
        return part with
        {
            Spec = part.Spec with
            {
                Joints = [.. part.Joints.Select(j => JointIn(j, before, after, isAfter, done)).OfType<Joint>()],
                Case = part.CaseOn is { } on && Named(on, isAfter, done) != on ? MountIn(on, before, isAfter, done) : part.Spec.Case,
            },
        };
    }

    private Joint? JointIn(Joint joint, Part? before, Part? after, bool isAfter, bool[] done)
    {
        if (Named(joint.On, isAfter, done) is { } on) return on == joint.On ? joint : joint with { On = on };
        // A part that itself is left stands as it did, while what it is bolted to has its old terminals.
        return isAfter && after is not null && before?.Joints.FirstOrDefault(j => j.Terminal == joint.Terminal) is { } old && Named(old.On, isAfter: false, done) is { } was
            ? joint with { On = was } : null;
    }

    private CaseMount MountIn(End on, Part? before, bool isAfter, bool[] done) =>
        Named(on, isAfter, done) is { } named ? new(named) : before?.CaseOn is { } old && Named(old, isAfter: false, done) is { } was ? new(was) : CaseMount.Insulated;

    // An end of either circuit as it is called in the state; null where there is no such terminal.
    private End? Named(End end, bool isAfter, bool[] done)
    {
        if (end.Part is not { } id || !acts.Parts.TryGetValue(id, out int act)) return end;
        switch (acts.All[act].Type)
        {
            case WorkActType.Fit: return done[act] ? end : null;
            case WorkActType.PartOut: return done[act] ? null : end;
            case WorkActType.Remount: return end;
            default:
                if (done[act] == isAfter) return end;
                var map = maps[id];
                string? terminal = !isAfter ? map[end.Terminal]
                    : alteration.Before.FindPart(id)!.Kind.Terminals.Select(t => t.Name).FirstOrDefault(t => map[t] == end.Terminal) ?? (end.Terminal == "case" ? "case" : null);
                return terminal is null ? null : End.At(id, terminal);
        }
    }

    private Conductor? WireIn(WireHistory wire, bool[] done, Func<string, int, End>? looseEnds)
    {
        if (!wire.IsThere(done)) return null;
        End first = EndIn(wire, 0, done) ?? Loose(0), second = EndIn(wire, 1, done) ?? Loose(1);
        bool isUntouched = wire.Was is not null && wire.Lay < 0 && Enumerable.Range(0, 2).All(s => (wire.Off[s] < 0 || !done[wire.Off[s]]) && (wire.On[s] < 0 || !done[wire.On[s]]));
        bool isAsBefore = wire.IsFlipped && isUntouched && (wire.Off.Any(a => a >= 0) || wire.Will is null);
        return new(wire.Id, isAsBefore ? second : first, isAsBefore ? first : second, wire.CopperIn(done));

        End Loose(int side) => looseEnds?.Invoke(wire.Id, side) ?? End.Free;
    }

    private End? EndIn(WireHistory wire, int side, bool[] done)
    {
        int off = wire.Off[side], on = wire.On[side];
        if (on >= 0 && done[on]) return Named(wire.Final[side]!.Value, isAfter: true, done);
        if (on >= 0 && (off < 0 || done[off])) return null;
        if (off >= 0) return done[off] ? null : Named(wire.Start[side]!.Value, isAfter: false, done);
        // What nobody touches goes with its part.
        if (wire.Final[side] is { } final && (final.Part is null || IsAfter(final.Part, done))) return Named(final, isAfter: true, done);
        return wire.Start[side] is { } start ? Named(start, isAfter: false, done) : wire.Final[side];
    }
}
