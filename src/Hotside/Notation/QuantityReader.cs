using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Hotside.Circuits;

namespace Hotside.Notation;

/// <summary>Reads <c>[Nx]number[/number…][..number] unit</c> in American and British spelling.</summary>
internal static partial class QuantityReader
{
    private const string Fahrenheit = "°F";

    // The zero of degrees Fahrenheit lies 32 of them below that of degrees Celsius.
    private const double FreezingFahrenheit = 32;

    // Unit spellings with the factor to the unit in which values are stored. Feet: 0.3048 m (international foot, 1959).
    private static readonly (string[] Spellings, Unit Unit, double Factor)[] Units =
    [
        (["V", "volt", "volts"], Unit.Volt, 1), (["mV", "millivolt", "millivolts"], Unit.Volt, 1e-3),
        (["A", "amp", "amps", "ampere", "amperes"], Unit.Ampere, 1), (["mA", "milliamp", "milliamps"], Unit.Ampere, 1e-3),
        (["W", "watt", "watts"], Unit.Watt, 1), (["kW"], Unit.Watt, 1e3), (["mW"], Unit.Watt, 1e-3),
        (["ohm", "ohms", "Ω", "\u2126"], Unit.Ohm, 1), (["mohm", "mohms", "mΩ", "m\u2126"], Unit.Ohm, 1e-3), (["kohm", "kohms", "kΩ", "k\u2126"], Unit.Ohm, 1e3), (["Mohm", "MΩ", "M\u2126"], Unit.Ohm, 1e6),
        (["Ah", "amp-hour", "amp-hours", "ampere-hour", "ampere-hours"], Unit.AmpereHour, 1),
        (["m", "metre", "metres", "meter", "meters"], Unit.Metre, 1), (["cm", "centimetres", "centimeters"], Unit.Metre, 0.01), (["mm", "millimetres", "millimeters"], Unit.Metre, 0.001),
        (["ft", "foot", "feet"], Unit.Metre, 0.3048), (["in", "inch", "inches"], Unit.Metre, 0.0254),
        (["AWG", "gauge"], Unit.Awg, 1), (["mm²", "mm2", "sqmm", "sq mm", "square millimetres", "square millimeters"], Unit.SquareMillimetre, 1),
        (["ways", "way"], Unit.Ways, 1),
        (["°C", "degC", "deg C"], Unit.Celsius, 1), ([Fahrenheit, "degF", "deg F"], Unit.Celsius, 1 / 1.8),
        (["%", "percent", "per cent"], Unit.Percent, 1), (["rpm", "/min", "1/min"], Unit.TurnsPerMinute, 1),
    ];

    /// <summary>The unit spellings, for a hint.</summary>
    public static IEnumerable<string> Spellings => Units.SelectMany(u => u.Spellings);

    /// <summary>Reads a quantity; <see langword="null"/> when the text is none. A text that only looks like one is explained in <paramref name="problem"/>.</summary>
    public static StatedValue? Read(string text, out string? problem)
    {
        problem = null;
        var match = Shape().Match(text.StartsWith('.') ? "0" + text : text);
        if (!match.Success) return null;
        string unit = match.Groups["unit"].Value;
        // Symbols differ by their capitals (mohm, Mohm); words do not, and begin a line in capitals now and then.
        var known = Units.FirstOrDefault(u => u.Spellings.Contains(unit, StringComparer.Ordinal));
        if (known.Spellings is null && unit.Length > 2 && unit[1..].All(char.IsAsciiLetterLower))
            known = Units.FirstOrDefault(u => u.Spellings.Contains(char.ToLowerInvariant(unit[0]) + unit[1..], StringComparer.Ordinal));
        if (known.Spellings is null)
        {
            if (unit.StartsWith("to ", StringComparison.Ordinal) && Read(unit[3..], out _) is { UpTo: null, Count: 1 })
            {
                problem = $"a range is written with two points: \"{match.Groups["number"].Value}..{unit[3..].TrimStart()}\"";
                return null;
            }
            if (unit.Length == 0 || unit.Contains(' ', StringComparison.Ordinal)) return null;
            string? near = NearestUnit(unit);
            problem = near is null ? null : $"the unit \"{unit}\" is unknown; did you mean \"{near}\"?";
            return null;
        }
        string number = match.Groups["number"].Value;
        if (number.Contains(',', StringComparison.Ordinal))
        {
            problem = "decimals are written with a point";
            return null;
        }
        if (known.Unit == Unit.Awg) return Gauge(number, out problem);
        double Scaled(string figure) => (Value(figure) - (known.Spellings[0] == Fahrenheit ? FreezingFahrenheit : 0)) * known.Factor;
        double[] values = [.. number.Split('/').Select(Scaled)];
        double? upTo = match.Groups["upto"] is { Success: true } range ? Scaled(range.Value) : null;
        int count = match.Groups["count"].Success ? (int)Math.Min(1000, Value(match.Groups["count"].Value)) : 1;
        if (values.Concat(upTo is { } top ? [top] : []).Any(v => !double.IsFinite(v) || Math.Abs(v) > 1e9))
        {
            problem = "the number is too large";
            return null;
        }
        if (count == 0)
        {
            problem = "a count is 1 or more";
            return null;
        }
        return new([.. values], known.Unit) { UpTo = upTo, Count = count };
    }

    /// <summary>Reads a gauge without its unit: <c>14</c>, <c>1/0</c>.</summary>
    public static int? GaugeNumber(string text)
    {
        var match = GaugeShape().Match(text);
        if (!match.Success) return null;
        int number = (int)Value(match.Groups[1].Value);
        int gauge = match.Groups[2].Success ? 1 - number : number;
        return gauge is >= -3 and <= 40 && (!match.Groups[2].Success || number > 0) ? gauge : null;
    }

    private static StatedValue? Gauge(string number, out string? problem)
    {
        problem = null;
        if (GaugeNumber(number) is { } gauge) return new(gauge, Unit.Awg);
        problem = $"\"{number}\" is no gauge; the series runs from 4/0 to 40";
        return null;
    }

    private static double Value(string number) => Numbers.TryRead(number.Replace('\u2212', '-'), out double value) ? value : double.NaN;

    private static string? NearestUnit(string unit) =>
        Units.SelectMany(u => u.Spellings).FirstOrDefault(s => string.Equals(s, unit, StringComparison.OrdinalIgnoreCase))
        ?? (unit.Length > 2 ? NearestName.Of(unit, Spellings.Where(s => s.Length > 2)) : null);

    [GeneratedRegex(@"^(?:(?<count>\d{1,4}) ?[x×] ?)?(?<number>[-\u2212]?\d+(?:[.,]\d+)?(?:/\d+(?:\.\d+)?)*)(?:\.\.(?<upto>[-\u2212]?\d+(?:\.\d+)?))? ?(?<unit>[^\d\s].*)?$")]
    private static partial Regex Shape();

    [GeneratedRegex(@"^(\d{1,2})(/0)?$")]
    private static partial Regex GaugeShape();
}
