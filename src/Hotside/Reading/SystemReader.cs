using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Notation;

namespace Hotside.Reading;

/// <summary>Reads the system line: <c>6 V, positive ground, sizes in AWG, insulation GPT</c>.</summary>
internal static class SystemReader
{
    private static readonly string[] Grounds = ["positive", "negative", "isolated"];

    /// <summary>The system; what an alteration's line leaves out carries over from <paramref name="before"/>.</summary>
    public static ElectricalSystem? Read(YamlNode node, ElectricalSystem? before, ReadingContext context)
    {
        var volts = ImmutableArray.CreateBuilder<double>();
        Ground? ground = null;
        End? node2 = null;
        Unit? sizes = before?.SizesIn;
        string? insulation = before?.Insulation;
        bool isUnderstood = true;
        foreach (var item in Items(node, context))
        {
            string[] words = item.Words;
            if (words is ["sizes", "in", var unit]) sizes = SizesIn(unit, item, context) ?? sizes;
            else if (words is ["insulation", .. var kind] && kind.Length > 0) insulation = string.Join(' ', kind);
            else if (words is ["return", var end]) node2 = EndReader.Read(end, item.Span, context);
            else if (words is [var pole, "ground" or "earth"] && Grounds.Contains(pole)) ground = Enum.Parse<Ground>(pole, ignoreCase: true);
            else if (Volts(item.Text) is { } read) volts.AddRange(read);
            else
            {
                isUnderstood = false;
                context.Report(ReadingProblems.BadSystem.At(item.Span, item.Text) with { Hint = Meant(item.Text) });
            }
        }
        // Sizes without a unit mean the same throughout a file.
        if (before is null) context.SizesIn = sizes;
        // What could not be understood may be what is missing.
        if (volts.Count == 0 && isUnderstood) context.Report(ReadingProblems.SystemIncomplete.At(node.Span, "its volts, such as \"6 V\""));
        if (ground is null && isUnderstood) context.Report(ReadingProblems.SystemIncomplete.At(node.Span, "its ground: positive ground, negative ground or isolated ground"));
        if (ground == Ground.Isolated && node2 is null && before?.Return is null)
            context.Report(ReadingProblems.SystemIncomplete.At(node.Span, "which node is the return of an isolated system, such as \"return X2\""));
        if (volts.Count == 0 || ground is not { } said) return null;
        return new([.. volts.OrderDescending()], said)
        {
            Return = said == Ground.Isolated ? node2 ?? before?.Return : null,
            SizesIn = sizes,
            Insulation = insulation,
        };
    }

    private static string Meant(string text)
    {
        string[] known = [.. Grounds.Select(g => g + " ground"), "sizes in AWG", "sizes in mm²"];
        return NearestName.Of(text, known) is { } near ? $"did you mean \"{near}\"?" : "write for example \"6 V, positive ground, sizes in AWG\"";
    }

    private static IEnumerable<LineItem> Items(YamlNode node, ReadingContext context) => node switch
    {
        YamlText text => LineItems.Split(text, context.Problems),
        YamlMap map => map.Entries.SelectMany(e => e.Value is YamlText value ? [MapItem(e.Key, value)] : Array.Empty<LineItem>()),
        _ => [],
    };

    private static LineItem MapItem(YamlText key, YamlText value) => new(
        key.Value switch
        {
            "voltage" => value.Value,
            "ground" => value.Value + " ground",
            "sizes" => "sizes in " + value.Value,
            _ => key.Value + " " + value.Value,
        },
        value.Span);

    private static IEnumerable<double>? Volts(string text)
    {
        var read = text.Split(" and ").Select(t => QuantityReader.Read(t, out _)).ToArray();
        return read.All(q => q is { Unit: Unit.Volt, Value: > 0 }) ? read.Select(q => q!.Value) : null;
    }

    private static Unit? SizesIn(string unit, LineItem item, ReadingContext context)
    {
        if (unit == "AWG") return Unit.Awg;
        if (unit is "mm²" or "mm2") return Unit.SquareMillimetre;
        context.Report(ReadingProblems.BadSystem.At(item.Span, item.Text) with { Hint = "sizes are in AWG or in mm²" });
        return null;
    }
}
