using System.Globalization;

namespace Hotside.Circuits;

/// <summary>The one place that turns numbers into text: invariant in every culture.</summary>
internal static class Numbers
{
    /// <summary>A number as a person would write it: at most <paramref name="decimals"/> decimals, no trailing zeros, a plain hyphen as minus.</summary>
    public static string Plain(double value, int decimals = 6)
    {
        double rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0 : rounded).ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture);
    }

    /// <summary>A number with a fixed count of decimals, a plain hyphen as minus.</summary>
    public static string Fixed(double value, int decimals)
    {
        double rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0 : rounded).ToString("F" + Whole(decimals), CultureInfo.InvariantCulture);
    }

    /// <summary>A whole number.</summary>
    public static string Whole(int value) => value.ToString(CultureInfo.InvariantCulture);

    /// <summary>Reads a decimal number written with digits, at most one point and perhaps a leading minus; nothing else is a number.</summary>
    public static bool TryRead(ReadOnlySpan<char> text, out double value) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out value);
}
