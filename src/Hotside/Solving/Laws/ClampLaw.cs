namespace Hotside.Solving.Laws;

/// <summary>A straight line between two limits: resistances, sources, diodes and motors under a constant torque.</summary>
/// <param name="Siemens">The slope between the limits, above 0.</param>
/// <param name="Emf">The volts at which no current flows.</param>
/// <param name="Least">The least current in amperes.</param>
/// <param name="Most">The greatest current in amperes.</param>
internal sealed record ClampLaw(double Siemens, double Emf = 0, double Least = double.NegativeInfinity, double Most = double.PositiveInfinity) : Law
{
    /// <summary>A resistance of some ohms, above 0.</summary>
    public static ClampLaw Resistance(double ohms) => new(1 / ohms);

    /// <summary>Whether it has no limit.</summary>
    public bool IsLine => double.IsNegativeInfinity(Least) && double.IsPositiveInfinity(Most);

    /// <inheritdoc/>
    public override (double Siemens, double Emf) Chord => (Siemens, Emf);

    /// <inheritdoc/>
    public override (double Amperes, double Siemens) At(double volts)
    {
        double line = Siemens * (volts - Emf);
        if (IsLine) return (line, Siemens);
        double leak = Leak * volts;
        return line < Least ? (Least + leak, Leak) : line > Most ? (Most + leak, Leak) : (line + leak, Siemens + Leak);
    }
}
