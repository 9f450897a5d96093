namespace Hotside.Solving.Laws;

/// <summary>
/// A motor with magnets or a shunt field that turns a fan: torque goes with the current and with the square of the speed, the counter-voltage with the speed (physics).
/// So the current is the rated one times n², where U = kE·n + R·I·n².
/// </summary>
/// <param name="Volts">The rated volts.</param>
/// <param name="Amperes">The rated current.</param>
/// <param name="ArmatureOhms">The resistance of the armature, below volts by amperes.</param>
internal sealed record FanLaw(double Volts, double Amperes, double ArmatureOhms) : Law
{
    private readonly double counter = Volts - (ArmatureOhms * Amperes);

    /// <inheritdoc/>
    public override (double Siemens, double Emf) Chord => (Amperes / Volts, 0);

    /// <inheritdoc/>
    public override (double Amperes, double Siemens) At(double volts)
    {
        double size = Math.Abs(volts), root = Math.Sqrt((counter * counter) + (4 * ArmatureOhms * Amperes * size)), speed = 2 * size / (counter + root);
        return (Math.CopySign(Amperes * speed * speed, volts) + (Leak * volts), (2 * Amperes * speed / root) + Leak);
    }

    // Standing still it has no slope, yet its winding joins its ends.
    /// <inheritdoc/>
    public override double TieAt(double volts) => Math.Max(At(volts).Siemens, Amperes / Volts);
}
