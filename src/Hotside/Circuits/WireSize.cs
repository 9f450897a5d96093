namespace Hotside.Circuits;

/// <summary>The size of a conductor, as gauge or as cross-section.</summary>
public readonly record struct WireSize
{
    private WireSize(int? gauge, double area)
    {
        Gauge = gauge;
        Area = area;
    }

    /// <summary>The AWG number (14 is 14 AWG, 0 is 1/0, −1 is 2/0); <see langword="null"/> when the size is given in mm².</summary>
    public int? Gauge { get; }

    /// <summary>The copper's cross-section in mm².</summary>
    public double Area { get; }

    /// <summary>A size of the AWG series.</summary>
    /// <param name="gauge">−3 (4/0) to 40.</param>
    /// <remarks>Diameter 0.127 mm · 92^((36 − n)/39) (ASTM B258), solid.</remarks>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="gauge"/> is outside −3 to 40.</exception>
    public static WireSize Awg(int gauge)
    {
        if (gauge is < -3 or > 40) throw new ArgumentOutOfRangeException(nameof(gauge), gauge, "The AWG series runs from 4/0 (−3) to 40.");
        double diameter = 0.127 * Math.Pow(92, (36 - gauge) / 39.0);
        return new(gauge, Math.PI / 4 * diameter * diameter);
    }

    /// <summary>A metric size.</summary>
    /// <param name="area">Cross-section in mm², above 0 and at most 1000.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="area"/> is not above 0 and at most 1000.</exception>
    public static WireSize SquareMillimetres(double area) =>
        area is > 0 and <= 1000 ? new(null, area) : throw new ArgumentOutOfRangeException(nameof(area), area, "A cross-section is above 0 and at most 1000 mm².");

    /// <summary>The size without its unit, as it stands in a wire label: <c>14</c>, <c>1/0</c>, <c>2.5</c>.</summary>
    public string Label => Gauge is { } awg ? QuantityText.Gauge(awg) : Numbers.Plain(Area, 3);

    /// <summary>The size with its unit: <c>14 AWG</c>, <c>2.5 mm²</c>.</summary>
    public override string ToString() => Label + (Gauge is null ? " mm²" : " AWG");
}
