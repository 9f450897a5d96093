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

    /// <summary>A number with so many decimals, zeros at its end too, as a column has it.</summary>
    public static string Fixed(double value, int decimals)
    {
        double rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0 : rounded).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
    }

    /// <summary>A number with about three figures: <c>147</c>, <c>24.1</c>, <c>7.83</c>, <c>0.150</c>, <c>0</c>; never more than three decimals.</summary>
    public static string ThreeFigures(double value) => Math.Abs(value) < 0.0005 ? "0" : Fixed(value, Math.Abs(value) switch { >= 99.95 => 0, >= 9.995 => 1, >= 0.9995 => 2, _ => 3 });

    /// <summary>A number with three figures at most and no zeros at its end: <c>147</c>, <c>24.1</c>, <c>9.6</c>, <c>0.15</c>; never more than two decimals.</summary>
    public static string Brief(double value) => Plain(value, Math.Abs(value) switch { >= 100 => 0, >= 10 => 1, _ => 2 });

    /// <summary>A whole number.</summary>
    public static string Whole(int value) => value.ToString(CultureInfo.InvariantCulture);

    /// <summary>Reads a decimal number written with digits, at most one point and perhaps a leading minus; nothing else is a number.</summary>
    public static bool TryRead(ReadOnlySpan<char> text, out double value) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out value);
}
