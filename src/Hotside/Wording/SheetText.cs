using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Studies;

namespace Hotside.Wording;

/// <summary>The words of a sheet that belong to no single part.</summary>
internal static class SheetText
{
    /// <summary>The supply, for the note beside a headline.</summary>
    public static string System(ElectricalSystem system, Vocabulary words) =>
        system.ToString().Replace("ground", words.Ground, StringComparison.Ordinal);

    /// <summary>The supply of both circuits in one line.</summary>
    public static string Supply(Alteration alteration, Vocabulary words)
    {
        string before = System(alteration.Before.System, words), after = System(alteration.After.System, words);
        return alteration.Changes.IsEmpty ? before : before == after ? $"before and after: {after}" : $"before: {before}; after: {after}";
    }

    /// <summary>What stands above the list of changes.</summary>
    public static string ListHead(Alteration alteration)
    {
        if (alteration.Changes.IsEmpty) return "No changes.";
        string last = Numbers.Whole(alteration.Changes.Length);
        bool batteryLast = alteration.Changes is [.., var end] && end.Acts.Any(a => a is Fit or Replace or Reverse && a.Items.Any(i => alteration.After.FindPart(i) is { IsStandingSource: true }));
        string back = batteryLast ? $"back in with {last}" : $"back on after {last}";
        string battery = alteration.Before.Parts.Any(p => p.IsStandingSource) ? $" Battery off before 1, {back}." : "";
        return $"Changes, in order of work.{battery} The workshop manual and local rules take precedence.";
    }

    /// <summary>What a wire label means.</summary>
    public static string LabelMeaning(Alteration alteration)
    {
        var sizes = alteration.Before.Conductors.Concat(alteration.After.Conductors).Select(c => c.Wire.Size).OfType<WireSize>().ToArray();
        bool awg = sizes.Any(s => s.Gauge is not null), metric = sizes.Any(s => s.Gauge is null);
        string size = awg && metric ? "size, AWG or mm²" : metric ? "size in mm²" : "size, AWG";
        return size + "; colour, IEC 60757";
    }

    /// <summary>A potential as the rail has it: the sign is the vehicle's, not the tool's.</summary>
    public static string Potential(SourcePoles source) => QuantityWords.Volts(source.PlusIsFeed ? source.Volts : -source.Volts);

    /// <summary>What the picture shows, in sentences that replace it.</summary>
    public static string Description(Alteration alteration, Study study, Vocabulary words)
    {
        string before = $"Before, {System(alteration.Before.System, words)}: {Verdicts(study.Before, words)}";
        if (alteration.Changes.IsEmpty) return before["Before, ".Length..];
        return $"{before} After, {System(alteration.After.System, words)}: {Verdicts(study.After, words)} {Numbers.Whole(alteration.Changes.Length)} changes, numbered on the drawing and in the list.";
    }

    private static string Verdicts(CircuitStudy study, Vocabulary words)
    {
        var loads = study.Loads.Where(l => !l.Element.IsInternal).ToArray();
        if (loads.Length == 0) return "no loads.";
        return string.Join("; ", loads.Select(l => $"{l.Name} {Is(l, study, words)}")) + ".";
    }

    private static string Is(LoadStudy load, CircuitStudy study, Vocabulary words)
    {
        var caption = VerdictCaption.Of([load], study)[0];
        string by = caption.By.StartsWith(load.Element.Name + " ", StringComparison.Ordinal) ? caption.By[(load.Element.Name.Length + 1)..] : caption.By;
        string side = load.Side switch
        {
            SwitchedSide.HotSwitched => "is hot-switched",
            SwitchedSide.GroundSwitched => $"is {words.Ground}-switched",
            SwitchedSide.BothSides => "is switched on both sides",
            SwitchedSide.Unswitched => "is always fed",
            SwitchedSide.InSeries => "is in series",
            _ => "never comes on:",
        };
        return by.Length == 0 ? side : side + " " + by;
    }
}
