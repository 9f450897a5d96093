using System.Collections.Immutable;
using Hotside.Sizing.Tables;
using Hotside.Studies;

namespace Hotside.Sizing.Drops;

/// <summary>What the circuit of a load loses on the way from the source and back, in the setting in which it loses most of what it may.</summary>
/// <param name="Load">The load.</param>
/// <param name="Volts">Volts lost.</param>
/// <param name="Limit">What it may lose.</param>
/// <param name="When">The setting, in words.</param>
/// <param name="Conductors">The conductors of its way.</param>
internal sealed record CircuitDrop(LoadStudy Load, double Volts, DropLimit Limit, string When, ImmutableArray<DropShare> Conductors)
{
    /// <summary>The volts at the load.</summary>
    public required double LoadVolts { get; init; }

    /// <summary>The load's current in amperes.</summary>
    public required double Amperes { get; init; }

    /// <summary>What is left, in volts; below 0 where it loses too much.</summary>
    public double Margin => Limit.Volts - Volts;
}

/// <summary>What a conductor of a way loses.</summary>
/// <param name="Index">The conductor's number in the circuit.</param>
/// <param name="Amperes">Its current, 0 or more.</param>
/// <param name="Volts">Its drop, 0 or more.</param>
internal sealed record DropShare(int Index, double Amperes, double Volts)
{
    /// <summary>Whether it lies beside the way, on a ring with a conductor of it: a thicker one saves little.</summary>
    public bool IsBeside { get; init; }
}
