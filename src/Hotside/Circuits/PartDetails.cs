using System.Collections.Immutable;
using UnitsNet;

namespace Hotside.Circuits;

/// <summary>What <see cref="CircuitBuilder"/> may be told of a part. A rating that the part's kind does not have is refused when the part is added.</summary>
public sealed record PartDetails
{
    /// <summary>The part's name.</summary>
    public string? Name { get; init; }

    /// <summary>The rated voltage (rating <c>V</c>), above 0.</summary>
    public ElectricPotential? Voltage { get; init; }

    /// <summary>The rated current (rating <c>A</c>), above 0.</summary>
    public ElectricCurrent? Current { get; init; }

    /// <summary>The rated power (rating <c>W</c>), above 0.</summary>
    public Power? Power { get; init; }

    /// <summary>The resistance (rating <c>ohm</c>), 0 or more.</summary>
    public ElectricResistance? Resistance { get; init; }

    /// <summary>The capacity of a battery (rating <c>Ah</c>), above 0.</summary>
    public ElectricCharge? Capacity { get; init; }

    /// <summary>The current of a relay's coil (rating <c>coil A</c>), above 0.</summary>
    public ElectricCurrent? CoilCurrent { get; init; }

    /// <summary>The number of ways of a connector or block, which must be said of one; <see langword="null"/> for all other kinds.</summary>
    public int? Ways { get; init; }

    /// <summary>Any other rating by its name, such as <c>out V</c>.</summary>
    public ImmutableDictionary<string, StatedValue> Ratings { get; init; } = ImmutableDictionary<string, StatedValue>.Empty;

    /// <summary>Terminals bolted straight to a node, terminal to node: <c>["1"] = "X1"</c>.</summary>
    public ImmutableDictionary<string, string> Joints { get; init; } = ImmutableDictionary<string, string>.Empty;

    /// <summary>The node the case stands on, or <c>insulated</c>; <see langword="null"/>: as the kind has it.</summary>
    public string? Case { get; init; }

    /// <summary>Options of the kind, such as <c>wound</c>.</summary>
    public ImmutableArray<string> Options { get; init; } = [];

    /// <summary>Terminals left open on purpose.</summary>
    public ImmutableArray<string> FreeTerminals { get; init; } = [];

    /// <summary>The id of the assembly it belongs to, a part of its own.</summary>
    public string? Assembly { get; init; }

    /// <summary>Where it is, in free words.</summary>
    public string? Place { get; init; }

    /// <summary>The ratings as the model has them, in the order of the properties, others by name.</summary>
    internal IEnumerable<Rating> AllRatings()
    {
        if (Voltage is { } volts) yield return new("V", new(volts.Volts, Unit.Volt));
        if (Current is { } amperes) yield return new("A", new(amperes.Amperes, Unit.Ampere));
        if (Power is { } watts) yield return new("W", new((double)watts.Watts, Unit.Watt));
        if (Resistance is { } ohms) yield return new("ohm", new(ohms.Ohms, Unit.Ohm));
        if (Capacity is { } charge) yield return new("Ah", new(charge.AmpereHours, Unit.AmpereHour));
        if (CoilCurrent is { } coil) yield return new("coil A", new(coil.Amperes, Unit.Ampere));
        if (Ways is { } ways) yield return new("ways", new(ways, Unit.Ways));
        foreach (var (name, quantity) in Ratings.OrderBy(r => r.Key, StringComparer.Ordinal)) yield return new(name, quantity);
    }
}
