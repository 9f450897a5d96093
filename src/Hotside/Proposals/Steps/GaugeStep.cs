using Hotside.Circuits;
using Hotside.Proposals.Exposures;
using Hotside.Proposals.Rules;
using Hotside.Studies;

namespace Hotside.Proposals.Steps;

/// <summary>Gauges keep their volts behind one regulated reducer for each group, at the lowest point that feeds the group and nothing else.</summary>
internal static class GaugeStep
{
    // What a reducer may give beyond what its gauges take at most (common practice, no source), and the volts of a vehicle that charges over nominal.
    private const double Spare = 1.25, Charging = 14.5 / 12;

    /// <summary>Protects gauges.</summary>
    public static void Run(Workbench work, List<(Part Part, Exposure Exposure)> gauges)
    {
        var loads = work.Before.Study.Loads.Where(l => gauges.Any(g => g.Part.Id == l.Part.Id && !l.Element.IsInternal)).ToArray();
        HashSet<string> ids = [.. gauges.Select(g => g.Part.Id)];
        var fed = loads.Where(l => l.Paths.Length > 0 && l.Paths[0].Hot.Length > 0).ToArray();
        bool IsOwn(string wire) => work.Before.Study.Loads.All(l => ids.Contains(l.Part.Id) || l.Paths.All(p => !p.Hot.Contains(wire)));
        foreach (var group in fed.Where(l => l.Paths[0].Hot.Any(IsOwn)).GroupBy(l => PointOf(l, l.Paths[0].Hot.First(IsOwn)), StringComparer.Ordinal))
            Protect(work, [.. group], [.. gauges.Where(g => group.Any(l => l.Part.Id == g.Part.Id))], IsOwn);
        foreach (var (part, exposure) in gauges.Where(g => !work.IsDecided(g.Part.Id)))
        {
            work.Decide(part.Id, DecisionKind.Check, $"it is fed by no wire of its own, so no reducer can be put before it: {work.ReasonOf(DecisionTable.Standard["gauge"], exposure)}");
            work.Ask(part.Id, "how is it fed? nothing is proposed for it yet, and it must not be powered so");
        }
    }

    // The node from which a wire comes: gauges that hang on one node are one group, and the wire itself where it serves several.
    private static string PointOf(LoadStudy load, string wire)
    {
        var way = load.Paths[0].HotWay;
        int at = way.IndexOf(wire);
        return at > 0 ? way[at - 1] : wire;
    }

    private static void Protect(Workbench work, LoadStudy[] loads, (Part Part, Exposure Exposure)[] gauges, Func<string, bool> isOwn)
    {
        double volts = gauges[0].Exposure.Rated, amperes = gauges.Sum(g => Math.Abs(g.Exposure.AmperesBefore)), most = Math.Ceiling(Spare * amperes * 2 - 1e-9) / 2;
        double heat = (work.Draft.System.Volts.Max() * Charging - volts) * amperes;
        string count = gauges.Length == 1 ? "one gauge draws" : $"{Numbers.Whole(gauges.Length)} gauges draw";
        var kind = work.Draft.KindOf("reducer");
        string id = work.Draft.Fit(new(kind)
        {
            Name = "Gauge reducer",
            Ratings = [new("V", new(work.Nominal(gauges[0].Exposure.Volts), Unit.Volt)), new("out V", new(volts, Unit.Volt)), new("out A", new(most, Unit.Ampere))],
            Case = new(work.Return),
        }, $"{count} {Numbers.Brief(amperes)} A at most, and it sheds {Numbers.Brief(heat)} W while the battery is charged");
        work.Decide(id, DecisionKind.Fit, $"it holds {Numbers.Brief(volts)} V for {string.Join(", ", gauges.Select(g => g.Part.Id))}");
        work.Comment(id, DecisionTable.Standard["gauge"].Caution + "; bare metal, in air");
        work.Draft.Note(id).Works.Add($"prove it on the bench: {Numbers.Brief(work.Draft.System.Volts.Max())} V at in, case to {(work.Thought.Circuit.Sources.Any(s => s.PlusIsFeed) ? "minus" : "plus")}, then {Numbers.Brief(volts)} V at out");
        if (!work.Thought.Circuit.Sources.Any(s => s.PlusIsFeed)) work.Ask(id, "is there a reducer for positive ground? most are for negative ground");
        foreach (var (part, exposure) in gauges)
            work.Decide(part.Id, DecisionKind.Protect, work.ReasonOf(DecisionTable.Standard["gauge"], exposure), DecisionTable.Standard["gauge"], exposure);
        Insert(work, id, loads, isOwn);
        foreach (var (part, _) in gauges.Where(g => g.Part.Ratings.All(r => r.Name is not ("ohm" or "A")))) work.Ask(part.Id, "ohms of the gauge? the file states none");
    }

    // One wire that serves them all is cut off at its far end; several are moved from their common node to the reducer.
    private static void Insert(Workbench work, string id, LoadStudy[] loads, Func<string, bool> isOwn)
    {
        End entry = End.At(id, "in"), exit = End.At(id, "out");
        string? common = loads[0].Paths[0].Hot.Where(w => isOwn(w) && loads.All(l => l.Paths[0].Hot.Contains(w))).LastOrDefault();
        if (common is not null)
        {
            End far = FarEnd(work, loads[0], common);
            // What else hangs there and is none of the group stays fed by the wire's own end.
            work.Draft.Move(common, far, entry, $"{common} feeds {(loads.Length == 1 ? "this gauge" : "these gauges")} and nothing else");
            work.Run(exit, far, work.Draft.Wire(common).Wire with { LengthInMetres = 0.3, Condition = null });
            return;
        }
        var first = loads.Select(l => (Load: l, Wire: l.Paths[0].Hot.First(isOwn))).DistinctBy(p => p.Wire).ToArray();
        End node = NearEnd(work, first[0].Load, first[0].Wire);
        foreach (var (load, wire) in first) work.Draft.Move(wire, NearEnd(work, load, wire), exit, "what else hangs on that point keeps its volts");
        work.Run(node, entry, work.Draft.Wire(first[0].Wire).Wire with { LengthInMetres = 0.3, Condition = null });
    }

    private static End FarEnd(Workbench work, LoadStudy load, string wire)
    {
        var way = load.Paths[0].HotWay;
        string? next = way.ElementAtOrDefault(way.IndexOf(wire) + 1);
        var conductor = work.Draft.Wire(wire);
        return next is not null && conductor.From.Part == next && conductor.To.Part != next ? conductor.From : conductor.To.Part == next ? conductor.To : conductor.From == NearEnd(work, load, wire) ? conductor.To : conductor.From;
    }

    private static End NearEnd(Workbench work, LoadStudy load, string wire)
    {
        var way = load.Paths[0].HotWay;
        string? last = way.ElementAtOrDefault(way.IndexOf(wire) - 1);
        var conductor = work.Draft.Wire(wire);
        return conductor.To.Part == last && conductor.From.Part != last ? conductor.To : conductor.From;
    }
}
