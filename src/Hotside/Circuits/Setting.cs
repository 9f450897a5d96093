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
public sealed record SetPosition(string? Part, string Actuator, string Position);

/// <summary>A sender given a value.</summary>
/// <param name="Part">The part's id.</param>
/// <param name="Quantity">The value.</param>
public sealed record SetValue(string Part, Quantity Quantity);
