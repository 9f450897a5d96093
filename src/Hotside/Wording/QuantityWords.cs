using Hotside.Circuits;

namespace Hotside.Wording;

/// <summary>Quantities as a sheet prints them: true signs for ohm, minus and multiplication.</summary>
internal static class QuantityWords
{
    public static string Of(StatedValue quantity)
    {
        string text = quantity.ToString().Replace("ohm", "Ω", StringComparison.Ordinal).Replace("..", " to ", StringComparison.Ordinal);
        return quantity.Count > 1 ? text.Replace("x", " × ", StringComparison.Ordinal) : text;
    }

    /// <summary>A rating with the word that tells it from the main one: <c>coil 0.15 A</c>.</summary>
    public static string Of(Rating rating)
    {
        int space = rating.Name.LastIndexOf(' ');
        return (space < 0 ? "" : rating.Name[..space] + " ") + Of(rating.Quantity);
    }

    /// <summary>The ratings of a part, the main ones first; a word that several share stands once: <c>12 V</c>, <c>out 6 V, 1.5 A</c>.</summary>
    public static IEnumerable<string> Of(IEnumerable<Rating> ratings) =>
        ratings.GroupBy(Prefix).OrderBy(g => g.Key.Length > 0).SelectMany(g => g.Key.Length == 0 ? g.Select(Of) : [$"{g.Key} {string.Join(", ", g.Select(r => Of(r.Quantity)))}"]);

    private static string Prefix(Rating rating) => rating.Name.LastIndexOf(' ') is > 0 and var space ? rating.Name[..space] : "";

    public static string Volts(double value) => (value < 0 ? "\u2212" : "+") + Numbers.Plain(Math.Abs(value), 2) + " V";

    /// <summary>Volts that are worked out, as a meter of two decimals shows them: <c>−5.60 V</c>.</summary>
    public static string MeterVolts(double value) => Math.Abs(value) < 0.005 ? "0.00 V" : (value < 0 ? "\u2212" : "+") + Numbers.Fixed(Math.Abs(value), 2) + " V";

    /// <summary>Amperes that are worked out, to two figures, since ratings are no better; whole amperes from 10 up.</summary>
    public static string Amperes(double value) => Numbers.Plain(value, value < 0.1 ? 3 : value < 1 ? 2 : value < 10 ? 1 : 0) + " A";

    /// <summary>Amperes that the owner states, to three figures.</summary>
    public static string StatedAmperes(double value) => Numbers.Plain(value, value < 1 ? 3 : value < 10 ? 2 : 1) + " A";
}
