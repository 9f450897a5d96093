using Hotside.Circuits;
using Hotside.Studies;
using Hotside.Studies.Figures;
using Hotside.Wording;

namespace Hotside.Drawings.Plans;

/// <summary>The figures of a setting that stand at conductors, in both circuits.</summary>
internal sealed class LineFigures
{
    // What a table shows as nothing marks no way.
    private const double LeastAmperes = 0.005;

    private readonly ShownFigures shown;
    private readonly string setting;
    private readonly Study study;
    private readonly SettingFigures? before, after;

    private LineFigures(Study study, ShownFigures shown, string setting, SettingFigures? before, SettingFigures? after) =>
        (this.study, this.shown, this.setting, this.before, this.after) = (study, shown, setting, before, after);

    /// <summary>What they are, for the legend.</summary>
    public string Meaning => shown switch
    {
        ShownFigures.Currents => $"current in it, {setting}",
        ShownFigures.Drops => $"volts lost along it, {setting}",
        _ => $"volts at its ends against the return, {setting}",
    };

    /// <summary>What the band means, for the legend.</summary>
    public string LiveMeaning => $"carries current, {setting}";

    /// <summary>The figures of a setting; one circuit may lack it.</summary>
    /// <exception cref="ArgumentException">Neither circuit has the setting; the message names the nearest.</exception>
    public static LineFigures? Of(Study study, ShownFigures shown, string? setting)
    {
        if (shown == ShownFigures.None) return null;
        ArgumentException.ThrowIfNullOrWhiteSpace(setting);
        SettingFigures? was = FiguresOf(study.Before, setting, out var unknown), now = ReferenceEquals(study.Before, study.After) ? was : FiguresOf(study.After, setting, out _);
        return was is null && now is null ? throw unknown! : new(study, shown, setting, was, now);
    }

    /// <summary>What stands at a conductor; empty where there is nothing to tell.</summary>
    public string TextOf(Conductor conductor, bool isBefore)
    {
        if ((isBefore ? before : after) is not { } figures) return "";
        var carried = figures.Conductor(conductor.Id);
        return shown switch
        {
            ShownFigures.Currents => IsLive(carried) ? Numbers.ThreeFigures(Math.Abs(carried.Current.Amperes)) + " A" : "",
            ShownFigures.Drops => IsLive(carried) && !carried.IsAssumed ? Numbers.Fixed(Math.Abs(carried.Drop.Volts), 3) + " V" : "",
            _ => conductor.From.IsFree || conductor.To.IsFree ? "" : Volts(figures, conductor),
        };
    }

    /// <summary>Whether a conductor carries current.</summary>
    public bool IsLive(string conductor, bool isBefore) => (isBefore ? before : after)?.Conductors.FirstOrDefault(c => c.Conductor.Id == conductor) is { } carried && IsLive(carried);

    /// <summary>Whether current passes from a terminal to what it is bolted to: what its part and its wires bring there and do not take away again (Kirchhoff's first law).</summary>
    public bool IsLive(End joint, bool isBefore)
    {
        if ((isBefore ? before : after) is not { } figures) return false;
        double amperes = figures.Conductors.Sum(c => (c.Conductor.From == joint ? c.Current.Amperes : 0) - (c.Conductor.To == joint ? c.Current.Amperes : 0));
        foreach (var element in figures.Elements.Where(e => e.Part.Id == joint.Part))
        {
            End from = Nodes.NodeOf(element.Part, element.Element.From), to = Nodes.NodeOf(element.Part, element.Element.To);
            // Inside a source current runs from the return to the feed.
            double along = element.Element.IsSource && (isBefore ? study.Before : study.After).Circuit.Sources.First(s => s.Part.Id == element.Part.Id && s.Element.Name == element.Element.Name).Feed == from
                ? -element.Current.Amperes : element.Current.Amperes;
            amperes += (from == joint ? along : 0) - (to == joint ? along : 0);
        }
        return Math.Abs(amperes) >= LeastAmperes;
    }

    /// <summary>What the sources do, for the headline of a view.</summary>
    public string Note(bool isBefore, Vocabulary words)
    {
        if ((isBefore ? before : after) is not { } figures) return $"; nothing here is called \"{setting}\"";
        string[] sources = [.. figures.Sources.Select(s => FigureText.Source(s, figures.Shorted, words)).OfType<string>()];
        return $"; {setting}: {string.Join("; ", sources)}";
    }

    private static bool IsLive(ConductorFigure carried) => Math.Abs(carried.Current.Amperes) >= LeastAmperes;

    private static string Volts(SettingFigures figures, Conductor conductor)
    {
        string[] ends = [.. conductor.Ends.Select(e => e == End.Chassis ? QuantityWords.MeterVolts(0) : figures.Terminals.First(t => t.End == e).Voltage is { } volts ? QuantityWords.MeterVolts(volts.Volts) : "floats")];
        return ends[0] == ends[1] ? ends[0] : $"{ends[0].Replace(" V", "", StringComparison.Ordinal)} to {ends[1]}";
    }

    private static SettingFigures? FiguresOf(CircuitStudy study, string setting, out ArgumentException? unknown)
    {
        unknown = null;
        try
        {
            return study.Setting(setting).Figures;
        }
        catch (ArgumentException e)
        {
            unknown = e;
            return null;
        }
    }
}
