namespace Hotside.Circuits;

/// <summary>Writes stated values and wire sizes as a job file has them.</summary>
internal static class QuantityText
{
    public static string Of(StatedValue quantity, int decimals = 6)
    {
        string count = quantity.Count > 1 ? Numbers.Whole(quantity.Count) + "x" : "";
        string values = string.Join('/', quantity.Values.Select(v => Value(v, quantity.Unit, decimals)));
        string range = quantity.UpTo is { } upper ? ".." + Value(upper, quantity.Unit, decimals) : "";
        return count + values + range + " " + Symbol(quantity.Unit);
    }

    /// <summary>A gauge as it is spoken: 2, 1/0, 2/0.</summary>
    public static string Gauge(int awg) => awg > 0 ? Numbers.Whole(awg) : Numbers.Whole(1 - awg) + "/0";

    public static string Symbol(Unit unit) => unit switch
    {
        Unit.Volt => "V",
        Unit.Ampere => "A",
        Unit.Watt => "W",
        Unit.Ohm => "ohm",
        Unit.AmpereHour => "Ah",
        Unit.Metre => "m",
        Unit.Awg => "AWG",
        Unit.SquareMillimetre => "mm²",
        Unit.Ways => "ways",
        Unit.Celsius => "°C",
        Unit.Percent => "%",
        Unit.TurnsPerMinute => "rpm",
        _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "There is no such unit."),
    };

    private static string Value(double value, Unit unit, int decimals) => unit == Unit.Awg ? Gauge((int)value) : Numbers.Plain(value, decimals);
}
