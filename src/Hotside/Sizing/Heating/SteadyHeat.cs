namespace Hotside.Sizing.Heating;

/// <summary>
/// How warm a conductor gets in the long run: heat goes with the square of the current, cooling with the rise, so T = Ta + (TR − Ta)·(I / Imax)², where a table says that Imax
/// warms it to TR.
/// </summary>
internal static class SteadyHeat
{
    // Preece, Proc. Royal Society 44 (1888), 109: copper, amperes for d in inches. Far too low for short insulated wires: an order of magnitude.
    private const double PreeceCopper = 10_244, MillimetresAnInch = 25.4;

    /// <summary>°C in the long run.</summary>
    /// <param name="ambient">The air in °C.</param>
    /// <param name="rated">The temperature to which the greatest current warms it, in °C.</param>
    /// <param name="share">The current as a part of that greatest one.</param>
    public static double Celsius(double ambient, double rated, double share) => ambient + ((rated - ambient) * share * share);

    /// <summary>The current at which a bare copper wire in air melts in the long run, in amperes; an order of magnitude.</summary>
    /// <param name="area">mm².</param>
    public static double MeltingAmperes(double area) => PreeceCopper * Math.Pow(Math.Sqrt(4 * area / Math.PI) / MillimetresAnInch, 1.5);
}
