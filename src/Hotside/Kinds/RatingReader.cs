using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Notation;

namespace Hotside.Kinds;

/// <summary>Reads a rating: <c>coil A: coil</c>, <c>V: pull-in + hold-in</c> (the same for each), <c>W: high, low</c> (a value for each).</summary>
internal static class RatingReader
{
    public static RatingRule? Read(YamlText name, YamlText line, PartKind kind, List<Diagnostic> problems)
    {
        string unit = name.Value[(name.Value.LastIndexOf(' ') + 1)..];
        if (QuantityReader.Read("1 " + unit, out _) is not { } sample)
        {
            problems.Add(KindProblems.BadRating.At(name.Span, name.Value) with { Hint = Names.Meant(unit, QuantityReader.Spellings.Where(s => s.Length < 4)) });
            return null;
        }
        bool same = line.Value.Contains(" + ", StringComparison.Ordinal);
        string[] elements = line.Value.Split(same ? " + " : ",", StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        foreach (string element in elements.Where(e => kind.ElementNamed(e) is null))
            problems.Add(KindProblems.UnknownElement.At(line.Span, element) with { Hint = Names.Meant(element, kind.Elements.Select(e => e.Name)) });
        return new(name.Value, sample.Unit, [.. elements], IsOneEach: !same && elements.Length > 1);
    }
}
