using System.Text.RegularExpressions;
using Hotside.Circuits;
using Hotside.Notation;

namespace Hotside.Reading;

/// <summary>Reads what is said of a wire behind its ends: length, resistance, size and colour, flags, name.</summary>
internal static partial class WireReader
{
    /// <summary>The wire and the reason that its items state.</summary>
    /// <param name="items">The items.</param>
    /// <param name="ends">Its ends as the line has them; <see langword="null"/> where the line says nothing of them.</param>
    /// <param name="context">What is known and where problems go.</param>
    public static (Wire Wire, string? Reason) Read(IEnumerable<LineItem> items, (End From, End To)? ends, ReadingContext context)
    {
        var wire = new Wire();
        string? reason = null;
        foreach (var item in items)
        {
            if (item.IsReason) reason = item.Text;
            else if (JointReader.IsJoint(item)) wire = JointReader.Read(wire, item, ends, context);
            else wire = Take(wire, item, context);
        }
        return (wire, reason);
    }

    private static Wire Take(Wire wire, LineItem item, ReadingContext context)
    {
        if (item.IsQuoted) return Name(wire, item, context);
        if (SizeAndColour(wire, item, context) is { } sized) return sized;
        if (QuantityReader.Read(item.Text, out string? problem) is { } quantity) return Measure(wire, quantity, item, context);
        if (problem is not null)
        {
            context.Report(ReadingProblems.BadQuantity.At(item.Span, item.Text, problem) with { Hint = "a name that begins with a digit stands in quotes" });
            return wire;
        }
        string[] words = item.Words;
        string rest = words.Length > 1 ? item.Text[(words[0].Length + 1)..] : "";
        return (words[0], rest) switch
        {
            ("spare", "") => wire with { Role = WireRole.Spare },
            ("lead", "") => wire with { Role = WireRole.Lead },
            ("shield", "") => wire with { Role = WireRole.Shield },
            ("good", "") => wire with { Condition = WireCondition.Good },
            ("brittle", "") => wire with { Condition = WireCondition.Brittle },
            ("burnt", "") => wire with { Condition = WireCondition.Burnt },
            ("spliced", "") => wire with { Condition = WireCondition.Spliced },
            ("loom", not "") => wire with { Loom = rest },
            ("insulation", not "") => wire with { Insulation = rest },
            ("at", not "") => wire with { Place = rest },
            _ => wire.Colour is null && WireColour.Meant(item.Text) is { } colour ? NoColour(wire, item, colour, context) : Name(wire, item, context),
        };
    }

    private static Wire NoColour(Wire wire, LineItem item, string meant, ReadingContext context)
    {
        context.Report(ReadingProblems.BadColour.At(item.Span, item.Text) with { Hint = $"did you mean \"{meant}\"? a name stands in quotes" });
        return wire;
    }

    private static Wire Name(Wire wire, LineItem item, ReadingContext context)
    {
        if (wire.Name is null && (item.IsQuoted || !char.IsAsciiDigit(item.Text[0]))) return wire with { Name = item.Text };
        context.Report(wire.Name is null
            ? ReadingProblems.DigitName.At(item.Span, item.Text) with
            {
                Hint = Numbers.TryRead(item.Text, out _) ? $"write \"{item.Text} m\" or \"{item.Text} ft\" if it is the length; a size has its colour behind it, as in \"14 BK\"" : "a size is \"14 BK\", a length \"0.6 m\"; a name that begins with a digit stands in quotes",
            }
            : ReadingProblems.TwoNames.At(item.Span, wire.Name, item.Text) with { Hint = "a name with a comma stands in quotes" });
        return wire;
    }

    private static Wire Measure(Wire wire, StatedValue quantity, LineItem item, ReadingContext context)
    {
        if (quantity.Unit == Unit.Celsius && quantity.Value is < Wire.LeastCelsius or > Wire.MostCelsius)
            context.Report(ReadingProblems.BadQuantity.At(item.Span, item.Text, "a temperature is from -60 to 250 °C") with { Hint = "leave out what is not measured" });
        else if ((quantity.Value <= 0 && quantity.Unit is Unit.Metre or Unit.SquareMillimetre) || (quantity.Value < 0 && quantity.Unit != Unit.Celsius))
            context.Report(ReadingProblems.NotPositive.At(item.Span, item.Text) with { Hint = "leave out what is not measured" });
        else if (quantity.Unit == Unit.Metre && wire.LengthInMetres is null) return wire with { LengthInMetres = quantity.Value };
        else if (quantity.Unit == Unit.Ohm && wire.ResistanceInOhms is null) return wire with { ResistanceInOhms = quantity.Value };
        else if (quantity.Unit == Unit.Celsius && wire.TemperatureInCelsius is null) return wire with { TemperatureInCelsius = quantity.Value };
        else if (quantity.Unit is Unit.Metre or Unit.Ohm or Unit.Celsius)
            context.Report(ReadingProblems.GivenTwice.At(item.Span, quantity.Unit switch { Unit.Metre => "length", Unit.Ohm => "resistance", _ => "temperature" }) with { Hint = "give it once" });
        else context.Report(ReadingProblems.NoSuchRating.At(item.Span, "a wire", QuantityText.Symbol(quantity.Unit)) with { Hint = "a wire has a length, a resistance, a size, a temperature" });
        return wire;
    }

    // "14 BK", "1/0 braid", "14 AWG black", "2.5 mm² BN/WH", "14 AWG", "BK".
    private static Wire? SizeAndColour(Wire wire, LineItem item, ReadingContext context)
    {
        var match = SizeShape().Match(item.Text);
        string number = match.Groups["size"].Value, unit = match.Groups["unit"].Value, word = match.Groups["colour"].Value;
        if (item.Text == "braid" && wire is { Colour: null, IsBraid: false }) return wire with { IsBraid = true };
        if (!match.Success) return WireColour.TryParse(item.Text, out var alone) && wire.Colour is null ? wire with { Colour = alone } : null;
        // A number and a word may be a length ("2 m") or a resistance: those come first.
        if (unit.Length == 0 && QuantityReader.Read(item.Text, out _) is { Unit: Unit.Metre or Unit.Ohm }) return null;
        if (unit.Length == 0 && word.Length == 0) return null;
        bool braid = word == "braid", coloured = WireColour.TryParse(word, out var colour);
        if (word.Length > 0 && !braid && !coloured)
        {
            if (unit.Length == 0 && QuantityReader.Read(item.Text, out string? problem) is null && problem is not null) return null;
            context.Report(ReadingProblems.BadColour.At(item.Span, word) with { Hint = ColourHint(word) });
            return wire;
        }
        if (wire.Size is not null || wire.Colour is not null)
        {
            context.Report(ReadingProblems.GivenTwice.At(item.Span, "size or colour") with { Hint = "give it once" });
            return wire;
        }
        return wire with { Size = Size(number, unit, item, context), Colour = coloured ? colour : null, IsBraid = braid };
    }

    private static WireSize? Size(string number, string unit, LineItem item, ReadingContext context)
    {
        bool metric = unit is "mm²" or "mm2" or "sq mm" || (unit.Length == 0 && context.SizesIn == Unit.SquareMillimetre);
        if (unit.Length == 0 && context.SizesIn is null)
            context.Report(ReadingProblems.SizeUnit.At(item.Span, number) with { Hint = "write \"14 AWG BK\" or \"2.5 mm² BK\", or add \"sizes in AWG\" to the system line" });
        else if (metric && Numbers.TryRead(number, out double area) && area is > 0 and <= 1000) return WireSize.SquareMillimetres(area);
        else if (!metric && QuantityReader.GaugeNumber(number) is { } gauge) return WireSize.Awg(gauge);
        else context.Report(ReadingProblems.BadQuantity.At(item.Span, item.Text, metric ? "a size in mm² is a number above 0 and at most 1000" : "gauges run from 4/0 to 40") with { Hint = OtherUnit(number, metric) });
        return null;
    }

    private static string OtherUnit(string number, bool metric) =>
        metric && QuantityReader.GaugeNumber(number) is not null ? $"write \"{number} AWG\" if it is a gauge"
        : !metric && Numbers.TryRead(number, out _) && number.Contains('.', StringComparison.Ordinal) ? $"write \"{number} mm²\" if it is square millimetres" : "a size is \"14 AWG\" or \"2.5 mm²\"";

    private static string ColourHint(string word)
    {
        string codes = "codes of IEC 60757: " + string.Join(", ", WireColour.Codes) + "; with a tracer RD/WH; or braid";
        return WireColour.Meant(word) is { } meant ? $"did you mean \"{meant}\"?" : codes;
    }

    [GeneratedRegex(@"^(?<size>\d[\d.]*(?:/0)?) ?(?<unit>AWG|mm²|mm2|sq mm)?(?: (?<colour>[A-Za-z][A-Za-z/-]*))?$")]
    private static partial Regex SizeShape();
}
