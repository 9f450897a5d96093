namespace Hotside.Solving.Laws;

/// <summary>
/// A motor with its field in series that turns a fan: torque goes with the square of the current (unsaturated) and of the speed, the counter-voltage with current times
/// speed (physics). So U = R·I + (U0 − R·I0)·(I / I0)².
/// </summary>
/// <param name="Volts">The rated volts, U0.</param>
/// <param name="Amperes">The rated current, I0.</param>
/// <param name="WindingOhms">The resistance of armature and field, below volts by amperes.</param>
internal sealed record SeriesFanLaw(double Volts, double Amperes, double WindingOhms) : Law
{
    private readonly double ohmic = WindingOhms * Amperes, counter = Volts - (WindingOhms * Amperes);

    /// <inheritdoc/>
    public override (double Siemens, double Emf) Chord => (Amperes / Volts, 0);

    /// <inheritdoc/>
    public override (double Amperes, double Siemens) At(double volts)
    {
        double size = Math.Abs(volts), root = Math.Sqrt((ohmic * ohmic) + (4 * counter * size));
        return (Math.CopySign(Amperes * 2 * size / (ohmic + root), volts), Amperes / root);
    }
}
