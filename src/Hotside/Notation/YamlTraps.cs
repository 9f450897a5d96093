using System.Globalization;
using System.Text.RegularExpressions;
using Hotside.Diagnostics;

namespace Hotside.Notation;

/// <summary>Finds in the source text what YAML swallows silently or reports in words that help nobody.</summary>
internal static partial class YamlTraps
{
    public static void Look(SourceText source, List<Diagnostic> problems)
    {
        for (int number = 1; number <= source.LineCount; number++)
        {
            string line = source.Line(number);
            if (ControlIn(source, number, line) is { } control) problems.Add(control);
            if (Indentation().Match(line) is { Success: true } tab && tab.Length < line.Length)
                problems.Add(YamlProblems.Tab.At(source.Span(number, tab.Value.IndexOf('\t', StringComparison.Ordinal) + 1, 1)) with { Hint = "indent with spaces" });
            string content = WithoutComment(line, out int comment);
            if (comment > 0 && line[comment - 1] == ' ' && (comment < 2 || line[comment - 2] != ' ') && content.Trim().Length > 0)
                problems.Add(YamlProblems.SwallowedByComment.At(source.Span(number, comment + 1, line.Length - comment), line[comment..].TrimEnd()) with
                {
                    Hint = "leave two spaces before a comment, or put the text in quotes",
                });
            Quotes(source, problems, number, content);
        }
    }

    private static Diagnostic? ControlIn(SourceText source, int number, string line)
    {
        for (int i = 0; i < line.Length; i++)
            if ((char.IsControl(line[i]) && line[i] != '\t') || line[i] is '\uFFFE' or '\uFFFF')
                return YamlProblems.Control.At(source.Span(number, i + 1, 1), ((int)line[i]).ToString("X4", CultureInfo.InvariantCulture)) with { Hint = "take it out" };
        return null;
    }

    private static void Quotes(SourceText source, List<Diagnostic> problems, int number, string content)
    {
        var match = KeyAndValue().Match(content);
        if (!match.Success) return;
        var value = match.Groups["value"];
        if (value.Value is ['\'' or '"', ..] && ClosingQuote(value.Value) is var end && end > 0 && value.Value[(end + 1)..].Trim() is [not '#', ..])
        {
            problems.Add(YamlProblems.LeadingQuote.At(source.Span(number, value.Index + 1, value.Length)) with
            {
                Hint = "a line does not begin with a quote: put the kind or the ends first, or everything behind the first colon in quotes of the other sort",
            });
            return;
        }
        if (value.Value.Length == 0 || value.Value[0] is '\'' or '"' or '{' or '[' or '|' or '>' or '&' or '*' or '!') return;
        int second = value.Value.IndexOf(": ", StringComparison.Ordinal);
        if (second >= 0)
            problems.Add(YamlProblems.SecondColon.At(source.Span(number, value.Index + second + 1, 1)) with { Hint = "put everything behind the first colon in quotes" });
    }

    private static int ClosingQuote(string text)
    {
        for (int i = 1; i < text.Length; i++)
        {
            if (text[0] == '"' && text[i] == '\\') i++;
            else if (text[i] == text[0])
            {
                if (text[0] == '\'' && i + 1 < text.Length && text[i + 1] == '\'') i++;
                else return i;
            }
        }
        return -1;
    }

    // The line up to a comment; quotes protect a number sign.
    private static string WithoutComment(string line, out int comment)
    {
        char quote = '\0';
        for (int i = 0; i < line.Length; i++)
        {
            char c = line[i];
            bool opens = quote == '\0' && c is '\'' or '"' && (i == 0 || line[i - 1] is ' ' or '[' or '{' or ',' or ':' or '-');
            if (opens) quote = c;
            else if (quote == '\'' && c == quote && i + 1 < line.Length && line[i + 1] == quote) i++;
            else if (quote != '\0' && c == quote) quote = '\0';
            else if (quote == '\0' && c == '#' && (i == 0 || line[i - 1] is ' ' or '\t'))
            {
                comment = i;
                return line[..i];
            }
        }
        comment = -1;
        return line;
    }

    [GeneratedRegex(@"^[ ]*\t[ \t]*")]
    private static partial Regex Indentation();

    // A key, perhaps behind list dashes, and what stands behind its colon. The key holds no colon of its own and is not in quotes.
    [GeneratedRegex(@"^\s*(?:- )*(?<key>(?!- )[^'""{\[#:\s][^:#]*|[^'""{\[#:\s-]):\s+(?<value>\S.*?)\s*$")]
    private static partial Regex KeyAndValue();
}
