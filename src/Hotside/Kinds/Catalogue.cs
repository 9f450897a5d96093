using System.Collections.Immutable;
using System.Reflection;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Notation;

namespace Hotside.Kinds;

/// <summary>The part kinds that a job may use. A value: adding a kind gives another catalogue.</summary>
public sealed class Catalogue
{
    private static readonly Lazy<Catalogue> standard = new(ReadStandard);
    private readonly ImmutableDictionary<string, PartKind> byId;

    private Catalogue(ImmutableArray<PartKind> kinds)
    {
        Kinds = [.. kinds.OrderBy(k => k.Id, StringComparer.Ordinal)];
        byId = Kinds.ToImmutableDictionary(k => k.Id, StringComparer.Ordinal);
    }

    /// <summary>The kinds that come with the library.</summary>
    public static Catalogue Standard => standard.Value;

    /// <summary>All kinds, by id.</summary>
    public ImmutableArray<PartKind> Kinds { get; }

    /// <summary>A kind by its id; spaces and hyphens are the same.</summary>
    /// <param name="id">The id, such as <c>horn-relay</c> or <c>horn relay</c>.</param>
    /// <returns>The kind, or <see langword="null"/>.</returns>
    public PartKind? Find(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return byId.GetValueOrDefault(id.Replace(' ', '-'));
    }

    /// <summary>The id that somebody most likely meant.</summary>
    /// <param name="id">What was written.</param>
    /// <returns>The nearest id, or <see langword="null"/> when none is near.</returns>
    public string? Nearest(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        string asked = id.Replace(' ', '-');
        // "Fuel-gauge" is a gauge: what a name ends with tells what it is.
        return NearestName.Of(asked, Kinds.Select(k => k.Id)) ?? Kinds.Select(k => k.Id).Where(k => asked.EndsWith(k, StringComparison.OrdinalIgnoreCase)).MaxBy(k => k.Length);
    }

    /// <summary>This catalogue with one kind more, or with one replaced.</summary>
    /// <param name="yaml">The kind as data, as the files of the library have it.</param>
    /// <returns>The larger catalogue.</returns>
    /// <exception cref="ArgumentException">The data is wrong; the message lists every mistake with its place.</exception>
    public Catalogue WithKind(string yaml)
    {
        ArgumentNullException.ThrowIfNull(yaml);
        var problems = new List<Diagnostic>();
        var kind = ReadFile(new("(kind)", yaml), this, problems);
        if (kind is null || problems.Any(p => p.Severity >= Severity.Error)) throw new ArgumentException(string.Join('\n', problems), nameof(yaml));
        return With(kind);
    }

    internal Catalogue With(PartKind kind) => new([.. Kinds.Where(k => k.Id != kind.Id), kind]);

    // A file of its own names the kind in the key "kind"; the rest is what stands under a kind's name in a job file.
    private static PartKind? ReadFile(SourceText source, Catalogue known, List<Diagnostic> problems)
    {
        if (YamlReader.Read(source, problems) is not { } map) return null;
        if (map.Find("kind")?.Value is YamlText { Value.Length: > 0 } id)
            return KindReader.Read(id, map with { Entries = [.. map.Entries.Where(e => e.Key.Value != "kind")] }, known, problems);
        problems.Add(KindProblems.NoId.At(map.Span));
        return null;
    }

    private static Catalogue ReadStandard()
    {
        var assembly = typeof(Catalogue).Assembly;
        var catalogue = new Catalogue([]);
        var problems = new List<Diagnostic>();
        // Kinds that are like another come after it.
        var texts = assembly.GetManifestResourceNames().Where(n => n.StartsWith("kinds/", StringComparison.Ordinal)).Order(StringComparer.Ordinal)
            .Select(n => new SourceText(n, Text(assembly, n))).OrderBy(t => t.Text.Contains("\nlike:", StringComparison.Ordinal) ? 1 : 0);
        foreach (var text in texts)
            if (ReadFile(text, catalogue, problems) is { } kind)
                catalogue = catalogue.With(kind);
        return problems.Count == 0 ? catalogue : throw new InvalidOperationException(string.Join('\n', problems));
    }

    private static string Text(Assembly assembly, string name)
    {
        using var reader = new StreamReader(assembly.GetManifestResourceStream(name)!);
        return reader.ReadToEnd();
    }
}
