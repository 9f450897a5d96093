using System.Collections.Immutable;

namespace Hotside.Circuits;

/// <summary>A moving part of a kind with its positions: a lever, a key, a plunger, a condition.</summary>
/// <param name="Name">Its name within the kind, such as <c>turn</c>.</param>
/// <param name="Positions">Its positions, rest first; at least two.</param>
/// <param name="Drive">What moves it.</param>
public sealed record Actuator(string Name, ImmutableArray<string> Positions, ActuatorDrive Drive)
{
    /// <summary>The position from which it returns by itself; <see langword="null"/> when it stays or returns from all.</summary>
    public string? ReturnsFrom { get; init; }

    /// <summary>The position to which it returns; <see langword="null"/> when it stays or returns to rest.</summary>
    public string? ReturnsTo { get; init; }

    /// <summary>Whether it returns to rest when let go; a driven one, whether something opens it that is no element of the kind, so that it keeps nothing.</summary>
    public bool Returns { get; init; }

    /// <summary>Whether it goes to and fro by itself, as points and flashers do; it counts as resting.</summary>
    public bool Cycles { get; init; }

    /// <summary>Whether verdicts leave it out: it then counts as resting.</summary>
    public bool IsNoControl { get; init; }

    /// <summary>Whether all parts that have an actuator of this name share one condition, such as <c>engine</c>.</summary>
    public bool IsShared { get; init; }

    /// <summary>For a driven actuator, which windings bring it into which position; any one of the windings does.</summary>
    public ImmutableArray<Pull> Pulls { get; init; } = [];

    /// <summary>For a driven actuator, the windings that keep it where it is; empty: those that pull it.</summary>
    public ImmutableArray<string> KeptBy { get; init; } = [];

    /// <summary>Whether a driven actuator stays where it was brought, without current.</summary>
    public bool Stays { get; init; }

    /// <summary>For a driven actuator, the part of its windings' rated volts with which it moves; <see langword="null"/>: as relays do.</summary>
    internal double? PullsAt { get; init; }

    /// <summary>For a driven actuator, the part of its windings' rated volts below which it falls back; <see langword="null"/>: as relays do.</summary>
    internal double? DropsAt { get; init; }

    /// <summary>The position of rest.</summary>
    public string Rest => Positions[0];
}
