namespace Hotside.Sizing.Heating;

/// <summary>
/// Copper that has no time to give its heat away: I²·t = k²·S² with k = 226·√ln[(234.5 + θf) / (234.5 + θi)] (IEC 60364-4-43; k by IEC 60364-5-54, annex A, from memory).
/// Holds up to 5 seconds.
/// </summary>
internal static class Adiabatic
{
    /// <summary>Up to how many seconds it holds.</summary>
    public const double MostSeconds = 5;

    private const double Copper = 226, Zero = 234.5;

    // What insulation stands for the few seconds of a short circuit, in °C: thermoplastic 160, cross-linked 250, rubber for 60 °C 200 (IEC 60364-4-43, table 43A, from memory).
    private const double Thermoplastic = 160, CrossLinked = 250;

    /// <summary>k in A·√s/mm² between two temperatures in °C.</summary>
    public static double K(double from, double to) => Copper * Math.Sqrt(Math.Log((Zero + to) / (Zero + from)));

    /// <summary>What insulation stands for a moment, by the temperature that it stands for good.</summary>
    public static double LimitOf(double celsius) => celsius > 110 ? CrossLinked : Math.Max(Thermoplastic, celsius);

    /// <summary>How much of a section stands, in A²·s.</summary>
    /// <param name="area">mm².</param>
    /// <param name="from">°C before.</param>
    /// <param name="to">°C that the insulation stands.</param>
    public static double Stands(double area, double from, double to)
    {
        double k = K(Math.Min(from, to), to);
        return k * k * area * area;
    }

    /// <summary>Seconds until a current heats a section to its limit.</summary>
    public static double Seconds(double area, double from, double to, double amperes) => Stands(area, from, to) / (amperes * amperes);
}
