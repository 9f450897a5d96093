using System.Text.RegularExpressions;
using Hotside.Diagnostics;

namespace Hotside.Notation;

/// <summary>Says in plain words what the parser stumbled over, from the lines at which it stopped.</summary>
internal static partial class YamlAdvice
{
    /// <summary>What is most likely wrong at a line or the one before it; <see langword="null"/> when nothing is known.</summary>
    public static Diagnostic? At(SourceText source, int line)
    {
        if (QuoteAt(source, line) is { } quote) return quote;
        int before = line - 1;
        while (before > 1 && IsBlank(source.Line(before))) before--;
        return ColonAt(source, line) ?? StepAt(source, line, before) ?? ColonAt(source, before);
    }

    // A text that begins with a quote and does not end with one.
    private static Diagnostic? QuoteAt(SourceText source, int number)
    {
        if (Quoted().Match(source.Line(number)) is not { Success: true } match) return null;
        var (mark, rest) = (match.Groups["mark"].Value, match.Groups["rest"].Value);
        return rest.Contains(mark, StringComparison.Ordinal) ? null
            : LineItems.OpenQuote.At(source.Span(number, match.Groups["mark"].Index + 1, 1)) with { Hint = $"put another {mark} where the text ends, or take this one out" };
    }

    private static Diagnostic? ColonAt(SourceText source, int number)
    {
        string line = source.Line(number);
        if (Glued().Match(line) is { Success: true } glued)
            return YamlProblems.NoColon.At(source.Span(number, glued.Groups["id"].Index + 1, glued.Groups["id"].Length), glued.Groups["id"].Value) with { Hint = "put a space behind the colon" };
        if (Bare().Match(line) is { Success: true } bare && !line.Contains(": ", StringComparison.Ordinal) && !line.TrimEnd().EndsWith(':'))
            return YamlProblems.NoColon.At(source.Span(number, bare.Groups["id"].Index + 1, bare.Groups["id"].Length), bare.Groups["id"].Value) with
            {
                Hint = $"write \"{bare.Groups["id"].Value}: …\", with a colon and a space",
            };
        return null;
    }

    // A line that stands deeper than the one before it, though that has said all it had to say, or between two depths.
    private static Diagnostic? StepAt(SourceText source, int line, int before)
    {
        int depth = Depth(source.Line(line)), above = Depth(source.Line(before));
        bool isComplete = Complete().IsMatch(source.Line(before));
        return before >= 1 && depth != above && (depth < above || isComplete)
            ? YamlProblems.OutOfStep.At(source.Span(line, 1, Math.Max(1, depth))) with { Hint = $"line {before} above it begins at column {above + 1}, this one at column {depth + 1}; lines of one section begin at one column" }
            : null;
    }

    private static bool IsBlank(string line) => line.TrimStart() is "" or ['#', ..];

    private static int Depth(string line) => line.Length - line.TrimStart(' ').Length;

    // Behind a colon, a dash or a comma.
    [GeneratedRegex("""(?:^\s*|[:,-] +)(?<mark>["'])(?<rest>.*)$""")]
    private static partial Regex Quoted();

    // "E1:lamp" and "E1 lamp": an id, then what is said of it.
    [GeneratedRegex(@"^\s+(?<id>[\w-]+):[^\s:]")]
    private static partial Regex Glued();

    [GeneratedRegex(@"^\s+(?<id>(?!-)[\w-]+) +[^\s:]")]
    private static partial Regex Bare();

    [GeneratedRegex(@"^\s*[^\s#][^#]*:\s+[^\s#|>]")]
    private static partial Regex Complete();
}
