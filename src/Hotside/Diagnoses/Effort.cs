using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Notation;

namespace Hotside.Diagnoses;

/// <summary>How much trouble a reading is: data, to be compared, in no unit.</summary>
internal sealed class Effort
{
    private static readonly Lazy<Effort> standard = new(() => new(DiagnosisData.Map("effort.yaml")));

    /// <summary>The names of its numbers, places left out.</summary>
    public static readonly ImmutableArray<string> Names = ["look", "volts", "drop", "fuse", "ohms", "ohms with a fuse pulled", "second person", "another setting"];

    private readonly ImmutableDictionary<string, double> numbers, places, far;

    private Effort(YamlMap map)
        : this(DiagnosisData.Text(map, "source"), Names.ToImmutableDictionary(n => n, n => DiagnosisData.Number(map, n), StringComparer.Ordinal), Table(map, "places"), Table(map, "far"))
    {
    }

    private Effort(string source, ImmutableDictionary<string, double> numbers, ImmutableDictionary<string, double> places, ImmutableDictionary<string, double> far)
    {
        (Source, this.numbers, this.places, this.far) = (source, numbers, places, far);
        double Of(string key) => numbers[key];
        (Look, Volts, Drop, Fuse) = (Of("look"), Of("volts"), Of("drop"), Of("fuse"));
        (Ohms, OhmsPulled, SecondPerson, Setting) = (Of("ohms"), Of("ohms with a fuse pulled"), Of("second person"), Of("another setting"));
    }

    /// <summary>The same with other numbers.</summary>
    public Effort With(IReadOnlyDictionary<string, double> others, IReadOnlyDictionary<string, double> morePlaces, IReadOnlyDictionary<string, double> moreFar) =>
        new(Source, numbers.SetItems(others), places.SetItems(morePlaces), far.SetItems(moreFar));

    private static ImmutableDictionary<string, double> Table(YamlMap map, string key) =>
        DiagnosisData.Map(map, key) is var table ? table.Entries.ToImmutableDictionary(e => e.Key.Value, e => DiagnosisData.Number(table, e.Key.Value), StringComparer.Ordinal) : [];

    /// <summary>The numbers of the library.</summary>
    public static Effort Standard => standard.Value;

    /// <summary>Where the numbers of the library are from.</summary>
    public string Source { get; }

    /// <summary>What it has a number for of the places of parts: kinds, letters of classes, others.</summary>
    public IEnumerable<string> Places => places.Keys;

    public double Look { get; }

    public double Volts { get; }

    public double Drop { get; }

    public double Fuse { get; }

    /// <summary>Ohms, the battery taken out.</summary>
    public double Ohms { get; }

    public double OhmsPulled { get; }

    /// <summary>Somebody else has to hold a pedal or a button.</summary>
    public double SecondPerson { get; }

    /// <summary>Switches are put elsewhere.</summary>
    public double Setting { get; }

    /// <summary>What it takes to get at a part.</summary>
    public double ToReach(Part? part)
    {
        if (part is null) return places["W"];
        if (part.Place is { } place)
            foreach (var (words, more) in far.OrderBy(f => f.Key, StringComparer.Ordinal))
                if (place.Contains(words, StringComparison.OrdinalIgnoreCase)) return more;
        return places.TryGetValue(part.Kind.Id, out double known) || places.TryGetValue(part.Kind.Letter, out known) ? known : places["other"];
    }
}
