using Hotside.Circuits;
using Hotside.Proposals.Exposures;
using Hotside.Sizing;
using Hotside.Sizing.Tables;
using Hotside.Studies;

namespace Hotside.Proposals.Steps;

/// <summary>Which rating a fuse gets: the smallest made that carries its circuit, bears its surges, guards its wires and is no smaller than a fuse behind it.</summary>
internal static class FuseChoice
{
    // Horns, motors and reducers at their limit take half as much again for a moment; smaller fuses than these break by handling (common practice, no source).
    private const double Surge = 1.5, Least = 5, LeastForGauges = 3, Selective = 1.25;

    /// <summary>The rating, and why; <see langword="null"/> where nothing can be said.</summary>
    public static (double Rating, string Why)? Of(Workbench work, Bench bench, FuseSizing fuse)
    {
        double most = fuse.ThinnestAmpacity?.Amperes ?? double.PositiveInfinity, amperes = fuse.Current.Amperes;
        LoadStudy[] behind = [.. Loads(work, bench, fuse)];
        // Behind an end of the page may be anything: as much as the wire carries, or what was found.
        if (IsOpenEnded(work, bench, fuse))
            return work.Draft.IsNew(fuse.Part.Id) && double.IsFinite(most) ? (FuseLadder.Ratings.Last(r => r <= most), $"{fuse.Thinnest!.Id} may carry {Numbers.Brief(most)} A, and what it feeds is not in this file") : null;
        if (amperes <= 0 || fuse.RatingNeeded is null && double.IsInfinity(most)) return null;
        double surging = behind.Where(l => l.Element.Type is ElementType.Horn or ElementType.Motor).Sum(l => l.Part.Rated(l.Element.Name, Unit.Ampere) ?? Math.Abs(bench.Greatest(l.Part, l.Element).Amperes));
        double limited = work.Draft.Circuit.Parts.Where(p => behind.Any(l => l.Part.Id == p.Id)).SelectMany(p => p.Kind.Elements.Where(e => e.Type == ElementType.Dropper).Select(e => p.Rated(e.Name, Unit.Ampere) ?? 0)).Sum();
        bool isForGauges = behind.All(l => l.Element.Type is ElementType.Gauge or ElementType.Electronics);
        double least = new[] { fuse.LeastRating.Amperes, Math.Min(surging, amperes) * Surge, limited * Surge, fuse.RatingNeeded?.Amperes ?? 0, isForGauges ? LeastForGauges : Least, Behind(work, bench, fuse), Charged(work, bench, fuse) }.Max();
        double rating = FuseLadder.Ratings.FirstOrDefault(r => r >= least - 1e-9 && r <= most + 1e-9);
        if (rating == 0) rating = FuseLadder.Ratings.FirstOrDefault(r => r >= least - 1e-9, FuseLadder.Ratings[^1]);
        bool isForCoils = behind.Length > 0 && behind.All(l => l.Element.Type == ElementType.Coil && l.Part.Kind.Elements.Any(e => e.Type == ElementType.Contact));
        string why = isForCoils ? "it feeds coils of relays alone" : limited > 0 && limited * Surge >= fuse.LeastRating.Amperes ? $"what is behind it gives {Numbers.Brief(limited)} A at most"
            : surging * Surge > fuse.LeastRating.Amperes ? $"its circuit is rated {Numbers.Brief(surging)} A, and takes half as much again for a moment"
            : $"{Numbers.Plain(amperes, 1)} A pass it at most";
        return (rating, why + (fuse.Thinnest is { } thin && double.IsFinite(most) ? $"; {thin.Id} behind it may carry {Numbers.Brief(most)} A" : ""));
    }

    /// <summary>Whether a fuse that is there gives way to another rating: where it is wrong, and by choice where it is far larger than its circuit asks for.</summary>
    public static bool IsToChange(FuseSizing fuse, double there, double rating, bool asFound)
    {
        bool isWrong = there < rating || fuse.Guards >= SizingOutcome.Warning || fuse.Carries == SizingOutcome.Failed;
        return isWrong || (!asFound && there >= 1.3 * rating);
    }

    private static bool IsOpenEnded(Workbench work, Bench bench, FuseSizing fuse)
    {
        var reached = Reached(work, bench, fuse);
        return bench.Checked.Graph.Elsewhere.Any(e => reached.Contains(e.Node));
    }

    // Ways that only pass a fuse's terminal as a stud are none of its own.
    private static IEnumerable<LoadStudy> Loads(Workbench work, Bench bench, FuseSizing fuse)
    {
        var reached = Reached(work, bench, fuse);
        var graph = bench.Checked.Graph;
        return bench.Study.Loads.Where(l => !l.Element.IsInternal && l.Paths.Any(p => p.HotWay.Contains(fuse.Part.Id)) && graph.NodesOf(l.Part, l.Element) is var (a, b)
            && ((reached.Contains(a) && a != Checks.WireGraph.Return) || (reached.Contains(b) && b != Checks.WireGraph.Return)));
    }

    // The nodes beyond the fuse.
    private static HashSet<int> Reached(Workbench work, Bench bench, FuseSizing fuse)
    {
        var graph = bench.Checked.Graph;
        var (a, b) = graph.NodesOf(work.Draft.Part(fuse.Part.Id), fuse.Element);
        var feeds = work.Draft.Circuit.Sources.Where(s => s.Element.When is null).Select(s => graph.NodeOf(s.Feed)).ToArray();
        var fed = graph.Reach(feeds, e => e.IsInLine && e.Part?.Id != fuse.Part.Id);
        return graph.Reach([fed.Contains(a) ? b : a], e => e.IsInLine && e.Part?.Id != fuse.Part.Id);
    }

    // A fuse of the main feed outlives those of the branches.
    private static double Behind(Workbench work, Bench bench, FuseSizing fuse)
    {
        double greatest = 0;
        foreach (var path in bench.Study.Loads.SelectMany(l => l.Paths).Where(p => p.HotWay.Contains(fuse.Part.Id)))
            foreach (string id in path.HotWay.Skip(path.HotWay.IndexOf(fuse.Part.Id) + 1))
                if (work.Draft.Circuit.FindPart(id) is { Kind.Elements: [{ Type: ElementType.Fuse } element] } other && other.Rated(element.Name, Unit.Ampere) is { } rating)
                    greatest = Math.Max(greatest, rating);
        return greatest;
    }

    // What a machine gives to an empty battery passes the main fuse too.
    private static double Charged(Workbench work, Bench bench, FuseSizing fuse)
    {
        double greatest = 0;
        foreach (var machine in work.Draft.Circuit.Parts.Where(p => p.Kind.Elements.Any(Checks.Trade.IsMachine)))
        {
            var output = machine.Kind.Elements.First(Checks.Trade.IsMachine);
            string terminal = machine.Kind.TerminalNamed(output.From) ?? output.From;
            if (machine.Rated(output.Name, Unit.Ampere) is { } amperes && FeedWay.Of(bench, End.At(machine.Id, terminal)).Parts.Any(p => p.Id == fuse.Part.Id))
                greatest = Math.Max(greatest, Selective * amperes);
        }
        return greatest;
    }
}
