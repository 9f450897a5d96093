using System.Collections.Immutable;
using System.Globalization;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Notation;

namespace Hotside.Diagnoses;

/// <summary>The list of faults as data: which modes there are, how often, and what makes them likelier.</summary>
internal sealed class FaultModes
{
    private static readonly Lazy<FaultModes> standard = new(() => new(DiagnosisData.Map("faults.yaml")));

    private FaultModes(YamlMap map)
    {
        Source = DiagnosisData.Text(map, "source");
        var factors = DiagnosisData.Map(map, "factors");
        (Old, NewWork, BadCondition) = (DiagnosisData.Number(factors, "old"), DiagnosisData.Number(factors, "new work"), DiagnosisData.Number(factors, "bad condition"));
        All = [.. DiagnosisData.Map(map, "modes").Entries.Select(e => Mode(e.Key.Value, (YamlMap)e.Value))];
    }

    private FaultModes(FaultModes same, IReadOnlyDictionary<string, double> weights, IReadOnlyDictionary<string, double> factors)
    {
        Source = same.Source;
        (Old, NewWork, BadCondition) = (factors.GetValueOrDefault("old", same.Old), factors.GetValueOrDefault("new work", same.NewWork), factors.GetValueOrDefault("bad condition", same.BadCondition));
        All = [.. same.All.Select(m => weights.TryGetValue(m.Name, out double weight) ? m with { Weight = weight } : m)];
    }

    /// <summary>The same with other weights, by the names of modes, and other factors.</summary>
    public FaultModes With(IReadOnlyDictionary<string, double> weights, IReadOnlyDictionary<string, double> factors) => new(this, weights, factors);

    /// <summary>The list of the library.</summary>
    public static FaultModes Standard => standard.Value;

    /// <summary>Where the weights are from.</summary>
    public string Source { get; }

    /// <summary>By what an old piece fails more often.</summary>
    public double Old { get; }

    /// <summary>By what a piece that was just worked on fails more often.</summary>
    public double NewWork { get; }

    /// <summary>By what a piece in bad condition fails more often.</summary>
    public double BadCondition { get; }

    /// <summary>The modes, in the order of the list.</summary>
    public ImmutableArray<FaultMode> All { get; }

    /// <summary>The modes of a sort of piece.</summary>
    public IEnumerable<FaultMode> On(string piece) => All.Where(m => m.On == piece);

    private static FaultMode Mode(string name, YamlMap map) => new(
        name, DiagnosisData.Text(map, "on"), DiagnosisData.Number(map, "weight"), Enum.Parse<FaultChange>(DiagnosisData.Text(map, "change"), ignoreCase: true), [.. Sizes(map)], DiagnosisData.Text(map, "says"))
    {
        Repair = DiagnosisData.Text(map, "repair"),
    };

    private static IEnumerable<FaultSize> Sizes(YamlMap map)
    {
        if (map.Find("times")?.Value is YamlText times) return times.Value.Split(',', StringSplitOptions.TrimEntries).Select(t => Read(t)).Select(t => new FaultSize(t, t));
        if (map.Find("size")?.Value is not YamlText size) return [new(1, 1)];
        // "0.2..12 ohm in 7".
        string[] halves = size.Value.Split(" in "), ends = halves[0].Split(' ')[0].Split("..");
        double least = Read(ends[0]), most = Read(ends[1]);
        int cells = (int)Read(halves[1]);
        double ratio = Math.Pow(most / least, 1.0 / cells);
        return Enumerable.Range(0, cells).Select(i => new FaultSize(least * Math.Pow(ratio, i), least * Math.Pow(ratio, i + 1)));
    }

    private static double Read(string text) => Numbers.TryRead(text, out double value) ? value : throw new InvalidOperationException($"\"{text}\" is no number.");
}

/// <summary>The data files of the room.</summary>
internal static class DiagnosisData
{
    /// <summary>The map that a file holds.</summary>
    public static YamlMap Map(string file)
    {
        using var stream = typeof(DiagnosisData).Assembly.GetManifestResourceStream("diagnoses/" + file) ?? throw new InvalidOperationException($"There is no {file}.");
        using StreamReader reader = new(stream);
        List<Diagnostic> problems = [];
        var map = YamlReader.Read(new SourceText(file, reader.ReadToEnd()), problems);
        return map is not null && problems.TrueForAll(p => p.Severity < Severity.Error) ? map : throw new InvalidOperationException(string.Join('\n', problems));
    }

    public static YamlMap Map(YamlMap map, string key) => map.Find(key)?.Value as YamlMap ?? throw new InvalidOperationException($"\"{key}\" is missing.");

    public static string Text(YamlMap map, string key) => map.Find(key)?.Value is YamlText text ? text.Value : throw new InvalidOperationException($"\"{key}\" is missing.");

    public static double Number(YamlMap map, string key) =>
        Numbers.TryRead(Text(map, key), out double value) ? value : throw new InvalidOperationException(string.Create(CultureInfo.InvariantCulture, $"{key}: {Text(map, key)} is no number."));
}
