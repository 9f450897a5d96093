using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Notation;

namespace Hotside.Diagnoses;

/// <summary>
/// What a diagnosis takes for likely and for troublesome: the library's lists, from memory, or the same with numbers of one's own, such as those of a shop's repair records. Immutable.
/// </summary>
public sealed class DiagnosisLists
{
    internal static readonly DiagnosticKind NotUnderstood = new("HS3406", Severity.Error, "List of faults or trouble not understood", "{0}");

    private static readonly string[] Factors = ["old", "new work", "bad condition"];

    private DiagnosisLists(FaultModes modes, Effort effort) => (Modes, Effort) = (modes, effort);

    /// <summary>The library's own.</summary>
    public static DiagnosisLists Standard { get; } = new(FaultModes.Standard, Effort.Standard);

    /// <summary>What is wrong with the lists that were read, with places; what is wrong is left as the library has it.</summary>
    public ImmutableArray<Diagnostic> Problems { get; private init; } = [];

    /// <summary>The names of the files that were read.</summary>
    public ImmutableArray<string> Files { get; private init; } = [];

    internal FaultModes Modes { get; private init; }

    internal Effort Effort { get; private init; }

    /// <summary>The same with weights of faults: <c>modes:</c> with a weight by a mode's name, such as <c>lamp burnt: 12</c>, and <c>factors:</c>.</summary>
    /// <param name="text">The list, YAML.</param>
    /// <param name="file">What it is called where something is wrong.</param>
    public DiagnosisLists WithFaults(string text, string file = "faults.yaml")
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(file);
        List<Diagnostic> problems = [];
        Dictionary<string, double> weights = new(StringComparer.Ordinal), factors = new(StringComparer.Ordinal);
        foreach (var (key, value) in Entries(text, file, ["source", "modes", "factors"], problems))
            if (key.Value == "modes") Numbered(value, Modes.All.Select(m => m.Name), weights, problems);
            else if (key.Value == "factors") Numbered(value, Factors, factors, problems);
        return new(Modes.With(weights, factors), Effort) { Problems = [.. Problems, .. problems], Files = Files.Add(file) };
    }

    /// <summary>The same with the trouble of readings: a number by the names of the library's list, <c>places:</c> by a class letter or a kind, <c>far:</c> by words of a part's place.</summary>
    /// <param name="text">The list, YAML.</param>
    /// <param name="file">What it is called where something is wrong.</param>
    public DiagnosisLists WithEffort(string text, string file = "effort.yaml")
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(file);
        List<Diagnostic> problems = [];
        Dictionary<string, double> numbers = new(StringComparer.Ordinal), places = new(StringComparer.Ordinal), far = new(StringComparer.Ordinal);
        foreach (var (key, value) in Entries(text, file, ["source", "places", "far", .. Effort.Names], problems))
            if (key.Value is "places" or "far") Numbered(value, null, key.Value == "places" ? places : far, problems);
            else if (key.Value != "source" && Number(value, key.Value, problems) is { } number) numbers[key.Value] = number;
        return new(Modes, Effort.With(numbers, places, far)) { Problems = [.. Problems, .. problems], Files = Files.Add(file) };
    }

    private static IEnumerable<(YamlText Key, YamlNode Value)> Entries(string text, string file, string[] known, List<Diagnostic> problems)
    {
        if (YamlReader.Read(new SourceText(file, text), problems) is not { } map) yield break;
        foreach (var entry in map.Entries)
            if (known.Contains(entry.Key.Value)) yield return (entry.Key, entry.Value);
            else problems.Add(Unknown(entry.Key, known));
    }

    private static void Numbered(YamlNode node, IEnumerable<string>? known, Dictionary<string, double> numbers, List<Diagnostic> problems)
    {
        if (node is not YamlMap map)
        {
            problems.Add(NotUnderstood.At(node.Span, "here stands a map, a number a name") with { Hint = "write \"lamp burnt: 12\", a line each" });
            return;
        }
        foreach (var entry in map.Entries)
            if (known is not null && !known.Contains(entry.Key.Value)) problems.Add(Unknown(entry.Key, [.. known]));
            // A mode may be written with its weight alone or, as in the library's list, as a map.
            else if (Number(entry.Value is YamlMap mode && mode.Find("weight") is { } weight ? weight.Value : entry.Value, entry.Key.Value, problems) is { } number) numbers[entry.Key.Value] = number;
    }

    private static double? Number(YamlNode node, string name, List<Diagnostic> problems)
    {
        if (node is YamlText text && Numbers.TryRead(text.Value, out double value) && value > 0) return value;
        problems.Add(NotUnderstood.At(node.Span, $"{name} is no number above 0") with { Hint = $"write \"{name}: 3\"; only ratios count" });
        return null;
    }

    private static Diagnostic Unknown(YamlText key, string[] known) => NotUnderstood.At(key.Span, $"nothing of the list is called \"{key.Value}\"") with { Hint = Names.Meant(key.Value, known) };
}
