using Hotside.Circuits;
using Hotside.Studies;
using Hotside.Studies.Figures;
using Hotside.Wording;

namespace Hotside.Drawings.Plans;

/// <summary>The figures of a setting that stand at conductors, in both circuits.</summary>
internal sealed class LineFigures
{
    private readonly ShownFigures shown;
    private readonly string setting;
    private readonly SettingFigures? before, after;
    private readonly LivePaths? waysBefore, waysAfter;
    private readonly LineMarks? marks;

    /// <summary>Other texts and marks than those of a setting.</summary>
    public LineFigures(LineMarks marks) => (this.marks, setting) = (marks, "");

    private LineFigures(Study study, ShownFigures shown, string setting, SettingFigures? before, SettingFigures? after)
    {
        (this.shown, this.setting, this.before, this.after) = (shown, setting, before, after);
        // An excerpt shows figures of the whole.
        waysBefore = before is null ? null : new(study.Before.Circuit, before);
        waysAfter = after is null ? null : new(study.After.Circuit, after);
    }

    /// <summary>What they are, for the legend.</summary>
    public string Meaning => marks?.Meaning ?? shown switch
    {
        ShownFigures.Currents => $"current in it, {setting}",
        ShownFigures.Drops => $"volts lost along it, {setting}",
        _ => $"volts at its ends against the return, {setting}",
    };

    /// <summary>What the band means, for the legend.</summary>
    public string LiveMeaning => marks?.BandMeaning ?? $"carries current, {setting}";

    /// <summary>The figures of a setting; one circuit may lack it.</summary>
    /// <exception cref="ArgumentException">Neither circuit has the setting; the message names the nearest.</exception>
    public static LineFigures? Of(Study study, ShownFigures shown, string? setting)
    {
        if (shown == ShownFigures.None) return null;
        ArgumentException.ThrowIfNullOrWhiteSpace(setting);
        SettingFigures? was = study.Before.FindSetting(setting)?.Figures, now = study.IsAltered ? study.After.FindSetting(setting)?.Figures : was;
        return was is null && now is null ? throw study.Before.UnknownSetting(setting) : new(study, shown, setting, was, now);
    }

    /// <summary>What stands at a conductor; empty where there is nothing to tell.</summary>
    public string TextOf(Conductor conductor, bool isBefore)
    {
        if (marks is not null) return isBefore == marks.IsBefore ? marks.Texts.GetValueOrDefault(conductor.Id, "") : "";
        if ((isBefore ? before : after) is not { } figures) return "";
        var carried = figures.Conductor(conductor.Id);
        return shown switch
        {
            ShownFigures.Currents => IsLive(conductor.Id, isBefore) ? Numbers.ThreeFigures(Math.Abs(carried.Current.Amperes)) + " A" : "",
            ShownFigures.Drops => IsLive(conductor.Id, isBefore) && !carried.IsAssumed ? Numbers.Fixed(Math.Abs(carried.Drop.Volts), 3) + " V" : "",
            _ => conductor.From.IsFree || conductor.To.IsFree ? "" : Volts(figures, conductor),
        };
    }

    /// <summary>What stands at a part; empty for most.</summary>
    public string TextOf(Part part, bool isBefore) => marks is not null && isBefore == marks.IsBefore ? marks.AtParts.GetValueOrDefault(part.Id, "") : "";

    /// <summary>Whether a conductor is a way of the current.</summary>
    public bool IsLive(string conductor, bool isBefore) => (marks is not null && isBefore == marks.IsBefore && marks.Banded.Contains(conductor)) || (isBefore ? waysBefore : waysAfter)?.Has(conductor) == true;

    /// <summary>Whether what a terminal is bolted to is a way of the current.</summary>
    public bool IsLive(End joint, bool isBefore) => (marks is not null && isBefore == marks.IsBefore && marks.Banded.Contains(joint.ToString())) || (isBefore ? waysBefore : waysAfter)?.Has(joint) == true;

    /// <summary>What the sources do, for the headline of a view.</summary>
    public string Note(bool isBefore, Vocabulary words)
    {
        if (marks is not null) return isBefore == marks.IsBefore ? marks.Note : "";
        if ((isBefore ? before : after) is not { } figures) return $"; nothing here is called \"{setting}\"";
        string[] sources = [.. figures.Sources.Select(s => FigureText.Source(s, figures.Shorted, words)).OfType<string>()];
        return $"; {setting}: {string.Join("; ", sources)}";
    }

    private static string Volts(SettingFigures figures, Conductor conductor)
    {
        string[] ends = [.. conductor.Ends.Select(e => e == End.Chassis ? QuantityWords.MeterVolts(0) : figures.Terminals.First(t => t.End == e).Voltage is { } volts ? QuantityWords.MeterVolts(volts.Volts) : "floats")];
        return ends[0] == ends[1] ? ends[0] : $"{ends[0].Replace(" V", "", StringComparison.Ordinal)} to {ends[1]}";
    }
}
