using Hotside.Circuits;

namespace Hotside.Tests.Solving;

/// <summary>The resistance of conductors from the printed tables, apart from the library's own.</summary>
internal static class SpiceConductors
{
    // IEC 60228, class 5, plain copper: mΩ/m at 20 °C.
    private static readonly Dictionary<double, double> Metric = new()
    {
        [0.5] = 39.0, [0.75] = 26.0, [1] = 19.5, [1.5] = 13.3, [2.5] = 7.98, [4] = 4.95, [6] = 3.30, [10] = 1.91, [16] = 1.21, [25] = 0.780, [35] = 0.554, [50] = 0.386, [70] = 0.272, [95] = 0.206, [120] = 0.161,
    };

    /// <summary>Ohms of a copper wire; a size of the AWG series by its diameter, 0.127 mm · 92^((36 − n)/39), stranded.</summary>
    public static double OhmsOf(WireSize size, double metres, double celsius)
    {
        double diameter = size.Gauge is { } gauge ? 0.127 * Math.Pow(92, (36 - gauge) / 39.0) : 0;
        double ohms = size.Gauge is null ? Metric[size.Area] / 1000 : 1.02 / 58 / (Math.PI * diameter * diameter / 4);
        return ohms * metres * (1 + (0.00393 * (celsius - 20)));
    }
}
