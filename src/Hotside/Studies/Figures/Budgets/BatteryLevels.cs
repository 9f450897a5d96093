using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Studies.Figures.Budgets;

/// <summary>
/// The batteries of a circuit by how many of them stand beneath: those of one level lie side by side and share what is drawn, levels in series each give all of it. What
/// hangs on a tap is drawn from some levels only.
/// </summary>
internal sealed class BatteryLevels
{
    private readonly ImmutableArray<ImmutableArray<SourcePoles>> levels;

    /// <summary>The levels of a circuit.</summary>
    public BatteryLevels(Circuit circuit)
    {
        SourcePoles[] batteries = [.. circuit.Sources.Where(s => s.Part.IsStandingSource)];
        var nodes = Nodes.Of(circuit, throughLinks: true);
        int[] beneath = new int[batteries.Length];
        // Each look finds one level more.
        for (int look = 1; look < batteries.Length; look++)
            for (int i = 0; i < batteries.Length; i++)
                for (int j = 0; j < batteries.Length; j++)
                    if (i != j && !nodes.AreOne(batteries[j].Feed, circuit.System.ReturnNode) && nodes.AreOne(batteries[i].Return, batteries[j].Feed))
                        beneath[i] = Math.Min(Math.Max(beneath[i], beneath[j] + 1), batteries.Length - 1);
        levels = [.. batteries.Select((b, i) => (Battery: b, Level: beneath[i])).GroupBy(b => b.Level, b => b.Battery).OrderBy(g => g.Key).Select(g => g.ToImmutableArray())];
    }

    /// <summary>The least charge that a battery is stated to have, from 0 to 1; 1 where none states it.</summary>
    public double Charge => levels.SelectMany(l => l).Select(b => b.Part.Rated(b.Element.Name, Unit.Percent) / 100 ?? 1).DefaultIfEmpty(1).Min();

    /// <summary>The ampere-hours of the whole: those of the level that has least; <see langword="null"/> where there is no battery, or one states none.</summary>
    public double? AmpereHours => levels.IsEmpty ? null : levels.Select(HoursOf).Aggregate((a, b) => a is { } one && b is { } other ? Math.Min(one, other) : null);

    /// <summary>The amperes that the batteries give: of the level that gives most.</summary>
    public double Given(SettingFigures figures) => levels.Select(l => AmperesOf(l, figures)).DefaultIfEmpty().Max();

    /// <summary>The hours until the first level is empty; <see langword="null"/> where ampere-hours are not stated.</summary>
    /// <param name="figures">What is drawn.</param>
    /// <param name="usable">What part of its ampere-hours a battery may lose.</param>
    public double? HoursTillEmpty(SettingFigures figures, double usable) => AmpereHours is null ? null
        : levels.Select(l => (Hours: HoursOf(l)!.Value, Amperes: AmperesOf(l, figures))).Where(l => l.Amperes > 0).Select(l => (double?)(l.Hours * usable / l.Amperes)).Min();

    /// <summary>The volts at the posts: of each level those of the battery that gives most, summed over the levels that give about as much as the one that gives most.</summary>
    public double VoltsAtPosts(SettingFigures figures)
    {
        double most = Given(figures);
        return levels.Where(l => AmperesOf(l, figures) > most / 2).Sum(l => l.Select(b => FigureOf(b, figures)).MaxBy(f => f.Current.Amperes)!.Voltage.Volts);
    }

    private static double? HoursOf(ImmutableArray<SourcePoles> level)
    {
        double?[] each = [.. level.Select(b => b.Part.Rated(b.Element.Name, Unit.AmpereHour))];
        return each.All(h => h is not null) ? each.Sum() : null;
    }

    private static double AmperesOf(ImmutableArray<SourcePoles> level, SettingFigures figures) => level.Sum(b => FigureOf(b, figures).Current.Amperes);

    private static ElementFigure FigureOf(SourcePoles battery, SettingFigures figures) => figures.Element($"{battery.Part.Id}.{battery.Element.Name}");
}
