using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Notation;
using Hotside.Reading;

namespace Hotside.Proposals.Texts;

/// <summary>The owner's own text of the circuit before, byte for byte, without the alteration that stood in it.</summary>
/// <param name="Text">The text; its last line ends.</param>
/// <param name="LineEnd">How its lines end.</param>
/// <param name="Told">What was left out of it.</param>
internal sealed record BeforeText(string Text, string LineEnd, ImmutableArray<Diagnostic> Told)
{
    private static readonly string[] OfTheAlteration = ["alteration", "accept"];

    /// <summary>The text of a job without its alteration; <see langword="null"/> where it stands in no lines of its own.</summary>
    public static BeforeText? Of(JobSource source)
    {
        SourceText parsed = new(source.File, source.Text);
        if (YamlReader.Read(parsed, []) is not { } map) return null;
        string end = source.Text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
        List<string> lines = [.. source.Text.Split('\n')];
        bool isAltered = map.Find("alteration")?.Value is YamlMap;
        List<Diagnostic> told = [];
        foreach (var entry in map.Entries.Reverse().Where(e => isAltered ? OfTheAlteration.Contains(e.Key.Value) : e.Key.Value == "alteration"))
        {
            if (entry.Key.Span.Column != 1) return null;
            int first = entry.Key.Span.Line - 1, next = map.Entries.Select(e => e.Key.Span.Line - 1).Where(l => l > first).DefaultIfEmpty(lines.Count).Min();
            // Comments at the margin behind it are the owner's; blank lines go with what goes.
            while (next > first + 1 && (lines[next - 1].Trim().Length == 0 || lines[next - 1][0] == '#')) next--;
            lines.RemoveRange(first, next - first);
            if (entry.Key.Value == "alteration" && isAltered) told.Add(ProposalProblems.AlterationLeftOut.At(entry.Key.Span));
        }
        string text = string.Join('\n', lines);
        if (!text.EndsWith('\n')) text += end;
        var (kept, comments) = WithoutStrangers(text, source);
        return new(kept, end, [.. told, .. comments]);
    }

    // A setting that names a part which only the alteration brought is no error of the owner's.
    private static (string Text, IEnumerable<Diagnostic> Told) WithoutStrangers(string text, JobSource source)
    {
        List<Diagnostic> told = [];
        for (int round = 0; round < 3; round++)
        {
            var reading = JobReader.Read(source.File, text, source.Kinds, source.Include);
            var sections = YamlReader.Read(new(source.File, text), [])?.Entries.Where(e => e.Key.Value is "settings" or "sequences").ToArray() ?? [];
            int[] wrong = [.. reading.Diagnostics.Where(d => d is { Severity: >= Severity.Error, Span: { } span } && span.File == source.File
                && sections.Any(s => s.Value is YamlMap m && m.Entries.Any(e => e.Key.Span.Line <= span.Line && e.Key.Span.Column > 1) && s.Key.Span.Line < span.Line)).Select(d => d.Span!.Line).Distinct()];
            if (wrong.Length == 0) break;
            string[] lines = text.Split('\n');
            foreach (int line in wrong)
            {
                lines[line - 1] = "# " + lines[line - 1];
                told.Add(ProposalProblems.LineLeftOut.At(new(source.File, line, 1, line, 2), Numbers.Whole(line)));
            }
            text = string.Join('\n', lines);
        }
        return (text, told);
    }
}
