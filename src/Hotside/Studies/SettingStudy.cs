using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Studies.Figures;

namespace Hotside.Studies;

/// <summary>What is on in a named setting, once relays have settled from all released.</summary>
/// <param name="Setting">The setting.</param>
/// <param name="On">The loads that are fed, in the order of the circuit's loads; by name.</param>
/// <param name="InSeries">The loads that are fed through others only; by name.</param>
/// <param name="Relays">Where each actuator that windings move comes to rest.</param>
public sealed record SettingStudy(Setting Setting, ImmutableArray<string> On, ImmutableArray<string> InSeries, ImmutableArray<SetPosition> Relays)
{
    /// <summary>Where each switch and condition stands: as the setting says, else at rest.</summary>
    public ImmutableArray<SetPosition> Positions { get; init; } = [];

    /// <summary>Whether feed and return are one point: nothing is said of loads then.</summary>
    public bool IsShort { get; init; }

    /// <summary>Whether a relay never comes to rest, or several race, so that other rests are possible than the one given.</summary>
    public bool IsUnsettled { get; init; }

    /// <summary>
    /// Volts, amperes and watts in this setting, with where the relays rest by the volts of their windings; worked out when first asked for.
    /// What the verdicts above say by paths alone may differ where a winding is fed too weakly.
    /// </summary>
    /// <exception cref="InvalidOperationException">The record was made by hand and belongs to no study.</exception>
    public SettingFigures Figures => (Operation ?? throw new InvalidOperationException("Figures belong to the settings of a study.")).In(Setting);

    /// <summary>What works figures out.</summary>
    internal Operation? Operation { get; init; }
}
