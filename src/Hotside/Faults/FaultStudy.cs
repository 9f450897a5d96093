using System.Collections.Immutable;
using Hotside.Circuits;
using UnitsNet;

namespace Hotside.Faults;

/// <summary>What a single fault of a conductor does in a setting.</summary>
/// <param name="Conductor">The conductor.</param>
/// <param name="Kind">What goes wrong with it.</param>
/// <param name="Setting">The setting.</param>
public sealed record FaultStudy(Conductor Conductor, FaultKind Kind, Setting Setting)
{
    /// <summary>What becomes of the loads, in the order of the file; those that work on are left out.</summary>
    public ImmutableArray<LoadConsequence> Loads { get; internal init; } = [];

    /// <summary>The fault's current with all conductors at the temperature stated, else at 20 °C; of a bad joint, its current; zero for an open conductor.</summary>
    public ElectricCurrent Current { get; internal init; }

    /// <summary>The current of a short circuit with the conductors as warm as their insulation stands, the least; <see langword="null"/> where it was not computed, since no figure hangs on it.</summary>
    public ElectricCurrent? CurrentWhenHot { get; internal init; }

    /// <summary>How a short circuit ends.</summary>
    public FaultEnd End { get; internal init; }

    /// <summary>What opens, first first.</summary>
    public ImmutableArray<FuseOpening> Openings { get; internal init; } = [];

    /// <summary>Conductors that carry the current of a short circuit, those that suffer most first.</summary>
    public ImmutableArray<ConductorStrain> Strains { get; internal init; } = [];

    /// <summary>What a bad joint takes.</summary>
    public ElectricPotential JointDrop { get; internal init; }

    /// <summary>The heat in a bad joint.</summary>
    public Power JointHeat { get; internal init; }

    /// <summary>Whether the heat burns: over 10 W at a bad joint (common practice, no source), or a conductor of a fault that lasts warmer than 60 °C (ISO 13732-1 and ASTM C1055, from memory).</summary>
    public bool IsHotToTouch => JointHeat.Watts > 10 || Strains.Any(s => s.Warmth is { DegreesCelsius: > 60 });

    /// <summary>Whether the conductor feeds a cranking motor, which is customarily not fused.</summary>
    internal bool FeedsStarter { get; init; }

    /// <summary>Whether it changes nothing in this setting.</summary>
    public bool IsWithoutEffect => Loads.IsEmpty && End is FaultEnd.None && JointHeat.Watts <= 1;
}
