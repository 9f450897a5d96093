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

    public static string Volts(double value) => (value < 0 ? "\u2212" : "+") + Numbers.Plain(Math.Abs(value), 2) + " V";

    /// <summary>Amperes as a reader wants them: three figures are enough.</summary>
    public static string Amperes(double value) => Numbers.Plain(value, value < 1 ? 3 : value < 10 ? 2 : 1) + " A";
}
