using System.Collections.Frozen;

namespace Hotside.Diagnostics;

/// <summary>What each kind of diagnostic means, what to do, and lines that bring it about; data of the library.</summary>
internal static class DiagnosticExplanations
{
    private static readonly Lazy<FrozenDictionary<string, (string Meaning, string Remedy, string Example)>> all = new(Read);

    /// <summary>The explanation of a code; empty texts where there is none.</summary>
    public static (string Meaning, string Remedy, string Example) Of(string code) => all.Value.TryGetValue(code, out var found) ? found : ("", "", "");

    // An entry: the code, "means:", "do:", perhaps "example:" with indented lines; a blank line ends it.
    private static FrozenDictionary<string, (string, string, string)> Read()
    {
        var entries = new Dictionary<string, (string, string, string)>(StringComparer.Ordinal);
        var assembly = typeof(DiagnosticExplanations).Assembly;
        foreach (string name in assembly.GetManifestResourceNames().Where(n => n.StartsWith("diagnostics/", StringComparison.Ordinal)).Order(StringComparer.Ordinal))
        {
            using var reader = new StreamReader(assembly.GetManifestResourceStream(name)!);
            foreach (string block in reader.ReadToEnd().ReplaceLineEndings("\n").Split("\n\n", StringSplitOptions.RemoveEmptyEntries)) Add(entries, block.TrimEnd('\n').Split('\n'));
        }
        return entries.ToFrozenDictionary(StringComparer.Ordinal);
    }

    private static void Add(Dictionary<string, (string, string, string)> entries, string[] lines)
    {
        if (lines[0].StartsWith('#')) return;
        string Said(string key) => lines.First(l => l.StartsWith(key, StringComparison.Ordinal))[key.Length..];
        var example = lines.SkipWhile(l => l != "example:").Skip(1).Select(l => l.Length > 2 ? l[2..] : "");
        entries.Add(lines[0], (Said("means: "), Said("do: "), string.Join('\n', example)));
    }
}
