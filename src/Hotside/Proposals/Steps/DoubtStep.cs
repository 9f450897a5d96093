using Hotside.Circuits;
using Hotside.Proposals.Rules;
using Hotside.Studies;

namespace Hotside.Proposals.Steps;

/// <summary>What the finished draft leaves open: ammeters that a fuse does not guard, and lamps' fuses while some lamps have no feed in the file.</summary>
internal static class DoubtStep
{
    /// <summary>Asks.</summary>
    public static void Run(Workbench work)
    {
        Meters(work);
        Lamps(work);
    }

    private static void Meters(Workbench work)
    {
        var bench = work.Now;
        foreach (var meter in work.Draft.Circuit.Parts)
        {
            if (meter.Kind.Elements.FirstOrDefault(e => e.Type == ElementType.Shunt) is not { } shunt || meter.Rated(shunt.Name, Unit.Ampere) is not { } scale) continue;
            var guarded = work.Draft.Circuit.Conductors.Where(c => c.Ends.Any(e => e.Part == meter.Id)).Select(c => bench.Sizes.Conductor(c.Id)).Where(s => s.GuardAmperes > scale).ToArray();
            if (guarded.Length == 0) continue;
            var worst = guarded.MaxBy(s => s.GuardAmperes)!;
            work.Ask(meter.Id, Workbench.Said(DecisionTable.Standard["metered"].Question!,
                ("fuse", string.Join(" and ", worst.ProtectedBy)), ("amperes", Numbers.Brief(worst.GuardAmperes ?? 0)), ("scale", Numbers.Brief(scale))));
        }
    }

    // A fuse whose rating was chosen for what hangs on it now, lamps for the most part.
    private static void Lamps(Workbench work)
    {
        var bench = work.Now;
        LoadStudy[] unlit = [.. bench.Study.Loads.Where(l => l is { Side: SwitchedSide.Dead, Element: { Type: ElementType.Lamp, IsInternal: false } })];
        if (unlit.Length == 0) return;
        double volts = work.Draft.System.Volts.Max();
        double amperes = unlit.Sum(l => l.Part.Rated(l.Element.Name, Unit.Watt) ?? 0) / volts;
        string items = string.Join(", ", unlit.Select(l => l.Part.Id).Distinct());
        foreach (var fuse in bench.Sizes.Fuses.Where(f => work.Decisions.Any(d => d.Item == f.Part.Id && d.Kind is DecisionKind.Replace or DecisionKind.Fit)))
        {
            var fed = bench.Study.Loads.Where(l => !l.Element.IsInternal && l.Paths.Any(p => p.HotWay.Contains(fuse.Part.Id))).ToArray();
            if (fed.Any(l => l.Element.Type == ElementType.Lamp) && fed.Count(l => l.Element.Type == ElementType.Lamp) * 2 > fed.Length)
                work.Ask(fuse.Part.Id, Workbench.Said(DecisionTable.Standard["unlit"].Question!, ("items", items), ("amperes", Numbers.Plain(amperes, 1)), ("volts", Numbers.Brief(volts))));
        }
    }
}
