using Hotside.Diagnostics;

namespace Hotside.Notation;

/// <summary>A text with the name of its file and its lines, for places and for printing.</summary>
internal sealed class SourceText
{
    private readonly string[] lines;

    public SourceText(string file, string text)
    {
        File = file;
        // A byte order mark is no character of the job; line ends of every system count as one.
        Text = (text.StartsWith('\uFEFF') ? text[1..] : text).Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n')
            // What a word processor puts for a blank.
            .Replace('\u00A0', ' ').Replace('\u202F', ' ');
        lines = Text.Split('\n');
    }

    public string File { get; }

    public string Text { get; }

    public int LineCount => lines.Length;

    /// <summary>A line by its number from 1; empty beyond the end.</summary>
    public string Line(int number) => number >= 1 && number <= lines.Length ? lines[number - 1] : "";

    public SourceSpan Span(int line, int column, int length) => new(File, line, column, line, column + Math.Max(1, length));
}
