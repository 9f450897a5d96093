using UnitsNet;

namespace Hotside.Circuits;

/// <summary>Builds a circuit in code. Each call checks at once, so that the line that throws is the line that is wrong.</summary>
/// <remarks>Not safe for use by several threads; what it builds is.</remarks>
public sealed class CircuitBuilder
{
    private readonly List<Part> parts = [];
    private readonly List<Conductor> conductors = [];
    private readonly List<Setting> settings = [];
    private readonly List<Sequence> sequences = [];
    private readonly HashSet<string> ids = new(StringComparer.Ordinal);
    private readonly List<(Part Part, string Terminal, string Written)> named = [];

    /// <summary>Begins a circuit.</summary>
    /// <param name="voltage">The nominal voltage of the feed, above 0.</param>
    /// <param name="ground">Which pole is grounded.</param>
    /// <param name="isolatedReturn">The node that is the return of an isolated system, such as <c>X2</c>; else left out.</param>
    /// <exception cref="ArgumentException">The voltage is not above 0, or <paramref name="isolatedReturn"/> does not go with <paramref name="ground"/>.</exception>
    public CircuitBuilder(ElectricPotential voltage, Ground ground, string? isolatedReturn = null)
    {
        if (!(voltage.Volts > 0)) throw new ArgumentException("A nominal voltage is above 0; the ground says which pole is which.", nameof(voltage));
        if (ground == Ground.Isolated != isolatedReturn is not null)
            throw new ArgumentException("An isolated system, and only that, names the node that is its return.", nameof(isolatedReturn));
        System = new([voltage.Volts], ground) { Return = isolatedReturn is null ? null : End.Parse(isolatedReturn) };
    }

    /// <summary>What is said of the supply; its return is not looked up yet.</summary>
    internal ElectricalSystem System { get; private set; }

    /// <summary>Adds a further nominal voltage: of a tap between two batteries, or behind a converter.</summary>
    /// <param name="voltage">The voltage, above 0.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentException">The voltage is not above 0, or the system has it already.</exception>
    public CircuitBuilder AlsoAt(ElectricPotential voltage)
    {
        if (!(voltage.Volts > 0)) throw new ArgumentException("A nominal voltage is above 0; the ground says which pole is which.", nameof(voltage));
        if (System.Volts.Contains(voltage.Volts)) throw new ArgumentException($"The system is at {Numbers.Plain(voltage.Volts)} V already.", nameof(voltage));
        System = System with { Volts = [.. System.Volts.Add(voltage.Volts).OrderDescending()] };
        return this;
    }

    /// <summary>Adds a part.</summary>
    /// <param name="id">Its id, of letters, digits, <c>-</c> and <c>_</c>; unique among parts and conductors.</param>
    /// <param name="kind">Its kind.</param>
    /// <param name="details">Ratings, name, joints; what is left out takes the kind's default.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentException">
    /// The id is taken or malformed, <paramref name="kind"/> lacks a rating, terminal or option that <paramref name="details"/> states or needs a number of ways that it
    /// does not, or a rating is out of its range.
    /// </exception>
    public CircuitBuilder Part(string id, PartKind kind, PartDetails? details = null)
    {
        ArgumentNullException.ThrowIfNull(kind);
        details ??= new();
        CheckId(id);
        parts.Add(PartDetailsReader.Read(id, kind, details).As(id));
        ids.Add(id);
        return this;
    }

    /// <summary>Adds a conductor.</summary>
    /// <param name="id">Its id, unique among parts and conductors.</param>
    /// <param name="from">One end, such as <c>K1.85</c>, <c>X1</c> or <c>chassis</c>; its part is already there.</param>
    /// <param name="to">The other end.</param>
    /// <param name="wire">What it is made of; left out when nothing is known.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentException">
    /// The id is taken or malformed, an end names a part or terminal that does not exist, both ends are one terminal, or an end is free and the wire is no spare.
    /// </exception>
    public CircuitBuilder Wire(string id, string from, string to, Wire? wire = null)
    {
        CheckId(id);
        Conductor conductor = new(id, Resolve(from, nameof(from), named), Resolve(to, nameof(to), named), wire ?? new());
        if (conductor.From == conductor.To) throw new ArgumentException($"Both ends of {id} are on {conductor.To}; one of them goes elsewhere.", nameof(to));
        if (conductor.Wire.Role != WireRole.Spare && conductor.Ends.Any(e => e.IsFree))
            throw new ArgumentException($"Only a spare may have a free end; say Role = WireRole.Spare of {id} if it is one.", nameof(wire));
        conductors.Add(conductor);
        ids.Add(id);
        return this;
    }

    /// <summary>Adds a named setting.</summary>
    /// <param name="name">Its name, such as <c>horn pressed</c>.</param>
    /// <param name="positions">Part or condition and position in turn: <c>("S1", "pressed")</c>, <c>("engine", "running")</c>.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentException">A part, condition or position does not exist or is not clear, or there is a setting of that name.</exception>
    public CircuitBuilder Setting(string name, params (string Of, string Position)[] positions)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentNullException.ThrowIfNull(positions);
        if (settings.Any(s => s.Name == name)) throw new ArgumentException($"There is a setting \"{name}\" already.", nameof(name));
        settings.Add(new(name, [.. positions.Select(p => SetPosition.Named(parts, p.Of, p.Position))], []));
        return this;
    }

    /// <summary>
    /// Gives a value within a setting: a resistance to a sender; a ratio to a battery's id or <c>charge</c>; a temperature to a conductor's id, <c>wires</c>, <c>engine bay</c> or
    /// <c>windings</c>; a speed to a machine's id or to the condition that drives it, such as <c>engine</c>.
    /// </summary>
    /// <param name="setting">The name of a setting that is there.</param>
    /// <param name="of">What is given the value.</param>
    /// <param name="value">
    /// An <see cref="ElectricResistance"/>, 0 or more; a <see cref="Ratio"/>, 0 to 100 %; a <see cref="Temperature"/>, −60 to 250 °C; or a <see cref="RotationalSpeed"/>, 1 to 25,000
    /// turns a minute, which also says that the engine runs where the setting does not say otherwise.
    /// </param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentException">There is no such setting or item, or the value is of another quantity or out of its range.</exception>
    public CircuitBuilder Value(string setting, string of, IQuantity value)
    {
        ArgumentNullException.ThrowIfNull(setting);
        ArgumentException.ThrowIfNullOrWhiteSpace(of);
        ArgumentNullException.ThrowIfNull(value);
        int at = settings.FindIndex(s => s.Name == setting);
        if (at < 0) throw new ArgumentException($"There is no setting \"{setting}\"{NearestName.Suggestion(setting, settings.Select(s => s.Name))}", nameof(setting));
        SetValue set = new(of, value switch
        {
            ElectricResistance ohms => new(ohms.Ohms, Unit.Ohm),
            Ratio part => new(part.Percent, Unit.Percent),
            Temperature warm => new(warm.DegreesCelsius, Unit.Celsius),
            RotationalSpeed speed => new(speed.RevolutionsPerMinute, Unit.TurnsPerMinute),
            _ => throw new ArgumentException("A value is a resistance, a ratio, a temperature or a speed.", nameof(value)),
        });
        if (!set.IsTaken(parts, conductors))
            throw new ArgumentException($"There is no \"{of}\" that takes such a value{NearestName.Suggestion(of, parts.Select(p => p.Id).Concat(conductors.Select(c => c.Id)))}", nameof(of));
        if (set.OutOfRange() is { } range) throw new ArgumentException($"{char.ToUpperInvariant(range[0])}{range[1..]}.", nameof(value));
        if (set.Implied(parts) is { } implied && settings[at].Positions.All(p => (p.Part, p.Actuator) != (implied.Part, implied.Actuator)))
            settings[at] = settings[at] with { Positions = [.. settings[at].Positions, implied] };
        settings[at] = settings[at] with { Values = [.. settings[at].Values.Where(v => v.Part != of || v.Quantity.Unit != set.Quantity.Unit), set] };
        return this;
    }

    /// <summary>Adds a named sequence of settings, each from where the one before left the relays.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="settings">The names of settings that are there, at least one; <c>all off</c> is always there.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentException">A setting does not exist so far, there is none, or there is a sequence of that name.</exception>
    public CircuitBuilder Sequence(string name, params string[] settings)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentNullException.ThrowIfNull(settings);
        if (settings.Length == 0) throw new ArgumentException("A sequence has at least one step.", nameof(settings));
        if (sequences.Any(s => s.Name == name)) throw new ArgumentException($"There is a sequence \"{name}\" already.", nameof(name));
        sequences.Add(Circuits.Sequence.Of(name, settings, [.. this.settings], out string? unknown)
            ?? throw new ArgumentException($"There is no setting \"{unknown}\" so far{NearestName.Suggestion(unknown!, this.settings.Select(s => s.Name))}", nameof(settings)));
        return this;
    }

    /// <summary>The circuit as built so far; the builder may be used on, and what it built stays as it is.</summary>
    /// <exception cref="ArgumentException">A joint, a case, an assembly or the return names a part or terminal that does not exist.</exception>
    public Circuit Build()
    {
        // As in a file, where parts come before wires.
        List<(Part Part, string Terminal, string Written)> written = [];
        Part[] resolved = [.. parts.Select(p => p with
        {
            Spec = p.Spec with
            {
                Joints = [.. p.Joints.Select(j => j with { On = Resolve(j.On.ToString(), p.Id, written, $"{p.Id} is bolted to {j.On}") })],
                Case = p.CaseOn is { } on ? new CaseMount(Resolve(on.ToString(), p.Id, written, $"{p.Id} stands on {on}")) : p.Spec.Case,
            },
        })];
        foreach (var part in parts)
            if (part.Assembly is { } assembly && parts.All(p => p.Id != assembly))
                throw new ArgumentException($"There is no assembly \"{assembly}\"{NearestName.Suggestion(assembly, parts.Where(p => p.Kind.Id == "assembly").Select(p => p.Id))}", part.Id);
        var ready = System.Return is { } node ? System with { Return = Resolve(node.ToString(), "isolatedReturn", written, $"The return is {node}") } : System;
        var marks = new TerminalMarks();
        foreach (var (part, terminal, mark) in written.Concat(named)) marks.Note(part, terminal, mark);
        return marks.On(new Circuit(ready, [.. resolved], [.. conductors], [.. settings]).With([.. sequences]));
    }

    // What a part is bolted to may come later: it is looked up at the end, and the message says for what.
    private End Resolve(string text, string argument, List<(Part Part, string Terminal, string Written)> written, string? forWhat = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(text, argument);
        var end = End.Parse(text);
        if (end.Part is not { } id) return end;
        var part = parts.FirstOrDefault(p => p.Id == id)
            ?? throw new ArgumentException($"{(forWhat is null ? $"There is no part \"{id}\" so far; a part comes before what ends on it" : $"{forWhat}, and there is no part \"{id}\"")}{NearestName.Suggestion(id, parts.Select(p => p.Id))}", argument);
        if (part.Kind.TerminalMeant(end.Terminal) is { } terminal)
        {
            written.Add((part, terminal, end.Terminal));
            return End.At(id, terminal);
        }
        string asked = end.Terminal.Length == 0 ? $"{id} has several terminals; name one" : $"{id} has no terminal \"{end.Terminal}\"";
        throw new ArgumentException($"{asked}; {part.Kind.TerminalSentence(end.Terminal)}", argument);
    }

    private void CheckId(string id)
    {
        ItemId.Check(id, nameof(id));
        if (ids.Contains(id)) throw new ArgumentException($"\"{id}\" is taken; parts and conductors share one space of ids.", nameof(id));
    }
}
