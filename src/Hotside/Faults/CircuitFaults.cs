using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Sizing;
using UnitsNet;

namespace Hotside.Faults;

/// <summary>What single faults of a circuit's conductors do: each open, with a bad joint, and shorted to the chassis at either end. Immutable; safe to share between threads.</summary>
/// <remarks>An aid: do not try these faults on a vehicle.</remarks>
public sealed record CircuitFaults
{
    private const double UsualJointOhms = 0.5;

    private CircuitFaults(ImmutableArray<FaultStudy> faults) => Faults = faults;

    /// <summary>The faults, conductors in the order of the file, kinds in the order of <see cref="FaultKind"/>; shorts only where the end is live.</summary>
    public ImmutableArray<FaultStudy> Faults { get; }

    /// <summary>Short circuits that nothing protects, and conductors that do not survive one.</summary>
    public ImmutableArray<Diagnostic> Findings => FaultFindings.Of(Faults);

    /// <summary>All single faults in one setting.</summary>
    /// <param name="sizes">The circuit, sized.</param>
    /// <param name="setting">The setting; what it does not name rests.</param>
    /// <param name="joint">The resistance of a bad joint, above 0; half an ohm when left out (own choice).</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="joint"/> is not above 0.</exception>
    public static CircuitFaults Of(CircuitSizes sizes, Setting setting, ElectricResistance? joint = null)
    {
        ArgumentNullException.ThrowIfNull(sizes);
        ArgumentNullException.ThrowIfNull(setting);
        FaultSolver solver = new(sizes, Checked(joint));
        return new([.. sizes.Circuit.Conductors.SelectMany((_, i) => solver.Of(i, setting))]);
    }

    /// <summary>The faults of one conductor, in the setting in which it carries most, or in a given one.</summary>
    /// <param name="sizes">The circuit, sized.</param>
    /// <param name="conductor">The conductor's id.</param>
    /// <param name="setting">The setting; left out, that in which the conductor carries most.</param>
    /// <param name="joint">The resistance of a bad joint, above 0; half an ohm when left out (own choice).</param>
    /// <exception cref="ArgumentException">The circuit has no such conductor; the message names the nearest.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="joint"/> is not above 0.</exception>
    public static CircuitFaults OfConductor(CircuitSizes sizes, string conductor, Setting? setting = null, ElectricResistance? joint = null)
    {
        ArgumentNullException.ThrowIfNull(sizes);
        ArgumentNullException.ThrowIfNull(conductor);
        var sizing = sizes.Conductor(conductor);
        FaultSolver solver = new(sizes, Checked(joint)) { AsksHot = true };
        int index = sizes.Circuit.Conductors.IndexOf(sizing.Conductor);
        return new([.. solver.Of(index, setting ?? solver.Worst.Of(index))]);
    }

    /// <summary>Each conductor's faults in the setting in which it carries most.</summary>
    /// <param name="sizes">The circuit, sized.</param>
    /// <param name="joint">The resistance of a bad joint, above 0; half an ohm when left out (own choice).</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="joint"/> is not above 0.</exception>
    public static CircuitFaults OfEach(CircuitSizes sizes, ElectricResistance? joint = null)
    {
        ArgumentNullException.ThrowIfNull(sizes);
        FaultSolver solver = new(sizes, Checked(joint));
        return new([.. sizes.Conductors.SelectMany((_, i) => solver.Of(i, solver.Worst.Of(i)))]);
    }

    private static double Checked(ElectricResistance? joint) => joint is not { } given ? UsualJointOhms
        : given.Ohms > 0 ? given.Ohms : throw new ArgumentOutOfRangeException(nameof(joint), given, "The resistance of a bad joint is above 0.");
}
