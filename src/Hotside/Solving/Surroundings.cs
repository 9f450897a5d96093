using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Solving.Laws;

namespace Hotside.Solving;

/// <summary>
/// Under what a circuit is computed, beyond where its switches stand: temperatures, the battery's charge, how fast machines turn, joints gone bad. What a part or wire states
/// itself comes before what is said of all, and what a setting says of one of them before both.
/// </summary>
internal sealed record Surroundings
{
    /// <summary>Everything at the temperature of the tables, batteries full, machines at their rating, joints good, but for what parts and wires state.</summary>
    public static Surroundings Usual { get; } = new();

    /// <summary>The temperature of the conductors in °C; a measured resistance stands as it is.</summary>
    public double ConductorCelsius { get; init; } = CopperResistance.TableCelsius;

    /// <summary>The temperature of windings and machines in °C: 20 cold, 85 hot. A relay's winding that is hot wants as much more voltage as it resists more.</summary>
    public double WindingCelsius { get; init; } = CopperResistance.TableCelsius;

    /// <summary>How much of their charge the batteries have, from 0 to 1, that do not state it.</summary>
    public double Charge { get; init; } = 1;

    /// <summary>How often alternators turn in a minute; <see langword="null"/>: fast enough for their rating.</summary>
    public double? AlternatorSpeed { get; init; }

    /// <summary>Joints gone bad.</summary>
    public ImmutableArray<BadJoint> BadJoints { get; init; } = [];

    /// <summary>What a setting says of single parts and conductors.</summary>
    public ImmutableArray<SetValue> Values { get; init; } = [];

    /// <summary>Whether values of a setting say anything of the surroundings.</summary>
    public static bool AreIn(ImmutableArray<SetValue> values)
    {
        foreach (var value in values)
            if (value.Quantity.Unit != Unit.Ohm)
                return true;
        return false;
    }

    /// <summary>These with what values of a setting say.</summary>
    public Surroundings With(ImmutableArray<SetValue> values) => this with
    {
        ConductorCelsius = Said(values, SetValue.Wires, Unit.Celsius) ?? ConductorCelsius,
        WindingCelsius = Said(values, SetValue.Windings, Unit.Celsius) ?? WindingCelsius,
        Values = values,
    };

    /// <summary>The temperature of a conductor in °C.</summary>
    public double CelsiusOf(Conductor conductor) =>
        Said(Values, conductor.Id, Unit.Celsius) ?? conductor.Wire.TemperatureInCelsius
        ?? (conductor.Wire.IsInEngineSpace ? Said(Values, SetValue.EngineBay, Unit.Celsius) : null) ?? ConductorCelsius;

    /// <summary>The ohms that bad joints add to a conductor.</summary>
    public double JointOhms(Conductor conductor)
    {
        double ohms = (conductor.Wire.JointAtFromInOhms ?? 0) + (conductor.Wire.JointAtToInOhms ?? 0);
        foreach (var joint in BadJoints)
            if (joint.Conductor == conductor.Id)
                ohms += joint.Ohms;
        return ohms;
    }

    /// <summary>How much of its charge a battery has, from 0 to 1.</summary>
    public double ChargeOf(Part part, Element element) =>
        (Said(Values, part.Id, Unit.Percent) ?? part.Rated(element.Name, Unit.Percent) ?? Said(Values, SetValue.Charge, Unit.Percent)) / 100 ?? Charge;

    /// <summary>How often a machine turns in a minute; <see langword="null"/>: fast enough for its rating.</summary>
    /// <param name="part">The machine.</param>
    /// <param name="ratio">How much faster it turns than its engine.</param>
    public double? SpeedOf(Part part, double ratio)
    {
        return Said(Values, part.Id, Unit.TurnsPerMinute) ?? (Said(Values, Element.Engine, Unit.TurnsPerMinute) * ratio);
    }

    private static double? Said(ImmutableArray<SetValue> values, string of, Unit unit)
    {
        foreach (var value in values)
            if (value.Part == of && value.Quantity.Unit == unit)
                return value.Quantity.Value;
        return null;
    }
}

/// <summary>A joint gone bad at an end of a conductor.</summary>
/// <param name="Conductor">The conductor's id.</param>
/// <param name="Ohms">What it adds in line, 0 or more.</param>
internal sealed record BadJoint(string Conductor, double Ohms = BadJoint.UsualOhms)
{
    /// <summary>A joint of which nothing is measured (own choice, no source).</summary>
    public const double UsualOhms = 0.5;
}
