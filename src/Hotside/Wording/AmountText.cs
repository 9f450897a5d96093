using Hotside.Circuits;

namespace Hotside.Wording;

/// <summary>Quantities as a sheet has them: true minus, middle dot, Ω and mm².</summary>
internal static class AmountText
{
    /// <summary>A stated quantity: <c>45/35 W</c>, <c>0–90 Ω</c>, <c>2 × 21 W</c>, <c>0.4 mΩ</c>.</summary>
    public static string Of(Quantity quantity)
    {
        bool isSmall = quantity.Unit == Unit.Ohm && quantity.Values.Append(quantity.UpTo ?? 0).All(v => v < 0.1)
            && quantity.Values.Any(v => v > 0);
        double scale = isSmall ? 1000 : 1;
        string Number(double value) => quantity.Unit == Unit.Awg ? QuantityText.Gauge((int)value) : Minus(Numbers.Plain(value * scale));
        string count = quantity.Count > 1 ? Numbers.Whole(quantity.Count) + " × " : "";
        string values = string.Join('/', quantity.Values.Select(Number));
        string range = quantity.UpTo is { } upper ? "–" + Number(upper) : "";
        string unit = quantity.Unit == Unit.Ohm ? isSmall ? "mΩ" : "Ω" : QuantityText.Symbol(quantity.Unit);
        return count + values + range + " " + unit;
    }

    /// <summary>A current to the two or three figures that matter: <c>0.15 A</c>, <c>8.0 A</c>, <c>180 A</c>.</summary>
    public static string Amperes(double amperes) => Math.Abs(amperes) switch
    {
        < 0.0995 => Minus(Numbers.Fixed(amperes * 1000, 0)) + " mA",
        < 0.995 => Minus(Numbers.Fixed(amperes, 2)) + " A",
        < 9.95 => Minus(Numbers.Fixed(amperes, 1)) + " A",
        _ => Minus(Numbers.Fixed(amperes, 0)) + " A",
    };

    /// <summary>A potential against the return with its sign: <c>+12 V</c>, <c>−6 V</c>.</summary>
    public static string Potential(double volts) => (volts > 0 ? "+" : "") + Minus(Numbers.Plain(volts, 2)) + " V";

    /// <summary>A length: <c>0.4 m</c>.</summary>
    public static string Metres(double metres) => Numbers.Plain(metres, 2) + " m";

    private static string Minus(string number) => number.Replace('-', '−');
}
