using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Studies;
using Hotside.Studies.Figures;
using Hotside.Wording;

namespace Hotside.Packs.Lists;

/// <summary>The first three readings to take where a load is dead, with the load switched on: behind its fuse, at its feed, at its return; where one of them cannot be reached, behind its switch or at the battery.</summary>
/// <param name="Load">The load.</param>
/// <param name="Setting">How it is switched on.</param>
internal sealed record FaultEntry(LoadStudy Load, string Setting)
{
    private const int MostReadings = 3;

    // Which points come first where there are more than three: behind the fuse, at both ends of the load; then behind the last contact, then the battery (own choice).
    private static readonly int[] Ranks = [4, 0, 3, 1, 2];

    /// <summary>What a sound circuit shows, point by point, black lead on the return: volts with their true sign.</summary>
    public ImmutableArray<(string At, double Volts)> Readings { get; private init; } = [];

    /// <summary>All loads that can be switched on and measured, in the order of the circuit.</summary>
    public static ImmutableArray<FaultEntry> All(PackSource source) =>
        [.. source.Job.Study.After.Loads.Where(l => !l.Element.IsInternal).Select(l => Of(l, source.Job.Study.After, source.Words)).OfType<FaultEntry>()];

    private static FaultEntry? Of(LoadStudy load, CircuitStudy study, Vocabulary words)
    {
        if (load.Paths.IsEmpty || study.FiguresOf(load) is not { } figures) return null;
        string when = load.Control.IsAlways ? "always on" : load.Control.Any.MinBy(c => c.All.Length)!.ToString();
        var way = load.Paths[0].HotWay;
        End?[] ends = [FeedOfSource(way, study.Circuit), BehindLast(way, study.Circuit, ElementType.Fuse, ElementType.Breaker), BehindLast(way, study.Circuit, ElementType.Contact), load.Paths[0].FeedEnd, load.Paths[0].ReturnEnd];
        var points = ends.Select((e, i) => (End: e, Rank: Ranks[i], Index: i)).Where(p => p.End?.Part is not null).Select(p => (End: p.End!.Value, p.Rank, p.Index, Volts: VoltsAt(p.End!.Value, figures))).Where(p => p.Volts is not null)
            .DistinctBy(p => study.Circuit.TextOf(p.End)).OrderBy(p => p.Rank).Take(MostReadings);
        // In the order in which the current comes by.
        int At(End end, int index) => index >= 3 ? way.Length + index : Math.Max(way.IndexOf(end.Part!), 0);
        ImmutableArray<(string, double)> readings = [.. points.OrderBy(p => At(p.End, p.Index)).Select(p => (study.Circuit.TextOf(p.End), p.Volts!.Value))];
        return readings.IsEmpty ? null : new(load, Vocabulary.Capital(when)) { Readings = readings };
    }

    private static End? FeedOfSource(ImmutableArray<string> way, Circuit circuit) =>
        way.Length > 0 && circuit.Sources.FirstOrDefault(s => s.Part.Id == way[0]) is { Part: not null } source ? source.Feed : null;

    // Where the current leaves the last of some sort before the load.
    private static End? BehindLast(ImmutableArray<string> way, Circuit circuit, params ElementType[] types)
    {
        for (int i = way.Length - 2; i >= 0; i--)
            if (circuit.FindPart(way[i]) is { } part && part.Kind.Elements.Any(e => types.Contains(e.Type)) && circuit.FindConductor(way[i + 1]) is { } wire)
                return wire.Ends.FirstOrDefault(e => e.Part == part.Id) is { Part: not null } end ? end : null;
        return null;
    }

    private static double? VoltsAt(End end, SettingFigures figures) => figures.Terminals.FirstOrDefault(t => t.End == end)?.Voltage?.Volts;
}
