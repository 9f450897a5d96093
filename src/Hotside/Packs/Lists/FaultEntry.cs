using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Studies;
using Hotside.Studies.Figures;
using Hotside.Wording;

namespace Hotside.Packs.Lists;

/// <summary>The first readings to take where a load is dead: behind its fuse, at its feed, at its return, with the load switched on.</summary>
/// <param name="Load">The load.</param>
/// <param name="Setting">How it is switched on.</param>
internal sealed record FaultEntry(LoadStudy Load, string Setting)
{
    /// <summary>What a sound circuit shows, point by point, black lead on the return: volts with their true sign.</summary>
    public ImmutableArray<(string At, double Volts)> Readings { get; private init; } = [];

    /// <summary>All loads that can be switched on and measured, in the order of the circuit.</summary>
    public static ImmutableArray<FaultEntry> All(PackSource source) =>
        [.. source.Job.Study.After.Loads.Where(l => !l.Element.IsInternal).Select(l => Of(l, source.Job.Study.After, source.Words)).OfType<FaultEntry>()];

    private static FaultEntry? Of(LoadStudy load, CircuitStudy study, Vocabulary words)
    {
        if (load.Paths.IsEmpty || study.FiguresOf(load) is not { } figures) return null;
        string when = load.Control.IsAlways ? "always on" : load.Control.Any.MinBy(c => c.All.Length)!.ToString();
        var ends = new[] { BehindFuse(load, study.Circuit), load.Paths[0].FeedEnd, load.Paths[0].ReturnEnd }.OfType<End>().Where(e => e.Part is not null).Distinct();
        ImmutableArray<(string, double)> readings = [.. ends.Select(e => (At: study.Circuit.TextOf(e), Volts: VoltsAt(e, figures))).Where(r => r.Volts is not null).Select(r => (r.At, r.Volts!.Value))];
        return readings.IsEmpty ? null : new(load, Vocabulary.Capital(when)) { Readings = readings };
    }

    // Where the current leaves the last fuse before the load.
    private static End? BehindFuse(LoadStudy load, Circuit circuit)
    {
        var way = load.Paths[0].HotWay;
        for (int i = way.Length - 2; i >= 0; i--)
            if (circuit.FindPart(way[i]) is { } part && part.Kind.Elements.Any(e => e.Type is ElementType.Fuse or ElementType.Breaker) && circuit.FindConductor(way[i + 1]) is { } wire)
                return wire.Ends.FirstOrDefault(e => e.Part == part.Id) is { Part: not null } end ? end : null;
        return null;
    }

    private static double? VoltsAt(End end, SettingFigures figures) => figures.Terminals.FirstOrDefault(t => t.End == end)?.Voltage?.Volts;
}
