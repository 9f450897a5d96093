using UnitsNet;

namespace Hotside.Faults;

/// <summary>A conductor that carries the current of a fault.</summary>
/// <param name="Conductor">Its id.</param>
/// <param name="Current">The greatest current.</param>
/// <param name="Survival">What becomes of it.</param>
public sealed record ConductorStrain(string Conductor, ElectricCurrent Current, Survival Survival)
{
    /// <summary>The heat in it.</summary>
    public Power Heat { get; internal init; }

    /// <summary>What the fault lets through until the fuse opens at the latest, I²·t in A²·s; <see langword="null"/> where the fuse may never open or takes over 5 s.</summary>
    public double? LetThrough { get; internal init; }

    /// <summary>What its copper stands, k²·S² in A²·s (IEC 60364-4-43); <see langword="null"/> where its size is not known.</summary>
    public double? Stands { get; internal init; }

    /// <summary>How warm it gets in the long run; <see langword="null"/> where the fuse opens before, or its ampacity is not known.</summary>
    public Temperature? Warmth { get; internal init; }
}
