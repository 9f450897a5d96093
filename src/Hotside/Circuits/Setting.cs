using System.Collections.Immutable;

namespace Hotside.Circuits;

/// <summary>A named combination of switch positions and conditions. What it does not name rests.</summary>
/// <param name="Name">Its name, such as <c>horn pressed</c>.</param>
/// <param name="Positions">The actuators it puts somewhere.</param>
/// <param name="Values">The senders it gives a value.</param>
public sealed record Setting(string Name, ImmutableArray<SetPosition> Positions, ImmutableArray<SetValue> Values);

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
        var part = parts.FirstOrDefault(p => p.Id == of);
        var actuator = part is not null
            ? part.Kind.Actuators.FirstOrDefault(a => a.Positions.Contains(position))
            : parts.SelectMany(p => p.Kind.Actuators).FirstOrDefault(a => a.IsShared && a.Name == of && a.Positions.Contains(position));
        if (actuator is not null) return new(part?.Id, actuator.Name, position);
        var known = part is not null ? part.Kind.Actuators.SelectMany(a => a.Positions) : parts.Select(p => p.Id);
        throw new ArgumentException($"There is no \"{of} {position}\"{NearestName.Suggestion(part is null ? of : position, known)}", nameof(position));
    }
}

/// <summary>A sender given a value.</summary>
/// <param name="Part">The part's id.</param>
/// <param name="Quantity">The value.</param>
public sealed record SetValue(string Part, Quantity Quantity);
