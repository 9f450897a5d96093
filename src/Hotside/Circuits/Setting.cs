using System.Collections.Immutable;

namespace Hotside.Circuits;

/// <summary>A named combination of switch positions and conditions. What it does not name rests.</summary>
/// <param name="Name">Its name, such as <c>horn pressed</c>.</param>
/// <param name="Positions">The actuators it puts somewhere.</param>
/// <param name="Values">The senders it gives a value.</param>
public sealed record Setting(string Name, ImmutableArray<SetPosition> Positions, ImmutableArray<SetValue> Values)
{
    /// <summary>Whether both say the same; arrays are compared by content.</summary>
    /// <param name="other">The other setting.</param>
    public bool Equals(Setting? other) =>
        other is not null && Name == other.Name && Positions.AsSpan().SequenceEqual(other.Positions.AsSpan()) && Values.AsSpan().SequenceEqual(other.Values.AsSpan());

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Name, Positions.Length, Values.Length);
}

/// <summary>An actuator put into a position.</summary>
/// <param name="Part">The part's id; <see langword="null"/> for a condition that several parts share.</param>
/// <param name="Actuator">The actuator's name within the kind.</param>
/// <param name="Position">The position.</param>
public sealed record SetPosition(string? Part, string Actuator, string Position)
{
    /// <summary>The position that a part or a shared condition and a position's name mean.</summary>
    /// <exception cref="ArgumentException">There is no such part, condition or position.</exception>
    internal static SetPosition Named(IReadOnlyCollection<Part> parts, string of, string position)
    {
        // "turn left" says the actuator too, where a part has several.
        string[] words = position.Split(' ');
        string? named = words.Length > 1 ? string.Join(' ', words[..^1]) : null;
        bool IsMeant(Actuator actuator) => actuator.Positions.Contains(position) || (actuator.Name == named && actuator.Positions.Contains(words[^1]));
        var part = parts.FirstOrDefault(p => p.Id == of);
        var having = part is not null
            ? part.Kind.Actuators.Where(IsMeant).ToArray()
            : [.. parts.SelectMany(p => p.Kind.Actuators).Where(a => a.IsShared && a.Name == of && IsMeant(a)).Take(1)];
        if (having is [var actuator]) return new(actuator.IsShared ? null : part?.Id, actuator.Name, actuator.Positions.Contains(position) ? position : words[^1]);
        throw new ArgumentException(having.Length > 1 ? SeveralHave(of, position, having) : Unknown(parts, part, of, position), nameof(position));
    }

    private static string SeveralHave(string of, string position, Actuator[] having) =>
        $"{of} has several moving parts with a position \"{position}\"; say which: {string.Join(", ", having.Select(a => $"\"{a.Name} {position}\""))}.";

    private static string Unknown(IReadOnlyCollection<Part> parts, Part? part, string of, string position)
    {
        if (part is null)
        {
            var known = parts.Select(p => p.Id).Concat(parts.SelectMany(p => p.Kind.Actuators).Where(a => a.IsShared).Select(a => a.Name)).Distinct();
            return $"There is no part or condition \"{of}\"{NearestName.Suggestion(of, known)}";
        }
        string[] positions = [.. part.Kind.Actuators.Where(a => a.Drive != ActuatorDrive.Driven).SelectMany(a => a.Positions)];
        if (positions.Length == 0) return $"{of} has no positions: {part.Kind.WithArticle()} does not move.";
        string near = NearestName.Of(position, positions) is { } name ? $"; did you mean \"{name}\"?" : ".";
        return $"{of} has no position \"{position}\"; it has {string.Join(", ", positions)}{near}";
    }
}

/// <summary>
/// A value that a setting gives: ohms to a sender, a charge to a battery (<c>G1 60 %</c>) or to all (<c>charge 60 %</c>), a temperature to a conductor, to <c>wires</c>, to the
/// <c>engine bay</c> or to <c>windings</c>, turns a minute to a machine or to a condition that machines share (<c>engine 700 rpm</c>).
/// </summary>
/// <param name="Part">The id of the part or conductor, or the word.</param>
/// <param name="Quantity">The value.</param>
public sealed record SetValue(string Part, StatedValue Quantity)
{
    /// <summary>Words for what is given a value and is neither part nor conductor.</summary>
    internal const string Charge = "charge", Wires = "wires", EngineBay = "engine bay", Windings = "windings";

    // The greatest speed of a machine that anybody fits to a vehicle, in turns a minute (own choice).
    private const double MostTurns = 25_000;

    /// <summary>Whether it is of no single part or conductor.</summary>
    internal bool IsGeneral(IEnumerable<Part> parts) => Quantity.Unit switch
    {
        Unit.Percent => Part == Charge,
        Unit.Celsius => Part is Wires or EngineBay or Windings,
        Unit.TurnsPerMinute => Part == Element.Engine && EngineOf(parts) is not null,
        _ => false,
    };

    /// <summary>Whether there is what it gives a value to.</summary>
    internal bool IsThere(IEnumerable<Part> parts, IEnumerable<Conductor> conductors) =>
        IsGeneral(parts) || (Quantity.Unit == Unit.Celsius && conductors.Any(c => c.Id == Part)) || parts.Any(p => p.Id == Part);

    /// <summary>Whether what it gives a value to takes one in its unit.</summary>
    internal bool IsTaken(IEnumerable<Part> parts, IEnumerable<Conductor> conductors) =>
        IsGeneral(parts) || (Quantity.Unit == Unit.Celsius ? conductors.Any(c => c.Id == Part) : parts.FirstOrDefault(p => p.Id == Part) is { } part && Quantity.Unit switch
        {
            Unit.Ohm => part.Kind.Elements.Any(e => e.Type is ElementType.Sender or ElementType.Resistor),
            Unit.Percent => part.IsStandingSource,
            Unit.TurnsPerMinute => part.Kind.Elements.Any(e => e.IsMachine),
            _ => false,
        });

    /// <summary>What is wrong with the figure itself; <see langword="null"/> where nothing is.</summary>
    internal string? OutOfRange()
    {
        var (least, most, range) = Quantity.Unit switch
        {
            Unit.Percent => (0, 100, "a charge is 0 to 100 %"),
            Unit.Celsius => (Wire.LeastCelsius, Wire.MostCelsius, "a temperature is from -60 to 250 °C"),
            Unit.TurnsPerMinute => (1, MostTurns, "a machine that runs turns 1 to 25000 times a minute"),
            _ => (0, double.PositiveInfinity, "a resistance is 0 or more"),
        };
        return Quantity.Value >= least && Quantity.Value <= most ? null : range;
    }

    /// <summary>The condition that goes with it: an engine that has a speed, or drives a machine that has one, runs.</summary>
    internal SetPosition? Implied(IEnumerable<Part> parts) =>
        Quantity.Unit == Unit.TurnsPerMinute && EngineOf(Part == Element.Engine ? parts : parts.Where(p => p.Id == Part)) is { } engine ? new(null, engine.Name, engine.Positions[^1]) : null;

    /// <summary>The condition of the engine that drives machines; <see langword="null"/> where there is no machine.</summary>
    internal static Actuator? EngineOf(IEnumerable<Part> parts) =>
        parts.Where(p => p.Kind.Elements.Any(e => e.IsMachine)).SelectMany(p => p.Kind.Actuators).FirstOrDefault(a => a.IsShared && a.Name == Element.Engine);
}
