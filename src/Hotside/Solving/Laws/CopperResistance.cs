using Hotside.Circuits;

namespace Hotside.Solving.Laws;

/// <summary>
/// The resistance of copper conductors. A size of the AWG series: the resistivity of annealed copper, 1/58 Ω·mm²/m at 20 °C (IEC 60028:1925), over the section that ASTM B258
/// derives, times 1.02 for the longer strands of a stranded wire (stranded against solid in NFPA 70, chapter 9, table 8: 1.018 to 1.025). A metric size: <see cref="MetricSizes"/>.
/// </summary>
internal static class CopperResistance
{
    /// <summary>A joint of which nothing is known, in ohms (own choice): 0.3 mV at 300 A.</summary>
    public const double Contact = 1e-6;

    /// <summary>The temperature of the tables in °C.</summary>
    public const double TableCelsius = 20;

    private const double Resistivity = 1.0 / 58, Stranding = 1.02;

    // Temperature coefficient of copper at 20 °C (NBS Handbook 100, from memory).
    private const double PerKelvin = 0.00393;

    /// <summary>Ohms a metre at 20 °C.</summary>
    public static double OhmsPerMetre(WireSize size) => size.Gauge is null ? MetricSizes.OhmsPerMetre(size.Area) : Stranding * Resistivity / size.Area;

    /// <summary>By how much a resistance at 20 °C is more at another temperature.</summary>
    public static double FactorAt(double celsius) => 1 + (PerKelvin * (celsius - TableCelsius));

    /// <summary>The ohms of a wire end to end; <see langword="null"/> when size or length are not known and no resistance is given.</summary>
    /// <param name="wire">The wire.</param>
    /// <param name="celsius">Its temperature; a given resistance stands as it is.</param>
    public static double? Of(Wire wire, double celsius) =>
        wire.ResistanceInOhms is { } given ? Math.Max(given, Contact)
        : wire is { Size: { } size, LengthInMetres: { } length } ? Math.Max(OhmsPerMetre(size) * length * FactorAt(celsius), Contact)
        : null;
}
