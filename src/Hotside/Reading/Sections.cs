using System.Collections.Immutable;
using Hotside.Diagnostics;
using Hotside.Notation;

namespace Hotside.Reading;

/// <summary>The sections of a job file, with those of the files that it includes.</summary>
/// <param name="context">What the readers share.</param>
/// <param name="include">The text of a file by its path from the job's folder.</param>
/// <param name="isNamedFromFolder">Whether the first file's name is a path from the job's folder too, as that of an after file is.</param>
internal sealed class Sections(ReadingContext context, Func<string, string?> include, bool isNamedFromFolder)
{
    private static readonly string[] Known = ["hotside", "title", "title block", "system", "kinds", "include", "parts", "wires", "settings", "sequences", "readings", "alteration", "accept"];

    private readonly List<YamlMap> maps = [];
    private readonly HashSet<string> files = new(StringComparer.Ordinal);
    private string? first;

    /// <summary>What stands within the section of the alteration.</summary>
    public static string[] OfAlteration { get; } = ["title", "system", "settings", "readings", "changes", "after", "same", "done", "order", "as fitted"];

    /// <summary>The texts read, by file.</summary>
    public Dictionary<string, SourceText> Sources { get; } = new(StringComparer.Ordinal);

    /// <summary>Reads a file and what it includes; <see langword="false"/> when the file itself cannot be read.</summary>
    public bool Read(string file, string text)
    {
        var source = new SourceText(file, text);
        Sources[file] = source;
        first ??= file;
        files.Add(file == first && !isNamedFromFolder ? Path.GetFileName(file) : file);
        if (YamlReader.Read(source, context.Problems) is not { } map) return false;
        foreach (var entry in map.Entries.Where(e => !Known.Contains(e.Key.Value)))
            context.Report(ReadingProblems.UnknownSection.At(entry.Key.Span, entry.Key.Value) with
            {
                Hint = OfAlteration.Contains(entry.Key.Value) ? $"\"{entry.Key.Value}\" stands under \"alteration:\", further in" : Names.Meant(entry.Key.Value, Known),
            });
        maps.Add(map);
        foreach (var name in MapForm.Texts(map, "include")) Include(name);
        return true;
    }

    /// <summary>The first section of a name, in the file itself or in an included one.</summary>
    public YamlNode? Find(string name) => maps.Select(m => m.Find(name)?.Value).FirstOrDefault(n => n is not null);

    /// <summary>The place of the file's beginning, for what is missing.</summary>
    public SourceSpan Top => maps[0].Span with { EndLine = maps[0].Span.Line, EndColumn = maps[0].Span.Column + 1 };

    /// <summary>The entries of all sections of a name, in the order of reading.</summary>
    public IEnumerable<YamlEntry> Entries(string name)
    {
        foreach (var section in maps.Select(m => m.Find(name)?.Value).OfType<YamlNode>())
        {
            if (section is YamlMap map)
                foreach (var entry in map.Entries) yield return entry;
            else if (section is not YamlText { Value.Length: 0 })
                context.Report(ReadingProblems.WrongShape.At(section.Span, name, "a map, a line for each") with { Hint = "write \"id: …\" on a line of its own for each, without a dash" });
        }
    }

    /// <summary>The text of a file in the job's own folder or below; <see langword="null"/> and a report when it is elsewhere or missing.</summary>
    public (string Path, string Text)? Load(YamlText name)
    {
        string path = name.Value;
        bool outside = Path.IsPathRooted(path) || path.Contains('\\', StringComparison.Ordinal) || path.Contains(':', StringComparison.Ordinal) || path.Split('/').Contains("..");
        // A file names others from its own folder.
        if (!outside && FolderOf(name.Span.File) is { Length: > 0 } folder) path = folder + "/" + path;
        if (outside) context.Report(ReadingProblems.IncludeOutside.At(name.Span, path) with { Hint = "name a file in the folder of this file, or below it" });
        else if (files.Contains(path)) context.Report(ReadingProblems.IncludeCycle.At(name.Span, path) with { Hint = "take this line out" });
        else if (include(path) is { } text)
        {
            files.Add(path);
            return (path, text);
        }
        else context.Report(ReadingProblems.IncludeMissing.At(name.Span, path) with { Hint = "it is looked for in the folder of this file" });
        return null;
    }

    private string FolderOf(string file) => file == first && !isNamedFromFolder ? "" : Path.GetDirectoryName(file)?.Replace('\\', '/') ?? "";

    private void Include(YamlText name)
    {
        if (Load(name) is { } file) Read(file.Path, file.Text);
    }
}
