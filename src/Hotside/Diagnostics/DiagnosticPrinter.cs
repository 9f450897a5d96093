using System.Text;
using Hotside.Circuits;

namespace Hotside.Diagnostics;

/// <summary>Prints a diagnostic with the line that it is about and a mark below the place.</summary>
internal static class DiagnosticPrinter
{
    private const int Widest = 140;

    /// <param name="diagnostic">What is printed.</param>
    /// <param name="lineOf">The text of the line on which a span begins; <see langword="null"/> when it is not known.</param>
    public static string Print(Diagnostic diagnostic, Func<SourceSpan, string?> lineOf)
    {
        string[] parts = diagnostic.ToString().Split('\n', 2);
        if (diagnostic.Span is not { } span || lineOf(span) is not { } line || line.Trim().Length == 0) return diagnostic.ToString();
        var text = new StringBuilder(parts[0]).Append('\n');
        int length = span.EndLine == span.Line ? span.EndColumn - span.Column : line.Length - span.Column + 1;
        var (shown, column) = Window(line, span.Column);
        string number = Numbers.Whole(span.Line).PadLeft(6);
        text.Append(number).Append(" | ").Append(shown).Append('\n');
        text.Append("       | ").Append(Blank(shown, column - 1)).Append('^', Math.Clamp(length, 1, Math.Max(1, shown.Length - column + 1)));
        if (parts.Length > 1) text.Append('\n').Append(parts[1]);
        return text.ToString();
    }

    // A long line is cut around the place.
    private static (string Shown, int Column) Window(string line, int column)
    {
        string safe = string.Concat(line.Select(c => char.IsControl(c) && c != '\t' ? '\uFFFD' : c));
        if (safe.Length <= Widest) return (safe, Math.Clamp(column, 1, safe.Length + 1));
        int start = Math.Clamp(column - (Widest / 2), 0, safe.Length - Widest);
        return (string.Concat(start > 0 ? "…" : "", safe.AsSpan(start, Widest), start + Widest < safe.Length ? "…" : ""), column - start + (start > 0 ? 1 : 0));
    }

    // Tabs stay tabs, so that the mark stands under its character.
    private static string Blank(string line, int length) => string.Concat(line.Take(length).Select(c => c == '\t' ? '\t' : ' '));
}
