using System.Collections.Immutable;
using Hotside.Diagnostics;

namespace Hotside.Notation;

/// <summary>The one grammar of a line: pieces between commas; quotes and <c>because</c> keep commas.</summary>
internal static class LineItems
{
    public static readonly DiagnosticKind EmptyItem = new("HS1020", Severity.Error, "Nothing between commas", "there is nothing between two commas, or behind the last one");

    private const string Because = "because ";

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
            int end = EndOf(text, first);
            string piece = text[first..end].TrimEnd();
            if (piece.Length == 0) problems.Add(EmptyItem.At(line.Part(Math.Max(from, Math.Min(first, text.Length - 1)), 1)) with { Hint = "take the comma out" });
            else if (piece[0] is '\'' or '"' && piece.Length > 1 && piece[^1] == piece[0])
                items.Add(new(piece[1..^1].Replace(new string(piece[0], 2), piece[..1], StringComparison.Ordinal), line.Part(first, piece.Length)) { IsQuoted = true });
            else items.Add(new(string.Join(' ', piece.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries)), line.Part(first, piece.Length)));
            start = end + 1;
        }
        return items.ToImmutable();
    }

    // A comma ends a piece, unless the piece begins with a quote that is still open.
    private static int EndOf(string text, int first)
    {
        if (first < text.Length && text[first] is '\'' or '"')
        {
            int close = text.IndexOf(text[first], first + 1);
            while (close >= 0 && close + 1 < text.Length && text[close + 1] == text[first]) close = text.IndexOf(text[first], close + 2);
            if (close >= 0)
            {
                int comma = text.IndexOf(',', close + 1);
                return comma < 0 ? text.Length : comma;
            }
        }
        int next = text.IndexOf(',', Math.Min(first, text.Length));
        return next < 0 ? text.Length : next;
    }
}
