using System.Collections.Immutable;
using Hotside.Diagnostics;

namespace Hotside.Notation;

/// <summary>The one grammar of a line: pieces between commas; quotes and <c>because</c> keep commas.</summary>
internal static class LineItems
{
    public static readonly DiagnosticKind EmptyItem = new("HS1020", Severity.Error, "Nothing between commas", "there is nothing between two commas, or behind the last one");
    public static readonly DiagnosticKind DecimalComma = new("HS1017", Severity.Error, "Decimal comma", "\"{0}\" has a decimal comma, and a comma ends a piece");
    public static readonly DiagnosticKind OpenQuote = new("HS1018", Severity.Error, "Quote not closed", "the quote that begins here is not closed");
    public static readonly DiagnosticKind BehindQuote = new("HS1019", Severity.Error, "Text behind a quote", "\"{0}\" stands behind a name in quotes without a comma");

    private const string Because = "because ";

    // Words before a text that may hold commas when it is in quotes.
    private static readonly string[] BeforeQuotes = ["at ", "loom ", "insulation "];

    public static ImmutableArray<LineItem> Split(YamlText line, List<Diagnostic> problems) => Split(line, 0, problems);

    /// <summary>The pieces of a line from a character on.</summary>
    public static ImmutableArray<LineItem> Split(YamlText line, int from, List<Diagnostic> problems)
    {
        var items = ImmutableArray.CreateBuilder<LineItem>();
        string text = line.Value;
        if (text.AsSpan(from).Trim().IsEmpty) return [];
        for (int start = from; start <= text.Length;)
        {
            int first = start;
            while (first < text.Length && text[first] is ' ' or '\n') first++;
            if (text.AsSpan(first).StartsWith(Because, StringComparison.Ordinal))
            {
                items.Add(new(text[(first + Because.Length)..].Trim(), line.Part(first, text.Length - first)) { IsReason = true });
                break;
            }
            string word = BeforeQuotes.FirstOrDefault(w => IsQuote(text, first + w.Length) && text.AsSpan(first).StartsWith(w, StringComparison.Ordinal)) ?? "";
            start = 1 + (IsQuote(text, first + word.Length) ? Quoted(line, first, word, items, problems) : Plain(line, from, first, items, problems));
        }
        return items.ToImmutable();
    }

    private static int Plain(YamlText line, int from, int first, ImmutableArray<LineItem>.Builder items, List<Diagnostic> problems)
    {
        string text = line.Value;
        int end = Comma(text, first);
        if (IsDecimal(text, first, end))
        {
            end = Comma(text, end + 1);
            string number = text[first..end].TrimEnd();
            problems.Add(DecimalComma.At(line.Part(first, number.Length), number) with { Hint = $"write \"{number.Replace(',', '.')}\"" });
            return end;
        }
        string piece = text[first..end].TrimEnd();
        if (piece.Length == 0) problems.Add(EmptyItem.At(line.Part(Math.Max(from, Math.Min(first, text.Length - 1)), 1)) with { Hint = "take the comma out" });
        else items.Add(new(string.Join(' ', piece.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries)), line.Part(first, piece.Length)));
        return end;
    }

    // A comma ends a piece, unless the piece begins with a quote that is still open; a quote within quotes is doubled.
    private static int Quoted(YamlText line, int first, string word, ImmutableArray<LineItem>.Builder items, List<Diagnostic> problems)
    {
        int begin = first;
        first += word.Length;
        string text = line.Value, quote = text[first].ToString();
        int close = text.IndexOf(text[first], first + 1);
        while (close >= 0 && close + 1 < text.Length && text[close + 1] == text[first]) close = text.IndexOf(text[first], close + 2);
        if (close < 0)
        {
            problems.Add(OpenQuote.At(line.Part(first, 1)) with { Hint = $"put a {quote} behind the name" });
            return text.Length;
        }
        string name = text[(first + 1)..close].Replace(quote + quote, quote, StringComparison.Ordinal).Trim();
        if (name.Length == 0) problems.Add(EmptyItem.At(line.Part(first, close + 1 - first)) with { Hint = "take the quotes out" });
        else items.Add(new(word + name, line.Part(begin, close + 1 - begin)) { IsQuoted = word.Length == 0 });
        int end = Comma(text, close + 1);
        string behind = text[(close + 1)..end].Trim();
        if (behind.Length > 0)
            problems.Add(BehindQuote.At(line.Part(text.IndexOf(behind, close + 1, StringComparison.Ordinal), behind.Length), behind) with { Hint = "put a comma before it, or the whole name in quotes" });
        return end;
    }

    private static bool IsQuote(string text, int at) => at < text.Length && text[at] is '\'' or '"';

    private static int Comma(string text, int from) => text.IndexOf(',', Math.Min(from, text.Length)) is >= 0 and var comma ? comma : text.Length;

    // "6,5 V": digits on both sides of the comma, and a quantity if it were a point.
    private static bool IsDecimal(string text, int first, int comma)
    {
        if (comma <= first || comma + 1 >= text.Length || !char.IsAsciiDigit(text[comma - 1]) || !char.IsAsciiDigit(text[comma + 1])) return false;
        string whole = text[first..comma] + "." + text[(comma + 1)..Comma(text, comma + 1)].TrimEnd();
        int number = comma - first;
        while (number > 0 && (char.IsAsciiDigit(whole[number - 1]) || whole[number - 1] is '.' or '/')) number--;
        return (number == 0 || whole[number - 1] == ' ') && QuantityReader.Read(whole[number..], out _) is not null;
    }
}
