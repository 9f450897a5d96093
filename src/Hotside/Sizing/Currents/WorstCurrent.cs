using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Sizing.Currents;

/// <summary>The greatest steady current of a conductor or of something in line.</summary>
/// <param name="Amperes">Amperes, 0 or more.</param>
/// <param name="How">How it was found.</param>
/// <param name="Positions">Positions in which it flows; what is not named rests.</param>
internal sealed record WorstCurrent(double Amperes, CurrentBasis How, ImmutableArray<SetPosition> Positions)
{
    /// <summary>The loads whose currents add up to it, where it is a bound.</summary>
    public ImmutableArray<LoadCurrent> Loads { get; init; } = [];

    /// <summary>The part of it that loads take which are on for a short time only.</summary>
    public double ShortAmperes { get; init; }

    /// <summary>The machine whose greatest output it is; <see langword="null"/> where loads take it.</summary>
    public string? Machine { get; init; }

    /// <summary>Nothing flows.</summary>
    public static WorstCurrent None { get; } = new(0, CurrentBasis.Bound, []);
}
