using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Studies;

namespace Hotside.Wording;

/// <summary>Through what a load in series is fed where it is meant to be on, and what switches that: <c>with G3's D+, by S1</c>.</summary>
internal static class StringText
{
    /// <summary>In a few words; empty where nothing is known.</summary>
    /// <param name="load">A load in series.</param>
    /// <param name="circuit">Its circuit.</param>
    /// <param name="by">What switches a load, by its ways.</param>
    public static string Of(LoadStudy load, Circuit circuit, Func<LoadStudy, string> by)
    {
        var strings = load.MeantStrings;
        if (strings.IsEmpty) return load.InSeriesWith.IsEmpty ? "" : "with " + string.Join(", ", load.InSeriesWith);
        ImmutableArray<LoadPath> paths = [.. strings.SelectMany(s => s.Paths)];
        var passed = paths.SelectMany(p => p.HotWay.Concat(p.GroundWay)).ToHashSet(StringComparer.Ordinal);
        string with = "with " + string.Join(" or ", strings.Select(s => string.Join(", ", Others(s, load).Select(w => Named(w, s.Paths, circuit)))).Distinct());
        string switched = by(load with { Paths = paths, Chain = [.. load.Chain.Where(passed.Contains)], SwitchedBy = [.. load.SwitchedBy.Where(passed.Contains)] });
        return switched.Length == 0 ? with : $"{with}, {switched}";
    }

    // The other filament of the same lamp is seen; what lies beyond it is not.
    private static ImmutableArray<string> Others(LoadString through, LoadStudy load) =>
        through.With.RemoveAll(w => w.StartsWith(load.Part.Id + ".", StringComparison.Ordinal)) is { IsEmpty: false } others ? others : through.With;

    // Of a machine the terminal that the current comes by.
    private static string Named(string name, ImmutableArray<LoadPath> paths, Circuit circuit)
    {
        if (circuit.FindPart(name) is not { Kind.Terminals.Length: > 1 } part || part.Kind.Elements.All(e => e is not { IsSource: true, When: not null })) return name;
        // From the load outwards; where a way begins the machine feeds.
        var terminals = paths.SelectMany(p => new[] { p.HotWay.Skip(1).Reverse(), p.GroundWay }).Where(way => way.Contains(name))
            .SelectMany(way => way.Select(circuit.FindConductor).OfType<Conductor>().SelectMany(c => c.Ends).Where(e => e.Part == name).Select(e => e.Terminal).Take(1)).Distinct().ToArray();
        return terminals is [var only] ? $"{name}'s {only}" : name;
    }
}
