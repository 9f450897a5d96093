namespace Hotside.Solving.Laws;

/// <summary>
/// A filament: its current goes with a power of the voltage (Fink and Beaty, Standard Handbook for Electrical Engineers, 11th edition 1978, page 22-8; 0.55 for filaments in
/// general, 0.541 in gas and 0.58 in vacuum), but never above what its cold resistance lets through. That is a twelfth of the hot one: the middle of 10 to 15 (tungsten
/// at 300 K against 2500 to 3000 K, Jones and Langmuir 1927, from memory). Below a third of its volts a lamp may differ by a fifth.
/// </summary>
/// <param name="Volts">The rated volts, above 0.</param>
/// <param name="Amperes">The rated current, above 0.</param>
/// <param name="Exponent">The power, below 1.</param>
internal sealed record LampLaw(double Volts, double Amperes, double Exponent = LampLaw.Usual) : Law
{
    public const double Usual = 0.55, InGas = 0.541, InVacuum = 0.58;

    private const double HotToCold = 12;

    /// <summary>The resistance at room temperature in ohms.</summary>
    public double ColdOhms => Volts / Amperes / HotToCold;

    /// <summary>The volts at which the cold line and the power meet.</summary>
    public double Knee { get; } = Volts * Math.Pow(1 / HotToCold, 1 / (1 - Exponent));

    /// <inheritdoc/>
    public override (double Siemens, double Emf) Chord => (Amperes / Volts, 0);

    /// <inheritdoc/>
    public override (double Amperes, double Siemens) At(double volts)
    {
        double size = Math.Abs(volts);
        if (size <= Knee) return (volts / ColdOhms, 1 / ColdOhms);
        double amperes = Amperes * Math.Pow(size / Volts, Exponent);
        return (Math.CopySign(amperes, volts), Exponent * amperes / size);
    }
}
