using System.Collections.Immutable;

namespace Hotside.Circuits;

/// <summary>What a job says of the vehicle's supply. It is checked against the circuit; nothing is computed from it that the circuit itself tells.</summary>
/// <param name="Volts">The nominal voltages of the feeds in volts, above 0, highest first; at least one.</param>
/// <param name="Ground">Which pole is grounded.</param>
public sealed record ElectricalSystem(ImmutableArray<double> Volts, Ground Ground)
{
    /// <summary>The node that is the return of an isolated system; <see langword="null"/> where the chassis is.</summary>
    public End? Return { get; init; }

    /// <summary>The unit of sizes written without one: <see cref="Unit.Awg"/> or <see cref="Unit.SquareMillimetre"/>; <see langword="null"/> when not said.</summary>
    public Unit? SizesIn { get; init; }

    /// <summary>The class of insulation where a conductor does not say.</summary>
    public string? Insulation { get; init; }

    /// <summary>The node that is the common return.</summary>
    public End ReturnNode => Return ?? End.Chassis;

    /// <summary>Of the nominal voltages the nearest to some volts, whatever their sign.</summary>
    internal double Nearest(double volts) => Volts.MinBy(v => Math.Abs(v - Math.Abs(volts)));

    /// <summary>Whether both say the same; arrays are compared by content.</summary>
    /// <param name="other">The other system.</param>
    public bool Equals(ElectricalSystem? other) =>
        other is not null && Ground == other.Ground && Return == other.Return && SizesIn == other.SizesIn && Insulation == other.Insulation
        && Volts.AsSpan().SequenceEqual(other.Volts.AsSpan());

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Ground, Return, SizesIn, Insulation, Volts.Length);

    /// <summary>The supply in words, as a sheet's headline has it: <c>6 V, positive ground</c>.</summary>
    public override string ToString()
    {
        string volts = string.Join(" and ", Volts.Select(v => Numbers.Plain(v) + " V"));
        return volts + ", " + Ground.ToString().ToLowerInvariant() + " ground";
    }
}
