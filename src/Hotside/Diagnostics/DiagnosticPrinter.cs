using System.Globalization;
using System.Text;
using Hotside.Circuits;

namespace Hotside.Diagnostics;

/// <summary>Prints a diagnostic with the line that it is about and carets under the place.</summary>
internal static class DiagnosticPrinter
{
    private const int MostColumns = 110, ColumnsBefore = 40, MostCarets = 80, NumberColumns = 5;

    /// <summary>The diagnostic as lines of text without a line end behind the last.</summary>
    /// <param name="diagnostic">The diagnostic.</param>
    /// <param name="lineOf">The text of the line on which a span begins; <see langword="null"/> when it is not known.</param>
    public static string Print(Diagnostic diagnostic, Func<SourceSpan, string?> lineOf)
    {
        string place = diagnostic.Span is { } at ? at + ": " : "";
        var text = new StringBuilder($"{place}{(diagnostic.Accepted is null ? "" : "accepted ")}{diagnostic.Severity.ToString().ToLowerInvariant()} {diagnostic.Code}: {Shown(diagnostic.Message)}");
        if (diagnostic.Span is { } span && lineOf(span) is { } line) Excerpt(text, span, line);
        if (diagnostic.Accepted is { } reason) text.Append("\n     accepted: ").Append(Shown(reason));
        else if (diagnostic.Hint is { } hint) text.Append("\n     hint: ").Append(Shown(hint));
        return text.ToString();
    }

    private static void Excerpt(StringBuilder text, SourceSpan span, string line)
    {
        int start = Math.Clamp(span.Column - 1, 0, line.Length);
        int from = line.Length <= MostColumns ? 0 : Whole(line, Math.Clamp(start - ColumnsBefore, 0, line.Length - MostColumns));
        int to = Whole(line, Math.Max(start, Math.Min(line.Length, from + MostColumns)));
        int end = Math.Clamp(span.EndLine > span.Line ? line.TrimEnd().Length : span.EndColumn - 1, start, to);
        string before = (from > 0 ? "…" : "") + Shown(line[from..start]), marked = Shown(line[start..end]);
        string behind = Shown(line[end..to]) + (to < line.Length ? "…" : "");
        string number = Numbers.Whole(span.Line);
        text.Append('\n').Append(number.PadLeft(NumberColumns)).Append((" | " + before + marked + behind).TrimEnd());
        text.Append('\n').Append(' ', Math.Max(NumberColumns, number.Length)).Append(" | ");
        text.Append(' ', WidthOf(before)).Append('^', Math.Clamp(WidthOf(marked), 1, MostCarets));
    }

    // A pair of surrogates is never cut in two.
    private static int Whole(string line, int at) => at > 0 && at < line.Length && char.IsLowSurrogate(line[at]) ? at - 1 : at;

    // What would move the cursor, or turn the line round, shows as a sign of its own; a tab as one blank, so that carets stay in step.
    private static string Shown(string text) => string.Create(text.Length, text, (shown, source) =>
    {
        for (int i = 0; i < source.Length; i++)
            shown[i] = source[i] == '\t' ? ' ' : char.IsControl(source[i]) || IsTurning(source[i]) ? '\uFFFD' : source[i];
    });

    private static bool IsTurning(char c) => c is (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069') or '\u2028' or '\u2029';

    private static int WidthOf(string text)
    {
        int width = 0;
        foreach (var rune in text.EnumerateRunes()) width += WidthOf(rune);
        return width;
    }

    // Columns on a terminal: nothing for what sits on the character before, two for East Asian wide signs and emoji (after UAX 11, in ranges).
    private static int WidthOf(Rune rune) => Rune.GetUnicodeCategory(rune) switch
    {
        UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark or UnicodeCategory.Format => 0,
        _ => rune.Value is (>= 0x1100 and <= 0x115F) or (>= 0x2E80 and <= 0xA4CF) or (>= 0xAC00 and <= 0xD7A3) or (>= 0xF900 and <= 0xFAFF)
            or (>= 0xFE30 and <= 0xFE6F) or (>= 0xFF00 and <= 0xFF60) or (>= 0xFFE0 and <= 0xFFE6) or (>= 0x1F300 and <= 0x1FAFF) or (>= 0x20000 and <= 0x3FFFD) ? 2 : 1,
    };
}
