using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Hotside.Notation;

/// <summary>
/// Reads a file into nodes with places, by events: no object is made by a name in the file, nothing recurses without a limit, aliases are refused.
/// </summary>
internal sealed class YamlReader
{
    private const int DepthLimit = 32, SizeLimit = 2_000_000, TextLimit = 10_000, CountLimit = 200_000;

    private readonly SourceText source;
    private readonly List<Diagnostic> problems;
    private readonly Parser parser;
    private int count;
    private Mark? end;

    private YamlReader(SourceText source, List<Diagnostic> problems)
    {
        this.source = source;
        this.problems = problems;
        parser = new Parser(new StringReader(source.Text));
    }

    /// <summary>The file's top map; <see langword="null"/> when the file cannot be read as one.</summary>
    public static YamlMap? Read(SourceText source, List<Diagnostic> problems)
    {
        if (source.Text.Length > SizeLimit)
        {
            problems.Add(YamlProblems.TooLarge.At(source.Span(1, 1, 1), Numbers.Whole(SizeLimit)));
            return null;
        }
        int before = problems.Count;
        YamlTraps.Look(source, problems);
        // What the traps name would only come back from the parser in its own words.
        var traps = problems.Skip(before).Where(p => p.Severity >= Severity.Error).ToArray();
        if (Array.Exists(traps, t => t.Kind != YamlProblems.Tab)) return null;
        return traps.Length == 0 ? Parsed(source, problems) : Untabbed(source, problems);
    }

    // Tabs are wrong, but hide nothing else: the rest is read as if they were blanks, unless they were more than a step each.
    private static YamlMap? Untabbed(SourceText source, List<Diagnostic> problems)
    {
        List<Diagnostic> others = [];
        var map = Parsed(source.Untabbed(), others);
        if (map is not null) problems.AddRange(others);
        return map;
    }

    private static YamlMap? Parsed(SourceText source, List<Diagnostic> problems)
    {
        try
        {
            return new YamlReader(source, problems).Document();
        }
        catch (StoppedException)
        {
            return null;
        }
        catch (YamlException e)
        {
            int line = (int)Math.Max(1, e.Start.Line), column = (int)Math.Max(1, e.Start.Column);
            problems.Add(YamlAdvice.At(source, line) ?? YamlProblems.Syntax.At(source.Span(line, column, 1), Reason(e)) with
            {
                Hint = "check brackets, quotes and how far the lines are indented; a text with odd characters may stand in quotes",
            });
            return null;
        }
        catch (Exception e) when (e is InvalidOperationException or ArgumentException)
        {
            // The parser's answer to some unclosed brackets.
            problems.Add(YamlProblems.Syntax.At(source.Span(source.LineCount, 1, 1), "something that was opened is not closed"));
            return null;
        }
    }

    private static string Reason(YamlException e) => e.Message.Length == 0 ? "unexpected text" : char.ToLowerInvariant(e.Message[0]) + e.Message[1..].TrimEnd('.');

    private YamlMap? Document()
    {
        parser.Consume<StreamStart>();
        if (parser.Accept<StreamEnd>(out _)) return Nothing();
        parser.Consume<DocumentStart>();
        if (parser.Accept<Scalar>(out var lone) && lone.Value.Length == 0) return Nothing();
        var top = Node(0);
        parser.Consume<DocumentEnd>();
        if (parser.Accept<DocumentStart>(out var second)) throw Stop(YamlProblems.TwoDocuments.At(Place(second.Start, second.End)));
        if (top is YamlMap map) return map;
        throw Stop(YamlProblems.NotAJob.At(top.Span with { EndLine = top.Span.Line, EndColumn = top.Span.Column + 1 }) with { Hint = "a job file begins with the line \"hotside: 1\"; \"hotside new NAME\" writes one to start from" });
    }

    private YamlMap? Nothing()
    {
        problems.Add(YamlProblems.Empty.At(source.Span(1, 1, 1)) with { Hint = "\"hotside new NAME\" writes a job file to start from" });
        return null;
    }

    private YamlNode Node(int depth)
    {
        if (++count > CountLimit) throw Stop(YamlProblems.TooMany.At(Here(), Numbers.Whole(CountLimit)));
        if (parser.Accept<AnchorAlias>(out var alias)) throw Stop(YamlProblems.Alias.At(Place(alias.Start, alias.End)));
        if (parser.Accept<NodeEvent>(out var node))
        {
            if (!node.Anchor.IsEmpty) throw Stop(YamlProblems.Alias.At(Place(node.Start, node.End)));
            if (!node.Tag.IsEmpty && node is not Scalar { IsQuotedImplicit: true })
                throw Stop(YamlProblems.TagGiven.At(Place(node.Start, node.End)));
        }
        if (depth > DepthLimit) throw Stop(YamlProblems.TooDeep.At(Here(), Numbers.Whole(DepthLimit)));
        if (parser.TryConsume<Scalar>(out var scalar)) return Text(scalar);
        return parser.Accept<MappingStart>(out _) ? Map(depth) : List(depth);
    }

    private YamlMap Map(int depth)
    {
        var start = parser.Consume<MappingStart>();
        var entries = ImmutableArray.CreateBuilder<YamlEntry>();
        var keys = new Dictionary<string, int>(StringComparer.Ordinal);
        while (!Ends<MappingEnd>())
        {
            if (Node(depth + 1) is not YamlText key) throw Stop(YamlProblems.Syntax.At(Here(), "a list or map cannot be a key"));
            var value = Node(depth + 1);
            if (start.Style == MappingStyle.Flow && value is YamlText { Value.Length: 0, IsQuoted: false })
            {
                problems.Add(YamlProblems.KeyWithoutValue.At(key.Span, key.Value) with { Hint = "write the entries on lines of their own, or put the text in quotes" });
                continue;
            }
            if (!keys.TryAdd(key.Value, key.Span.Line))
                problems.Add(YamlProblems.DuplicateKey.At(key.Span, key.Value) with { Hint = $"the first stands in line {Numbers.Whole(keys[key.Value])}; rename or remove one of them" });
            else entries.Add(new(key, value));
        }
        return new(entries.ToImmutable(), Extent(start, entries.LastOrDefault()?.Value, start.Style == MappingStyle.Flow));
    }

    private YamlList List(int depth)
    {
        var start = parser.Consume<SequenceStart>();
        var items = ImmutableArray.CreateBuilder<YamlNode>();
        while (!Ends<SequenceEnd>()) items.Add(Node(depth + 1));
        return new(items.ToImmutable(), Extent(start, items.LastOrDefault(), start.Style == SequenceStyle.Flow));
    }

    // In brackets a collection ends with its bracket; else with its last entry, for the parser ends it where the next thing begins.
    private SourceSpan Extent(ParsingEvent start, YamlNode? last, bool flow)
    {
        var span = Place(start.Start, start.End);
        if (flow && end is { } mark)
        {
            int column = (int)mark.Column;
            bool before = column <= source.Line((int)mark.Line).Length && source.Line((int)mark.Line)[column - 1] is ']' or '}';
            return span with { EndLine = (int)mark.Line, EndColumn = before ? column + 1 : column };
        }
        return last is null ? span : span with { EndLine = last.Span.EndLine, EndColumn = last.Span.EndColumn };
    }

    private bool Ends<T>() where T : ParsingEvent
    {
        if (!parser.TryConsume<T>(out var found)) return false;
        end = found.End;
        return true;
    }

    private YamlText Text(Scalar scalar)
    {
        var span = Place(scalar.Start, scalar.End);
        if (scalar.Value.Length > TextLimit) throw Stop(YamlProblems.TooLong.At(span, Numbers.Whole(TextLimit)));
        foreach (char c in scalar.Value)
            if (char.IsControl(c) && c != '\n')
                throw Stop(YamlProblems.Control.At(span, ((int)c).ToString("X4", System.Globalization.CultureInfo.InvariantCulture)));
        bool quoted = scalar.Style is ScalarStyle.SingleQuoted or ScalarStyle.DoubleQuoted;
        int offset = quoted ? 1 : 0, column = span.Column - 1 + offset;
        string line = source.Line(span.Line);
        bool inStep = column + scalar.Value.Length <= line.Length && line.AsSpan(column, scalar.Value.Length).SequenceEqual(scalar.Value);
        return new(scalar.Value, span, inStep ? offset : -1) { IsQuoted = quoted };
    }

    private SourceSpan Here()
    {
        if (parser.Current is not { } current) return source.Span(1, 1, 1);
        var span = Place(current.Start, current.End);
        return span.Line == span.EndLine && span.Column == span.EndColumn ? span with { EndColumn = span.EndColumn + 1 } : span;
    }

    private SourceSpan Place(in Mark start, in Mark end) => source.Span((int)start.Line, (int)start.Column, (int)end.Line, (int)end.Column);

    private StoppedException Stop(Diagnostic problem)
    {
        problems.Add(problem);
        return new();
    }

    /// <summary>Ends reading after a problem behind which nothing can be trusted; never leaves this class.</summary>
    private sealed class StoppedException : Exception;
}
