using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Notation;

namespace Hotside.Diagnoses;

/// <summary>How much trouble a reading is: data, to be compared, in no unit.</summary>
internal sealed class Effort
{
    private static readonly Lazy<Effort> standard = new(() => new(DiagnosisData.Map("effort.yaml")));

    private readonly ImmutableDictionary<string, double> places, far;

    private Effort(YamlMap map)
    {
        double Of(string key) => DiagnosisData.Number(map, key);
        (Look, Volts, Drop, Fuse) = (Of("look"), Of("volts"), Of("drop"), Of("fuse"));
        (Ohms, OhmsPulled, SecondPerson, Setting) = (Of("ohms"), Of("ohms with a fuse pulled"), Of("second person"), Of("another setting"));
        places = Table("places");
        far = Table("far");

        ImmutableDictionary<string, double> Table(string key) =>
            DiagnosisData.Map(map, key) is var table ? table.Entries.ToImmutableDictionary(e => e.Key.Value, e => DiagnosisData.Number(table, e.Key.Value), StringComparer.Ordinal) : [];
    }

    /// <summary>The numbers of the library.</summary>
    public static Effort Standard => standard.Value;

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
