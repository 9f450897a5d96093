using System.Collections.Concurrent;
using System.Collections.Immutable;

namespace Hotside.Sizing.Tables;

/// <summary>The pattern of a fuse, by which its opening times go.</summary>
internal enum FusePattern
{
    /// <summary>Blades and small blades, up to 40 A.</summary>
    Blade,

    /// <summary>Large blades.</summary>
    LargeBlade,

    /// <summary>Glass.</summary>
    Glass,

    /// <summary>A breaker with a bimetal.</summary>
    Breaker,
}

/// <summary>Within what time a fuse opens: never one time, but the shortest and the longest that its standard allows.</summary>
/// <param name="Least">Seconds, 0 where unknown.</param>
/// <param name="Most">Seconds; <see langword="null"/>: it may never open.</param>
internal sealed record OpeningTime(double Least, double? Most)
{
    /// <summary>The last multiple of which the standards tell times.</summary>
    public const double MostTimes = 6;

    /// <summary>What a fuse carries for good, as a multiple of its rating, and from where on it opens at some time (ISO 8820-3, from memory but for the greatest).</summary>
    public const double Carries = 1.1, Opens = 1.35;

    /// <summary>From where on a fuse opens while one waits: within two minutes, whatever its pattern.</summary>
    public const double OpensSoon = 2;

    // No fuse parts its arc in less, as the last figure of blades has it (own choice for the others).
    private const double LeastOfMost = 0.1;

    private const double LargestSmallBlade = 40;

    private static readonly ConcurrentDictionary<string, ImmutableArray<(double Times, double Seconds)>> columns = new(StringComparer.Ordinal);

    /// <summary>The pattern that is taken for a rating where nothing else is known.</summary>
    public static FusePattern PatternOf(double amperes) => amperes > LargestSmallBlade ? FusePattern.LargeBlade : FusePattern.Blade;

    /// <summary>The opening time at a multiple of the rating.</summary>
    /// <param name="pattern">The fuse's pattern.</param>
    /// <param name="multiple">The current as a multiple of the rating, above 0.</param>
    /// <returns><see langword="null"/> where it does not open.</returns>
    public static OpeningTime? At(FusePattern pattern, double multiple)
    {
        string name = pattern switch { FusePattern.Blade => "blade", FusePattern.LargeBlade => "large", FusePattern.Glass => "glass", _ => "breaker" };
        var least = Points(name + "-least");
        var most = Points(name + "-most");
        double opens = most[0].Times;
        if (multiple <= Carries) return null;
        // Between what it carries and where its standard first limits the time it may open, or not.
        if (multiple < opens) return new(Between(least, opens) ?? 0, null);
        return new(multiple > least[^1].Times ? 0 : Between(least, multiple) ?? 0, multiple <= most[^1].Times ? Between(most, multiple) : most[^1].Times < MostTimes ? Beyond(most[^1], multiple) : most[^1].Seconds);
    }

    // Beyond a last point that is low heat has less time to leave: I²·t is no more than it is there.
    private static double Beyond((double Times, double Seconds) last, double multiple) => Math.Max(last.Seconds * last.Times * last.Times / multiple / multiple, Math.Min(last.Seconds, LeastOfMost));

    // A straight line between the points in the logarithms of current and time.
    private static double? Between(ImmutableArray<(double Times, double Seconds)> points, double times)
    {
        int above = 0;
        while (above < points.Length && points[above].Times < times) above++;
        if (above == points.Length) return null;
        if (points[above].Times == times) return points[above].Seconds;
        if (above == 0) return null;
        var (low, high) = (points[above - 1], points[above]);
        return low.Seconds * Math.Pow(high.Seconds / low.Seconds, Math.Log(times / low.Times) / Math.Log(high.Times / low.Times));
    }

    private static ImmutableArray<(double Times, double Seconds)> Points(string column) => columns.GetOrAdd(column, Read);

    private static ImmutableArray<(double Times, double Seconds)> Read(string column)
    {
        var table = DataTable.Named("opening-times");
        return [.. table.Rows.Select(r => (DataTable.FigureOf(r[0])!.Value, table.Figure(r, column))).Where(p => p.Item2 is not null).Select(p => (p.Item1, p.Item2!.Value))];
    }
}
