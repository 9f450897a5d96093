namespace Hotside.Solving.Laws;

/// <summary>
/// The cold resistance of a fuse by its rating: standard blades, typical, from makers' data sheets (from memory). Between two ratings it follows a power of the current;
/// above 40 A a fuse is taken to drop as much at its rating as that of 40 A does.
/// </summary>
internal static class FuseResistance
{
    // Amperes and milliohms.
    private static readonly (double Amperes, double Milliohms)[] Table =
    [
        (1, 123), (2, 54), (3, 31), (4, 23), (5, 17.9), (7.5, 10.9), (10, 7.7), (15, 4.8), (20, 3.4), (25, 2.5), (30, 2.0), (35, 1.7), (40, 1.4),
    ];

    /// <summary>Ohms of a fuse of a rating in amperes, above 0.</summary>
    public static double Of(double amperes)
    {
        int above = Array.FindIndex(Table, row => row.Amperes >= amperes);
        if (above == 0) return Table[0].Milliohms * Table[0].Amperes / amperes / 1000;
        if (above < 0) return Table[^1].Milliohms * Table[^1].Amperes / amperes / 1000;
        var (low, high) = (Table[above - 1], Table[above]);
        double share = Math.Log(amperes / low.Amperes) / Math.Log(high.Amperes / low.Amperes);
        return low.Milliohms * Math.Pow(high.Milliohms / low.Milliohms, share) / 1000;
    }
}
