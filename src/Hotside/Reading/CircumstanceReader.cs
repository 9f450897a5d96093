using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Notation;

namespace Hotside.Reading;

/// <summary>
/// Reads what a setting says beside positions and senders: <c>charge 60 %</c>, <c>G1 60 %</c>, <c>wires 60 °C</c>, <c>engine bay 80 °C</c>, <c>windings 85 °C</c>, <c>w7 60 °C</c>,
/// <c>engine idle</c>, <c>engine 700 rpm</c>, <c>G2 1500 rpm</c>.
/// </summary>
internal static class CircumstanceReader
{
    /// <summary>The value that an item gives; <see langword="null"/> when it gives none of these.</summary>
    public static SetValue? Read(LineItem item, IEnumerable<Part> parts)
    {
        string[] words = item.Words;
        if (words.Length < 2) return null;
        string last = words[^1], before = string.Join(' ', words[..^1]);
        if (last is "idle" or "cruise" && before == Element.Engine && SetValue.EngineOf(parts) is { } machine && !machine.Positions.Contains(last))
            return new(before, new(last == "idle" ? EngineSpeeds.Idle : EngineSpeeds.Cruise, Unit.TurnsPerMinute));
        for (int first = 1; first < words.Length; first++)
            if (QuantityReader.Read(string.Join(' ', words[first..]), out _) is { Unit: Unit.Celsius or Unit.Percent or Unit.TurnsPerMinute } quantity)
                return new(first > 1 && words[first - 1] == SetValue.Charge ? string.Join(' ', words[..(first - 1)]) : string.Join(' ', words[..first]), quantity);
        return null;
    }

    /// <summary>What is wrong with a value for a circuit; <see langword="null"/> where nothing is.</summary>
    public static Diagnostic? Problem(SetValue value, LineItem item, IReadOnlyCollection<Part> parts, ImmutableArray<Conductor> conductors)
    {
        var quantity = value.Quantity;
        if (quantity is not { UpTo: null, Values.Length: 1, Count: 1 }) return ReadingProblems.BadQuantity.At(item.Span, item.Text, "one value is enough") with { Hint = "for another value write another setting" };
        if (value.OutOfRange() is { } range) return ReadingProblems.BadQuantity.At(item.Span, item.Text, range) with { Hint = "leave out what is not known" };
        return value.IsTaken(parts, conductors) ? null : ReadingProblems.NoSender.At(item.Span, value.Part, QuantityText.Symbol(quantity.Unit)) with
        {
            Hint = quantity.Unit switch
            {
                Unit.Percent => "a charge is of a battery, or of all: \"G1 charge 60 %\", \"charge 60 %\"",
                Unit.Celsius => "a temperature is of a wire, of \"wires\", \"engine bay\" or \"windings\": \"w7 60 °C\", \"wires 60 °C\"",
                _ => "a speed is of a generator or alternator, or of what drives it: \"G2 1500 rpm\", \"engine 700 rpm\", \"engine idle\"",
            },
        };
    }
}
