using Hotside.Diagnostics;

namespace Hotside.Notation;

/// <summary>A text with the name of its file and its lines, for places and for printing.</summary>
internal sealed class SourceText
{
    private readonly string[] lines;
    private readonly IReadOnlyDictionary<int, int> widened = new Dictionary<int, int>();

    public SourceText(string file, string text)
    {
        File = file;
        // A byte order mark is no character of the job; line ends of every system count as one.
        Text = (text.StartsWith('\uFEFF') ? text[1..] : text).Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n')
            // What a word processor puts for a blank.
            .Replace('\u00A0', ' ').Replace('\u202F', ' ');
        lines = Text.Split('\n');
    }

    // The same with indentation by blanks; places and lines stay those of the file.
    private SourceText(SourceText tabbed, string text, IReadOnlyDictionary<int, int> widened) => (File, Text, lines, this.widened) = (tabbed.File, text, tabbed.lines, widened);

    /// <summary>The text to be read where lines are indented with tabs: a tab counts as one step of the file's own indentation.</summary>
    public SourceText Untabbed()
    {
        int step = lines.Select(l => l.Length - l.TrimStart(' ').Length).Where(i => i > 0).DefaultIfEmpty(2).Min();
        Dictionary<int, int> wider = [];
        string[] blank = [.. lines];
        for (int i = 0; i < lines.Length; i++)
        {
            string indentation = lines[i][..(lines[i].Length - lines[i].TrimStart(' ', '\t').Length)];
            int tabs = indentation.Count(c => c == '\t');
            if (tabs == 0) continue;
            blank[i] = new string(' ', indentation.Length - tabs + (tabs * step)) + lines[i][indentation.Length..];
            wider[i + 1] = tabs * (step - 1);
        }
        return new(this, string.Join('\n', blank), wider);
    }

    public string File { get; }

    public string Text { get; }

    public int LineCount => lines.Length;

    /// <summary>A line by its number from 1; empty beyond the end.</summary>
    public string Line(int number) => number >= 1 && number <= lines.Length ? lines[number - 1] : "";

    /// <summary>Where a word stands by itself within a span, the first time; <see langword="null"/> where it does not.</summary>
    public SourceSpan? Find(string word, SourceSpan within)
    {
        for (int number = within.Line; number <= within.EndLine; number++)
        {
            string line = Line(number);
            int end = number == within.EndLine ? Math.Min(line.Length, within.EndColumn - 1) : line.Length;
            for (int at = number == within.Line ? within.Column - 1 : 0; (at = line.IndexOf(word, at, StringComparison.Ordinal)) >= 0 && at + word.Length <= end; at++)
                if (!(at > 0 && IsOfWord(line[at - 1])) && !(at + word.Length < line.Length && IsOfWord(line[at + word.Length])))
                    return Span(number, at + 1, word.Length);
        }
        return null;
    }

    private static bool IsOfWord(char c) => char.IsLetterOrDigit(c) || c is '_' or '-' or '.';

    public SourceSpan Span(int line, int column, int length) => Span(line, column, line, column + Math.Max(1, length));

    /// <summary>A place as it is in the file.</summary>
    public SourceSpan Span(int line, int column, int endLine, int endColumn) => new(File, line, InFile(line, column), endLine, InFile(endLine, endColumn));

    private int InFile(int line, int column) => widened.TryGetValue(line, out int more) ? Math.Max(1, column - more) : column;
}
