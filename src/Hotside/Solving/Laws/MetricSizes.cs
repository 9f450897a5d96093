namespace Hotside.Solving.Laws;

/// <summary>
/// The greatest resistance of flexible copper conductors of metric sizes at 20 °C: IEC 60228, class 5, plain copper (three reproductions of the table agree). Sizes in between
/// follow the product of resistance and size, which lies between 19.0 and 19.95 Ω·mm²/km throughout.
/// </summary>
internal static class MetricSizes
{
    // mm² and milliohms a metre.
    private static readonly (double Area, double Milliohms)[] Table =
    [
        (0.5, 39.0), (0.75, 26.0), (1, 19.5), (1.5, 13.3), (2.5, 7.98), (4, 4.95), (6, 3.30), (10, 1.91), (16, 1.21), (25, 0.780), (35, 0.554), (50, 0.386), (70, 0.272),
        (95, 0.206), (120, 0.161),
    ];

    /// <summary>Ohms a metre at 20 °C.</summary>
    /// <param name="area">The size in mm², above 0.</param>
    public static double OhmsPerMetre(double area)
    {
        int above = Array.FindIndex(Table, row => row.Area >= area);
        if (above >= 0 && Table[above].Area == area) return Table[above].Milliohms / 1000;
        double product = above == 0 ? Product(0) : above < 0 ? Product(Table.Length - 1)
            : Product(above - 1) + ((Product(above) - Product(above - 1)) * Math.Log(area / Table[above - 1].Area) / Math.Log(Table[above].Area / Table[above - 1].Area));
        return product / area;
    }

    private static double Product(int row) => Table[row].Area * Table[row].Milliohms / 1000;
}
