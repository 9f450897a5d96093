namespace Hotside.Solving.Networks;

/// <summary>How far to go along a step: to where the slope of the network's convex function has all but vanished.</summary>
internal static class LineSearch
{
    // A step is good when it leaves a tenth of the slope.
    private const double Enough = 0.1;

    private const int MostDoublings = 60, MostHalvings = 100;

    /// <summary>Whether a step may end where the slope is this.</summary>
    public static bool IsEnough(double atEnd, double atStart) => !(atStart < 0) || Math.Abs(atEnd) <= -Enough * atStart;

    /// <summary>The length of the step, where 1 is Newton's own.</summary>
    /// <param name="slope">The function's slope along the step, which rises.</param>
    /// <param name="atStart">The slope where the step begins, below 0.</param>
    public static double Along(Func<double, double> slope, double atStart)
    {
        double enough = -Enough * atStart, low = 0, atLow = atStart, high = 1, atHigh = slope(1);
        if (IsEnough(atHigh, atStart)) return 1;
        for (int i = 0; i < MostDoublings && atHigh < 0; i++)
        {
            (low, atLow) = (high, atHigh);
            high *= 2;
            atHigh = slope(high);
            if (Math.Abs(atHigh) <= enough) return high;
        }
        for (int i = 0; i < MostHalvings; i++)
        {
            double there = i % 3 == 2 ? (low + high) / 2 : low + ((high - low) * (atLow / (atLow - atHigh)));
            double at = slope(there);
            if (Math.Abs(at) <= enough) return there;
            if (at < 0) (low, atLow) = (there, at);
            else (high, atHigh) = (there, at);
        }
        return (low + high) / 2;
    }
}
