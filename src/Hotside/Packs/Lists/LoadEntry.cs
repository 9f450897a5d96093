using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Sizing.Currents;
using Hotside.Sizing.Drops;
using Hotside.Studies;
using Hotside.Studies.Figures.Budgets;
using Hotside.Wording;

namespace Hotside.Packs.Lists;

/// <summary>A load before and after, as the load table has it.</summary>
/// <param name="Name">Its name, such as <c>E3.tail</c>.</param>
/// <param name="Was">What was found of it before; <see langword="null"/> when it is new.</param>
/// <param name="Now">What was found of it after; <see langword="null"/> when it goes.</param>
internal sealed record LoadEntry(string Name, LoadStudy? Was, LoadStudy? Now)
{
    /// <summary>What it is called.</summary>
    public required string Title { get; init; }

    /// <summary>What it draws when it alone is on, in amperes; <see langword="null"/> where that is not known.</summary>
    public double? Amperes { get; private init; }

    /// <summary>The fuses that its current passes; ids.</summary>
    public ImmutableArray<string> Fuses { get; private init; } = [];

    /// <summary>The thinnest wire of its ways, with its size; empty when none is known.</summary>
    public string Thinnest { get; private init; } = "";

    /// <summary>What its wires, contacts and joints lose on the way there and back, as a share of what they may; <see langword="null"/> where it was not worked out.</summary>
    public (double Volts, double Limit)? Drop { get; private init; }

    /// <summary>Its mean current by day and by night in rain; <see langword="null"/> for what is on by event.</summary>
    public BudgetLine? Budget { get; private init; }

    /// <summary>What is said of it now, or was.</summary>
    public LoadStudy Load => Now ?? Was!;

    /// <summary>All loads: those of the after circuit, then those that go.</summary>
    public static ImmutableArray<LoadEntry> All(PackSource source)
    {
        var (before, after) = (source.Job.Study.Before, source.Job.Study.After);
        LoadStudy[] were = [.. before.Loads.Where(l => !l.Element.IsInternal)], are = [.. after.Loads.Where(l => !l.Element.IsInternal)];
        var drops = new CircuitDrops(after, new InLineGraph(source.Job.Sizes.After.Model)).All;
        return
        [
            .. are.Select(l => Of(were.FirstOrDefault(w => w.Name == l.Name), l, after, drops, source)),
            .. were.Where(w => are.All(l => l.Name != w.Name)).Select(w => Of(w, null, before, [], source)),
        ];
    }

    /// <summary>A side in the word that a column has room for.</summary>
    public static string Side(LoadStudy? load, Vocabulary words) => load?.Side switch
    {
        null => "–",
        SwitchedSide.HotSwitched => words.Hot,
        SwitchedSide.GroundSwitched => words.Ground,
        SwitchedSide.BothSides => "both",
        SwitchedSide.Unswitched => "always on",
        SwitchedSide.InSeries => "in series",
        SwitchedSide.Elsewhere => "elsewhere",
        _ => "never",
    };

    private static LoadEntry Of(LoadStudy? was, LoadStudy? now, CircuitStudy study, ImmutableArray<CircuitDrop> drops, PackSource source)
    {
        var load = now ?? was!;
        var ways = load.Paths.SelectMany(p => p.HotWay.Concat(p.GroundWay)).Distinct(StringComparer.Ordinal).ToArray();
        var thinnest = ways.Select(study.Circuit.FindConductor).OfType<Conductor>().Where(c => c.Wire.Size is not null).MinBy(c => c.Wire.Size!.Value.Area);
        var drop = drops.FirstOrDefault(d => d.Load.Name == load.Name);
        return new(load.Name, was, now)
        {
            Title = load.Part.Kind.Elements.Count(e => e is { IsConsumer: true, IsInternal: false }) > 1 ? $"{source.Words.Title(load.Part)}, {load.Element.Name}" : source.Words.Title(load.Part),
            Amperes = study.FiguresOf(load)?.Elements.FirstOrDefault(e => e.Part.Id == load.Part.Id && e.Element.Name == load.Element.Name) is { } figure ? Math.Abs(figure.Current.Amperes) : null,
            Fuses = [.. ways.Where(w => study.Circuit.FindPart(w) is { } part && part.Kind.Elements.Any(e => e.Type is ElementType.Fuse or ElementType.Breaker) && part.Kind.Elements.All(e => !e.IsConsumer))],
            Thinnest = thinnest is null ? "" : $"{thinnest.Wire.Size} ({thinnest.Id})",
            Drop = drop is null ? null : (drop.Volts, drop.Limit.Volts),
            Budget = now is null ? null : study.Budget.Loads.FirstOrDefault(b => b.Load.Name == load.Name),
        };
    }
}
