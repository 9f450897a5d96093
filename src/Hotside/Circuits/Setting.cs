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

/// <summary>A sender given a value.</summary>
/// <param name="Part">The part's id.</param>
/// <param name="Quantity">The value.</param>
public sealed record SetValue(string Part, StatedValue Quantity);
