using System.Collections.Immutable;

namespace Hotside.Solving;

/// <summary>Under what a circuit is computed, beyond where its switches stand: temperatures, the battery's charge, how fast the alternator turns, joints gone bad.</summary>
internal sealed record Surroundings
{
    /// <summary>Everything at the temperature of the tables, batteries full, machines at their rating, joints good.</summary>
    public static Surroundings Usual { get; } = new();

    /// <summary>The temperature of the conductors in °C; a measured resistance stands as it is.</summary>
    public double ConductorCelsius { get; init; } = 20;

    /// <summary>The temperature of windings and machines in °C: 20 cold, 85 hot. A relay's winding that is hot wants as much more voltage as it resists more.</summary>
    public double WindingCelsius { get; init; } = 20;

    /// <summary>How much of their charge the batteries have, from 0 to 1.</summary>
    public double Charge { get; init; } = 1;

    /// <summary>How often alternators turn in a minute; <see langword="null"/>: fast enough for their rating.</summary>
    public double? AlternatorSpeed { get; init; }

    /// <summary>Joints gone bad.</summary>
    public ImmutableArray<BadJoint> BadJoints { get; init; } = [];

    /// <summary>The ohms that bad joints add to a conductor.</summary>
    public double JointOhms(string conductor)
    {
        double ohms = 0;
        foreach (var joint in BadJoints)
            if (joint.Conductor == conductor)
                ohms += joint.Ohms;
        return ohms;
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
