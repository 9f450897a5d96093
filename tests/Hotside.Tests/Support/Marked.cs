using System.Collections.Immutable;
using Hotside.Diagnostics;
using Hotside.Kinds;
using Hotside.Reading;

namespace Hotside.Tests.Support;

/// <summary>An input in which ⟦ and ⟧ stand around the place where a diagnostic is expected.</summary>
internal sealed record Marked(string Text, SourceSpan Span)
{
    public const string File = "job.yaml";

    /// <summary>Takes the marks away and keeps their place.</summary>
    public static Marked Parse(string marked, string file = File)
    {
        int open = marked.IndexOf('⟦', StringComparison.Ordinal), close = marked.IndexOf('⟧', StringComparison.Ordinal);
        Assert.True(open >= 0 && close > open, "The input has no marks ⟦ ⟧.");
        string text = marked.Remove(close, 1).Remove(open, 1);
        var (line, column) = PlaceOf(text, open);
        var (endLine, endColumn) = PlaceOf(text, close - 1);
        return new(text, new(file, line, column, endLine, endColumn));
    }

    /// <summary>Reads the job and expects one diagnostic at the marks, and no other that is an error.</summary>
    public static Diagnostic Expect(string code, string marked, string? hint = null, Func<string, string?>? include = null)
    {
        var input = Parse(marked);
        return Expect(code, input, JobReader.Read(File, input.Text, Catalogue.Standard, include ?? (_ => null)).Diagnostics, hint);
    }

    public static Diagnostic Expect(string code, Marked input, ImmutableArray<Diagnostic> all, string? hint)
    {
        string list = string.Join('\n', all.Select(d => $"{d.Span?.Line}:{d.Span?.Column}-{d.Span?.EndLine}:{d.Span?.EndColumn} {d}"));
        var found = all.Where(d => d.Code == code).ToArray();
        Assert.True(found.Length == 1, $"{found.Length} of {code} instead of one:\n{list}");
        Assert.True(input.Span == found[0].Span, $"{code} is not at {input.Span.Line}:{input.Span.Column}-{input.Span.EndLine}:{input.Span.EndColumn}:\n{list}");
        Assert.True(all.All(d => d.Code == code || d.Severity < Severity.Error), $"More than {code} is reported:\n{list}");
        if (hint is not null) Assert.Contains(hint, found[0].Hint ?? "(no hint)", StringComparison.Ordinal);
        return found[0];
    }

    private static (int Line, int Column) PlaceOf(string text, int offset)
    {
        int line = 1, start = 0;
        for (int i = 0; i < offset; i++)
            if (text[i] == '\n' || (text[i] == '\r' && text[i + 1] != '\n'))
                (line, start) = (line + 1, i + 1);
        return (line, offset - start + 1);
    }
}
