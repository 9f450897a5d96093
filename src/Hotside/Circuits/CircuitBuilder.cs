using UnitsNet;

namespace Hotside.Circuits;

/// <summary>Builds a circuit in code. Each call checks at once, so that the line that throws is the line that is wrong.</summary>
/// <remarks>Not safe for use by several threads; what it builds is.</remarks>
public sealed class CircuitBuilder
{
    private readonly List<Part> parts = [];
    private readonly List<Conductor> conductors = [];
    private readonly List<Setting> settings = [];
    private readonly HashSet<string> ids = new(StringComparer.Ordinal) { "chassis", "free" };

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
    internal ElectricalSystem System { get; }

    /// <summary>Adds a part.</summary>
    /// <param name="id">Its id, of letters, digits, <c>-</c> and <c>_</c>; unique among parts and conductors.</param>
    /// <param name="kind">Its kind.</param>
    /// <param name="details">Ratings, name, joints; what is left out takes the kind's default.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentException">The id is taken or malformed, or the kind lacks a rating or terminal that <paramref name="details"/> states.</exception>
    public CircuitBuilder Part(string id, PartKind kind, PartDetails? details = null)
    {
        ArgumentNullException.ThrowIfNull(kind);
        details ??= new();
        CheckId(id);
        parts.Add(PartSpec.Of(id, kind, details).As(id));
        return this;
    }

    /// <summary>Adds a conductor.</summary>
    /// <param name="id">Its id, unique among parts and conductors.</param>
    /// <param name="from">One end, such as <c>K1.85</c>, <c>X1</c> or <c>chassis</c>; its part is already there.</param>
    /// <param name="to">The other end.</param>
    /// <param name="wire">What it is made of; left out when nothing is known.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentException">The id is taken or malformed, or an end names a part or terminal that does not exist.</exception>
    public CircuitBuilder Wire(string id, string from, string to, Wire? wire = null)
    {
        CheckId(id);
        conductors.Add(new(id, Resolve(from, nameof(from)), Resolve(to, nameof(to)), wire ?? new()));
        return this;
    }

    /// <summary>Adds a named setting.</summary>
    /// <param name="name">Its name, such as <c>horn pressed</c>.</param>
    /// <param name="positions">Part or condition and position in turn: <c>("S1", "pressed")</c>, <c>("engine", "running")</c>.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentException">A part, condition or position does not exist.</exception>
    public CircuitBuilder Setting(string name, params (string Of, string Position)[] positions)
    {
        ArgumentNullException.ThrowIfNull(positions);
        settings.Add(new(name, [.. positions.Select(p => SetPosition.Named(parts, p.Of, p.Position))], []));
        return this;
    }

    /// <summary>The circuit as built so far.</summary>
    /// <exception cref="ArgumentException">A joint, a case or the return names a part or terminal that does not exist.</exception>
    public Circuit Build()
    {
        var resolved = parts.Select(p => p with
        {
            Spec = p.Spec with
            {
                Joints = [.. p.Joints.Select(j => j with { On = Resolve(j.On.ToString(), p.Id) })],
                Case = p.CaseOn is { } on ? new CaseMount(Resolve(on.ToString(), p.Id)) : p.Spec.Case,
            },
        });
        var ready = System.Return is { } node ? System with { Return = Resolve(node.ToString(), "isolatedReturn") } : System;
        return new(ready, [.. resolved], [.. conductors], [.. settings]);
    }

    private End Resolve(string text, string argument)
    {
        var end = End.Parse(text);
        if (end.Part is not { } id) return end;
        var part = parts.FirstOrDefault(p => p.Id == id)
            ?? throw new ArgumentException($"There is no part \"{id}\"{NearestName.Suggestion(id, parts.Select(p => p.Id))}", argument);
        string? terminal = end.Terminal.Length == 0 ? part.Kind.OnlyTerminal : part.Kind.TerminalNamed(end.Terminal);
        return End.At(id, terminal ?? throw new ArgumentException(part.Kind.NoTerminal(id, end.Terminal), argument));
    }

    private void CheckId(string id)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(id);
        if (!id.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_'))
            throw new ArgumentException($"\"{id}\" is no id: ids are letters, digits, - and _.", nameof(id));
        if (!ids.Add(id)) throw new ArgumentException($"\"{id}\" is taken; parts and conductors share one space of ids.", nameof(id));
    }
}
