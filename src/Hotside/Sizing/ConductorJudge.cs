using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Sizing.Drops;
using Hotside.Sizing.Tables;

namespace Hotside.Sizing;

/// <summary>Judges a conductor of known current by the rules.</summary>
internal sealed class ConductorJudge(Circuit circuit)
{
    /// <summary>From which current on a conductor warms its loom, in amperes (own choice).</summary>
    public const double LiveAmperes = 0.01;

    /// <summary>The smallest size made that ampacity, fuse and strength ask for; <see langword="null"/> where nothing is said.</summary>
    public WireSize? LeastByHeat(ConductorSizing conductor)
    {
        if (RefusalOf(conductor) is not null) return null;
        var ladder = WireLadder.Of(conductor.Conductor.Wire, circuit.System);
        foreach (var size in ladder)
            if (AllowedAt(conductor, size) is { } allowed && conductor.Worst.Amperes <= allowed.Amperes && (!IsGuarded(conductor) || GuardShare(conductor, size, allowed) <= 1) && IsStrong(conductor, size, ladder))
                return size;
        return null;
    }

    /// <summary>The verdict of all rules.</summary>
    /// <param name="conductor">The conductor with its current and what guards it.</param>
    /// <param name="wire">Its wire, with the size that was taken where none is stated.</param>
    /// <param name="drops">The sizes that the drops ask for.</param>
    /// <param name="index">Its number in the circuit.</param>
    public ConductorSizing Judged(ConductorSizing conductor, Wire wire, DropSizes drops, int index)
    {
        var ladder = WireLadder.Of(wire, circuit.System);
        var stated = conductor.Conductor.Wire.Size;
        conductor = conductor with { Allowed = stated is { } size ? AllowedAt(conductor, size) : null, Tightest = drops.Tightest(index) };
        if (RefusalOf(conductor) is { } refusal) return conductor with { Refusal = refusal };
        ImmutableArray<RuleVerdict> rules = [ByAmpacity(conductor, ladder), ByFuse(conductor, ladder), ByDrop(conductor, wire, drops, index), ByStrength(conductor, ladder)];
        if (stated is null) rules = [.. rules.Select(r => r with { Outcome = SizingOutcome.NotJudged, Share = null })];
        // A rule that applies and that no size keeps leaves nothing to tell.
        bool isOpen = rules.Any(r => r.LeastSize is null && Applies(r.Rule, conductor, wire));
        var needed = rules.Where(r => r.LeastSize is not null).MaxBy(r => r.LeastSize!.Value.Area);
        return conductor with { Rules = rules, SizeNeeded = isOpen ? null : needed?.LeastSize, Binding = isOpen ? null : needed?.Rule };
    }

    private static bool Applies(SizingRule rule, ConductorSizing conductor, Wire wire) => rule switch
    {
        SizingRule.Ampacity => true,
        SizingRule.Fuse => IsGuarded(conductor),
        SizingRule.Drop => conductor.Tightest is not null && DropSizes.IsJudged(wire),
        _ => false,
    };

    private static RuleVerdict ByAmpacity(ConductorSizing conductor, ImmutableArray<WireSize> ladder)
    {
        double amperes = conductor.Worst.Amperes;
        var outcome = conductor.Allowed is not { } at ? SizingOutcome.NotJudged
            : amperes <= at.Amperes ? SizingOutcome.Passed : amperes <= at.Alone || at.WarnsOnly ? SizingOutcome.Warning : SizingOutcome.Failed;
        return new(SizingRule.Ampacity, outcome)
        {
            Share = amperes / conductor.Allowed?.Amperes,
            LeastSize = Least(ladder, s => AllowedAt(conductor, s) is { } allowed && amperes <= allowed.Amperes),
        };
    }

    private static RuleVerdict ByFuse(ConductorSizing conductor, ImmutableArray<WireSize> ladder)
    {
        if (!IsGuarded(conductor)) return new(SizingRule.Fuse, SizingOutcome.NotJudged);
        var least = Least(ladder, s => AllowedAt(conductor, s) is { } allowed && GuardShare(conductor, s, allowed) <= 1);
        if (conductor is not { Allowed: { } at, Conductor.Wire.Size: { } size }) return new(SizingRule.Fuse, SizingOutcome.NotJudged) { LeastSize = least };
        double share = GuardShare(conductor, size, at), alone = share * at.BundleFactor;
        var outcome = share <= 1 ? SizingOutcome.Passed : alone <= FuseLadder.MostOfAmpacity || at.WarnsOnly ? SizingOutcome.Warning : SizingOutcome.Failed;
        return new(SizingRule.Fuse, outcome) { Share = share, LeastSize = least };
    }

    private static RuleVerdict ByDrop(ConductorSizing conductor, Wire wire, DropSizes drops, int index)
    {
        if (conductor.Tightest is not { } tightest) return new(SizingRule.Drop, SizingOutcome.NotJudged);
        double share = tightest.Volts / tightest.Limit.Volts;
        return new(SizingRule.Drop, share <= 1 ? SizingOutcome.Passed : SizingOutcome.Failed) { Share = share, LeastSize = DropSizes.IsJudged(wire) ? drops.Least(index) : null };
    }

    private static RuleVerdict ByStrength(ConductorSizing conductor, ImmutableArray<WireSize> ladder)
    {
        var wire = conductor.Conductor.Wire;
        if (wire.IsBraid || wire.Role is not (WireRole.Wire or WireRole.Spare)) return new(SizingRule.Strength, SizingOutcome.NotJudged);
        var least = Least(ladder, s => IsStrong(conductor, s, ladder));
        bool isStrong = wire.Size is not { } size || IsStrong(conductor, size, ladder);
        return new(SizingRule.Strength, isStrong ? SizingOutcome.Passed : SizingOutcome.Warning) { Share = least?.Area / wire.Size?.Area, LeastSize = least };
    }

    private static bool IsGuarded(ConductorSizing conductor) => conductor.Guard is { IsUnprotected: false, Devices.IsEmpty: false };

    // What guards it as a part of what it may carry; a link by gauge numbers, four of them.
    private static double GuardShare(ConductorSizing conductor, WireSize size, Ampacity allowed) =>
        conductor.Guard is { Amperes: null, LinkGauge: { } link } ? WireSize.Awg(Math.Max(link - FuseLadder.LinkSteps, -3)).Area / size.Area
        : conductor.GuardAmperes!.Value / allowed.Amperes;

    private static bool IsStrong(ConductorSizing conductor, WireSize size, ImmutableArray<WireSize> ladder)
    {
        var wire = conductor.Conductor.Wire;
        return wire.IsBraid || wire.Role is not (WireRole.Wire or WireRole.Spare) || wire.LengthInMetres < WireLadder.PigtailMetres(ladder)
            || size.Area >= 0.999 * WireLadder.Least(ladder, wire.Loom is not null).Area;
    }

    private static WireSize? Least(ImmutableArray<WireSize> ladder, Predicate<WireSize> keeps)
    {
        foreach (var size in ladder)
            if (keeps(size))
                return size;
        return null;
    }

    private static Ampacity? AllowedAt(ConductorSizing conductor, WireSize size) =>
        Ampacity.Of(size, conductor.Insulation, conductor.Conductor.Wire.IsInEngineSpace, conductor.Bundled, conductor.Conductor.Wire.TemperatureInCelsius);

    private SizingRefusal? RefusalOf(ConductorSizing conductor)
    {
        var wire = conductor.Conductor.Wire;
        if (conductor.Conductor.Ends.All(IsHighVoltage)) return SizingRefusal.IgnitionSecondary;
        if (ResistanceWire.Is(wire)) return SizingRefusal.ResistanceWire;
        if (conductor.Insulation.Celsius < Insulation.Unknown) return SizingRefusal.InsulationBelowTables;
        if (wire.TemperatureInCelsius >= conductor.Insulation.Celsius) return SizingRefusal.HotterThanInsulation;
        return wire.Size is { } size && AllowedAt(conductor, size) is null ? SizingRefusal.SizeOutsideTables : null;
    }

    // A terminal on which nothing but spark gaps stands.
    private bool IsHighVoltage(End end)
    {
        if (end.Part is not { } id || circuit.FindPart(id) is not { } part) return false;
        var touching = part.Kind.Elements.Where(e => Nodes.NodeOf(part, e.From) == end || Nodes.NodeOf(part, e.To) == end).ToArray();
        return touching.Length > 0 && touching.All(e => e.Type == ElementType.Gap);
    }
}
