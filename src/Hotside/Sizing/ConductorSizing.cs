using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Sizing.Currents;
using Hotside.Sizing.Drops;
using Hotside.Sizing.Guards;
using Hotside.Sizing.Heating;
using Hotside.Sizing.Tables;
using UnitsNet;

namespace Hotside.Sizing;

/// <summary>What a conductor carries at most, what it may carry, what guards it, and which size it needs by which rule.</summary>
/// <remarks>An aid: the workshop manual, local codes and licensed practice take precedence. No two tables are mixed in one verdict.</remarks>
public sealed record ConductorSizing
{
    internal ConductorSizing(Conductor conductor) => Conductor = conductor;

    /// <summary>The conductor.</summary>
    public Conductor Conductor { get; }

    /// <summary>The greatest steady current, 0 or more, over all settings, at the volts of the running vehicle.</summary>
    /// <remarks>A cranking motor and windings that are on while a relay moves do not count: the one has a rule of its own, the others are over at once.</remarks>
    public ElectricCurrent Current => ElectricCurrent.FromAmperes(Worst.Amperes);

    /// <summary>How the current was found.</summary>
    public CurrentBasis Basis => Worst.How;

    /// <summary>Positions in which the current flows; what is not named rests.</summary>
    public ImmutableArray<SetPosition> Positions => Worst.Positions;

    /// <summary>What it may carry where it lies: the table, the engine space, the loom; <see langword="null"/> where its size is not stated or no table has it.</summary>
    public ElectricCurrent? Ampacity => Allowed is null ? null : ElectricCurrent.FromAmperes(Allowed.Amperes);

    /// <summary>What it may carry by itself, without the factor of its loom; else as <see cref="Ampacity"/>.</summary>
    public ElectricCurrent? AmpacityAlone => Allowed is null ? null : ElectricCurrent.FromAmperes(Allowed.Alone);

    /// <summary>The table that the ampacity is from.</summary>
    public string? AmpacitySource => Allowed?.Source;

    /// <summary>How warm it gets in the long run at its greatest current; <see langword="null"/> where its ampacity is not known.</summary>
    public Temperature? Warmth => Allowed is null ? null : Temperature.FromDegreesCelsius(SteadyHeat.Celsius(Allowed.Ambient, Insulation.Celsius, Worst.Amperes / Allowed.Amperes));

    /// <summary>The fuses, breakers and links ahead of it, from the side from which most can come; ids of parts.</summary>
    public ImmutableArray<string> ProtectedBy => [.. Guard.Devices.Select(d => d.Part.Id).Distinct()];

    /// <summary>The rating of what is ahead; of several beside each other the sum; <see langword="null"/> where there is nothing or it is not stated.</summary>
    public ElectricCurrent? Protection => Guard.Amperes is { } amperes ? ElectricCurrent.FromAmperes(amperes) : null;

    /// <summary>Whether a source reaches it without passing a load, so that a short to the chassis is a short circuit.</summary>
    public bool IsHot => Guard.IsHot;

    /// <summary>Whether a battery reaches it past every fuse.</summary>
    public bool IsUnprotected => Guard.IsUnprotected;

    /// <summary>Whether it feeds a cranking motor, which is customarily not fused.</summary>
    public bool FeedsStarter { get; internal init; }

    /// <summary>The load whose circuit, through this conductor, is nearest to losing too much; <see langword="null"/> where no load's circuit passes it.</summary>
    public string? DropOf => Tightest?.Load.Name;

    /// <summary>What that load's circuit loses on the whole way from the source and back; <see langword="null"/> where no load's circuit passes the conductor.</summary>
    public ElectricPotential? Drop => Tightest is null ? null : ElectricPotential.FromVolts(Tightest.Volts);

    /// <summary>What that circuit may lose.</summary>
    public ElectricPotential? DropLimit => Tightest is null ? null : ElectricPotential.FromVolts(Tightest.Limit.Volts);

    /// <summary>The smallest size made that keeps all rules; <see langword="null"/> where nothing is said, or no size does.</summary>
    public WireSize? SizeNeeded { get; internal init; }

    /// <summary>The rule that asks for the largest size; <see langword="null"/> where no size is told.</summary>
    public SizingRule? Binding { get; internal init; }

    /// <summary>What each rule says, in the order of <see cref="SizingRule"/>.</summary>
    public ImmutableArray<RuleVerdict> Rules { get; internal init; } = [];

    /// <summary>Why nothing is said of its size; <see langword="null"/> where something is.</summary>
    public SizingRefusal? Refusal { get; internal init; }

    /// <summary>The graver of what the rules say.</summary>
    public SizingOutcome Verdict => Rules.IsEmpty ? SizingOutcome.NotJudged : Rules.Max(r => r.Outcome);

    /// <summary>Whether it was there before the alteration and stays.</summary>
    public bool IsOld { get; internal init; }

    /// <summary>What a rule says.</summary>
    /// <param name="rule">The rule.</param>
    /// <returns>Its verdict; <see langword="null"/> where nothing is said of the conductor.</returns>
    public RuleVerdict? By(SizingRule rule) => Rules.FirstOrDefault(r => r.Rule == rule);

    internal WorstCurrent Worst { get; init; } = WorstCurrent.None;

    internal Ampacity? Allowed { get; init; }

    internal Insulation Insulation { get; init; } = new("", Insulation.Unknown, IsKnown: true);

    internal Protection Guard { get; init; } = new([]);

    internal CircuitDrop? Tightest { get; init; }

    /// <summary>How many conductors of its loom carry current, itself among them; 1 without a loom.</summary>
    internal int Bundled { get; init; } = 1;

    /// <summary>The rating that guards it in amperes: what is stated, or what the fuse should be.</summary>
    internal double? GuardAmperes { get; init; }
}
