using Hotside.Circuits;
using UnitsNet;

namespace Hotside.Studies.Figures;

/// <summary>What a conductor carries.</summary>
/// <param name="Conductor">The conductor.</param>
/// <param name="Current">The current from its first end to its second, counted from the feed to the return whichever pole is grounded; below 0 the other way.</param>
/// <param name="Drop">The volts lost along it, in the sense of the current.</param>
public sealed record ConductorFigure(Conductor Conductor, ElectricCurrent Current, ElectricPotential Drop)
{
    /// <summary>Whether its size or length is not known, so that it was taken as a good joint and its drop means nothing.</summary>
    public bool IsAssumed { get; init; }

    /// <summary>Whether it lies in a ring of joints of which nothing is known: how they share their current is not known either.</summary>
    public bool IsShared { get; init; }

    /// <summary>The heat in it, 0 or more.</summary>
    public Power Heat => Power.FromWatts(Math.Abs(Current.Amperes * Drop.Volts));
}
