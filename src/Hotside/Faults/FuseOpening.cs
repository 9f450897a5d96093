using UnitsNet;

namespace Hotside.Faults;

/// <summary>A fuse, breaker or link that a fault opens. Never one time: the shortest and the longest that its standard allows.</summary>
/// <param name="Part">The part's id.</param>
/// <param name="Rating">Its rating; of a fusible link by its gauge what it carries for good, by Preece's law.</param>
/// <param name="Current">The current through it with all conductors at the temperature stated, else at 20 °C, the greatest.</param>
public sealed record FuseOpening(string Part, ElectricCurrent Rating, ElectricCurrent Current)
{
    /// <summary>The current as a multiple of the rating.</summary>
    public double Multiple => Current / Rating;

    /// <summary>After what time it opens at the earliest; zero where that is not known; <see langword="null"/> where nothing is known of its times, as of a link without its gauge.</summary>
    public Duration? Earliest { get; internal init; }

    /// <summary>After what time it opens at the latest; <see langword="null"/> where it may never open, or nothing is known of its times.</summary>
    public Duration? Latest { get; internal init; }

    /// <summary>Whether it may carry the current for good.</summary>
    public bool MayNeverOpen { get; internal init; }
}
