using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Kinds;
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

    /// <summary>Where the weights of faults are from: first those of one's own, as their list says, then the rest.</summary>
    public string FaultSource { get; private init; } = FaultModes.Standard.Source;

    /// <summary>Where the trouble of readings is from: first what is one's own, as its list says, then the rest.</summary>
    public string EffortSource { get; private init; } = Effort.Standard.Source;

    internal FaultModes Modes { get; private init; }

    internal Effort Effort { get; private init; }

    /// <summary>The same with weights of faults: <c>modes:</c> with a weight by a mode's name, such as <c>lamp burnt: 12</c>, <c>factors:</c>, and <c>source:</c>.</summary>
    /// <param name="text">The list, YAML. A number is above 0; only ratios count.</param>
    /// <param name="file">What it is called where something is wrong.</param>
    /// <returns>The lists with those weights; what is wrong with the text is in <see cref="Problems"/> and throws nothing.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> or <paramref name="file"/> is <see langword="null"/>.</exception>
    public DiagnosisLists WithFaults(string text, string file = "faults.yaml")
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(file);
        List<Diagnostic> problems = [];
        string source = "";
        Dictionary<string, double> weights = new(StringComparer.Ordinal), factors = new(StringComparer.Ordinal);
        foreach (var (key, value) in Entries(text, file, ["source", "modes", "factors"], problems))
            if (key.Value == "modes") Numbered(value, Modes.All.Select(m => m.Name), weights, problems);
            else if (key.Value == "factors") Numbered(value, Factors, factors, problems);
            else source = SourceIn(value, problems);
        return Also(file, problems, Modes.With(weights, factors), Effort, Told(source, file, FaultSource), EffortSource);
    }

    /// <summary>The same with the trouble of readings: a number by the names of the library's list, <c>places:</c> by a class letter or a kind, <c>far:</c> by any words of a part's place, and <c>source:</c>.</summary>
    /// <param name="text">The list, YAML. A number is above 0; only ratios count.</param>
    /// <param name="file">What it is called where something is wrong.</param>
    /// <param name="kinds">Kinds of one's own that <c>places:</c> may name beside those of the library.</param>
    /// <returns>The lists with those numbers; what is wrong with the text is in <see cref="Problems"/> and throws nothing.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> or <paramref name="file"/> is <see langword="null"/>.</exception>
    public DiagnosisLists WithEffort(string text, string file = "effort.yaml", IEnumerable<PartKind>? kinds = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(file);
        List<Diagnostic> problems = [];
        string source = "";
        Dictionary<string, double> numbers = new(StringComparer.Ordinal), places = new(StringComparer.Ordinal), far = new(StringComparer.Ordinal);
        foreach (var (key, value) in Entries(text, file, ["source", "places", "far", .. Effort.Names], problems))
            if (key.Value == "places") Numbered(value, [.. Effort.Places, .. Catalogue.Standard.Kinds.Concat(kinds ?? []).Select(k => k.Id)], places, problems, IsLetter);
            else if (key.Value == "far") Numbered(value, [], far, problems, words => !string.IsNullOrWhiteSpace(words));
            else if (key.Value == "source") source = SourceIn(value, problems);
            else if (Number(value, key.Value, problems) is { } number) numbers[key.Value] = number;
        return Also(file, problems, Modes, Effort.With(numbers, places, far), FaultSource, Told(source, file, EffortSource));
    }

    private DiagnosisLists Also(string file, List<Diagnostic> problems, FaultModes modes, Effort effort, string faultSource, string effortSource) =>
        new(modes, effort) { Problems = [.. Problems, .. problems], Files = Files.Add(file), FaultSource = faultSource, EffortSource = effortSource };

    private static string Told(string source, string file, string rest) => $"{(source.Length > 0 ? source + $" ({file})" : file)}; the rest: {rest}";

    private static string SourceIn(YamlNode node, List<Diagnostic> problems)
    {
        if (node is YamlText text) return text.Value.Trim().TrimEnd('.');
        problems.Add(NotUnderstood.At(node.Span, "source is no text") with { Hint = "write \"source: our repairs of ten years\"" });
        return "";
    }

    // A class of parts goes by its letter.
    private static bool IsLetter(string name) => name is [>= 'A' and <= 'Z'];

    private static IEnumerable<(YamlText Key, YamlNode Value)> Entries(string text, string file, string[] known, List<Diagnostic> problems)
    {
        if (YamlReader.Read(new SourceText(file, text), problems) is not { } map) yield break;
        foreach (var entry in map.Entries)
            if (known.Contains(entry.Key.Value)) yield return (entry.Key, entry.Value);
            else problems.Add(Unknown(entry.Key, known));
    }

    private static void Numbered(YamlNode node, IEnumerable<string> known, Dictionary<string, double> numbers, List<Diagnostic> problems, Predicate<string>? isKnown = null)
    {
        if (node is not YamlMap map)
        {
            problems.Add(NotUnderstood.At(node.Span, "here stands a map, a number a name") with { Hint = "write \"lamp burnt: 12\", a line each" });
            return;
        }
        foreach (var entry in map.Entries)
            if (!known.Contains(entry.Key.Value) && isKnown?.Invoke(entry.Key.Value) != true) problems.Add(Unknown(entry.Key, [.. known]));
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
