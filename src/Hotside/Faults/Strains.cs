using System.Collections.Immutable;
using Hotside.Sizing;
using Hotside.Sizing.Heating;
using Hotside.Sizing.Tables;
using Hotside.Solving;
using Hotside.Solving.Relays;
using UnitsNet;

namespace Hotside.Faults;

/// <summary>What conductors stand that carry the current of a short: adiabatic while a fuse opens within 5 seconds, else how warm they get in the long run.</summary>
internal sealed class Strains(CircuitSizes sizes, StateSolver solver)
{
    // A conductor that carries so much more than without the fault carries its current; so many times its ampacity is a short of the source and no load (own choices).
    private const double MoreThanHealthy = 1.2, LeastAmperes = 0.5, ShortTimes = 1.5;

    /// <summary>The conductors that carry the fault's current, those that suffer most first.</summary>
    /// <param name="fault">The short, before anything opens.</param>
    /// <param name="healthy">The point without it.</param>
    /// <param name="after">The point when all has opened that will: what still carries far more than before is past every fuse.</param>
    /// <param name="opening">What opens last; <see langword="null"/>: nothing.</param>
    public ImmutableArray<ConductorStrain> Of(StatePoint fault, StatePoint healthy, StatePoint after, FuseOpening? opening)
    {
        var found = new List<ConductorStrain>();
        for (int c = 0; c < sizes.Conductors.Length; c++)
        {
            double amperes = Math.Abs(solver.AmperesOf(fault, c));
            if (amperes < LeastAmperes || amperes < MoreThanHealthy * Math.Abs(solver.AmperesOf(healthy, c))) continue;
            found.Add(Of(sizes.Conductors[c], amperes, Math.Abs(fault.Point.Across(solver.Network.Edges[c])), GoesOn(after, healthy, c) ? null : opening));
        }
        // Of what differs in its last digits only, the first in the file comes first.
        return [.. found.OrderByDescending(s => s.Survival).ThenByDescending(s => (float)(s.LetThrough / s.Stands ?? s.Warmth?.DegreesCelsius ?? 0))];
    }

    /// <summary>Whether conductors carry far more than they may: a source is shorted, and no load limits the current.</summary>
    public bool IsShort(StatePoint point, StatePoint healthy) =>
        sizes.Conductors.Where((c, i) => GoesOn(point, healthy, i) && Math.Abs(solver.AmperesOf(point, i)) > ShortTimes * (c.Allowed?.Alone ?? c.Worst.Amperes + 1)).Any();

    private bool GoesOn(StatePoint after, StatePoint healthy, int conductor) =>
        Math.Abs(solver.AmperesOf(after, conductor)) is var amperes && amperes >= LeastAmperes && amperes >= MoreThanHealthy * Math.Abs(solver.AmperesOf(healthy, conductor))
        // Within what it may carry for good it is no strain: a battery takes more once a load is off.
        && amperes > (sizes.Conductors[conductor].Allowed?.Amperes ?? 0);

    private static ConductorStrain Of(ConductorSizing sizing, double amperes, double volts, FuseOpening? opening)
    {
        ConductorStrain strain = new(sizing.Conductor.Id, ElectricCurrent.FromAmperes(amperes), Survival.NotShown) { Heat = Power.FromWatts(amperes * volts) };
        if (sizing.Conductor.Wire.Size is not { } size) return strain;
        double rated = sizing.Insulation.Celsius, stands = Adiabatic.Stands(size.Area, rated, Adiabatic.LimitOf(rated));
        strain = strain with { Stands = stands };
        if (opening?.Latest is { Seconds: <= Adiabatic.MostSeconds } latest)
        {
            double most = amperes * amperes * latest.Seconds, least = amperes * amperes * opening.Earliest!.Value.Seconds;
            return strain with { LetThrough = most, Survival = most <= stands ? Survival.Survives : least > stands ? Survival.Overheats : Survival.NotShown };
        }
        if (sizing.Allowed is not { } allowed) return strain;
        // Nothing is known of the times of a link without its gauge but that it opens well above its rating.
        if (opening is { Earliest: null }) return Lasting(strain, sizing, Math.Min(amperes, OpeningTime.Opens * opening.Rating.Amperes), allowed.Amperes, isKnown: false);
        return Lasting(strain, sizing, amperes, allowed.Amperes, isKnown: true);
    }

    private static ConductorStrain Lasting(ConductorStrain strain, ConductorSizing sizing, double amperes, double allowed, bool isKnown)
    {
        double celsius = SteadyHeat.Celsius(sizing.Allowed!.Ambient, sizing.Insulation.Celsius, amperes / allowed);
        var survival = amperes > SteadyHeat.MeltingAmperes(sizing.Conductor.Wire.Size!.Value.Area) ? Survival.Melts
            : celsius > Adiabatic.LimitOf(sizing.Insulation.Celsius) ? Survival.Overheats
            : celsius > sizing.Insulation.Celsius || !isKnown ? Survival.NotShown : Survival.Survives;
        return strain with { Survival = survival, Warmth = Temperature.FromDegreesCelsius(Math.Min(celsius, 1083)) };
    }
}
