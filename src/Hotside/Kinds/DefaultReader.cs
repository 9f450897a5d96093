using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Notation;

namespace Hotside.Kinds;

/// <summary>Reads what a rating commonly is: <c>coil A: 0.14 A at 12 V, from a maker's data sheet</c>.</summary>
internal static class DefaultReader
{
    private const string Source = ", from ", Place = " at ";

    /// <summary>The kind with the defaults on its ratings.</summary>
    public static PartKind With(PartKind kind, IReadOnlyList<(YamlText Key, YamlText Value)> lines, List<Diagnostic> problems)
    {
        foreach (var (name, line) in lines)
        {
            if (kind.Ratings.FirstOrDefault(r => r.Name == name.Value) is not { } rule)
                problems.Add(KindProblems.UnknownRating.At(name.Span, name.Value) with { Hint = Names.Meant(name.Value, kind.Ratings.Select(r => r.Name)) });
            else if (Read(line.Value) is not { } stated || stated.Quantity.Unit != rule.Unit)
                problems.Add(KindProblems.BadDefault.At(line.Span, line.Value) with { Hint = $"such as \"8 {QuantityText.Symbol(rule.Unit)} at 6 V, from common practice, no source\"" });
            else
                kind = kind with { Ratings = kind.Ratings.Replace(rule, rule with { Default = stated }) };
        }
        return kind;
    }

    private static RatingDefault? Read(string text)
    {
        int from = text.IndexOf(Source, StringComparison.Ordinal);
        if (from < 0 || text[(from + Source.Length)..].Trim() is not { Length: > 0 } source) return null;
        string[] parts = text[..from].Split(Place);
        var quantity = QuantityReader.Read(parts[0], out _);
        var at = parts.Length == 2 ? QuantityReader.Read(parts[1], out _) : null;
        return quantity is null || parts.Length > 2 || (parts.Length == 2 && at is null) ? null : new(quantity, source) { At = at };
    }
}
