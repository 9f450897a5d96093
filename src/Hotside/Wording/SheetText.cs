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

    /// <summary>What a sheet that shows some loads only is called.</summary>
    public static string FigureTitle(IEnumerable<string> loads, string job, Alteration alteration, Vocabulary words)
    {
        var named = loads.Select(n => (alteration.Whole.After.FindPart(n.Split('.')[0]) ?? alteration.Whole.Before.FindPart(n.Split('.')[0])) is { } part ? $"{n} ({words.Title(part)})" : n);
        return $"{PartWords.And([.. named])}, {job}";
    }

    /// <summary>On which sheets something is; nothing where on none.</summary>
    public static string OnSheets(IReadOnlyCollection<string> sheets) => sheets.Count == 0 ? "" : $"sheet{(sheets.Count > 1 ? "s" : "")} {string.Join(", ", sheets)}";

    /// <summary>What stands above the list of changes.</summary>
    public static string ListHead(Alteration alteration)
    {
        if (alteration.Changes.IsEmpty) return "No changes.";
        var whole = alteration.Whole;
        // What was fitted otherwise than planned has numbers of its own, and came when it came.
        var planned = (whole.Plan ?? whole).Changes;
        string last = Numbers.Whole(planned.Length);
        bool batteryLast = planned is [.., var end] && end.Acts.Any(a => a is Fit or Replace or Reverse && a.Items.Any(i => whole.After.FindPart(i) is { IsStandingSource: true }));
        string back = batteryLast ? $"back in with {last}" : $"back on after {last}";
        string battery = whole.Before.Parts.Any(p => p.IsStandingSource) ? $" Battery off before 1, {back}." : "";
        string which = whole == alteration ? "Changes" : $"Changes to what is shown, of {last} in all";
        return $"{which}, in order of work.{battery} The workshop manual and local rules take precedence.";
    }

    /// <summary>What the look of a new wire means; short, for the legend shares its row with the title block.</summary>
    public static string NewMeaning(Alteration alteration) => alteration.Changes.SelectMany(c => c.Acts).Any(a => a is Run or Cut) ? "run new" : "new";

    /// <summary>What the outline of a new part means, of what is done: <c>part fitted</c>, <c>part replaced</c>, <c>part fitted or replaced</c>.</summary>
    public static string NewPartMeaning(Alteration alteration)
    {
        Act[] acts = [.. alteration.Changes.SelectMany(c => c.Acts)];
        string[] done = [.. new[] { acts.Any(a => a is Fit) ? "fitted" : "", acts.Any(a => a is Replace) ? "replaced" : "" }.Where(t => t.Length > 0)];
        return done.Length == 0 ? "new part" : "part " + string.Join(" or ", done);
    }

    /// <summary>What the outline of a part that is turned or remounted means.</summary>
    public static string MovedPartMeaning(Alteration alteration) => alteration.Changes.SelectMany(c => c.Acts).Any(a => a is Remount) ? "part with leads swapped, or remounted" : "part with leads swapped";

    /// <summary>What the look of a moved wire means.</summary>
    public static string MovedMeaning(Alteration alteration)
    {
        var moves = alteration.Changes.SelectMany(c => c.Acts).OfType<Move>().ToArray();
        return moves.Any(m => m.Ends.Length > 1) ? moves.All(m => m.Ends.Length > 1) ? "move both ends" : "move one end or both" : "move one end";
    }

    /// <summary>What a wire label means.</summary>
    public static string LabelMeaning(Alteration alteration, Vocabulary words)
    {
        var sizes = alteration.Before.Conductors.Concat(alteration.After.Conductors).Select(c => c.Wire.Size).OfType<WireSize>().ToArray();
        bool awg = sizes.Any(s => s.Gauge is not null), metric = sizes.Any(s => s.Gauge is null);
        string size = awg && metric ? "AWG or mm²" : metric ? "mm²" : "AWG size";
        return $"{size}, IEC 60757 {words.Color}";
    }

    /// <summary>A potential as the rail has it: the sign is the vehicle's, not the tool's.</summary>
    public static string Potential(SourcePoles source) => QuantityWords.Volts(source.PlusIsFeed ? source.Volts : -source.Volts);

    /// <summary>The potential of a feed before and after; once where it stays.</summary>
    public static string Potentials(string before, string after) =>
        before == after ? after : string.Join(", ", new[] { before.Length > 0 ? "before " + before : "", after.Length > 0 ? "after " + after : "" }.Where(t => t.Length > 0));

    /// <summary>How an overlay is read, and what its symbols cannot show: which way round a source stood before.</summary>
    /// <param name="alteration">The alteration.</param>
    /// <param name="goes">Whether something goes.</param>
    /// <param name="lay">Whether the place where a moved wire lay is shown.</param>
    /// <param name="words">Whose words.</param>
    public static string OverlayNote(Alteration alteration, bool goes, bool lay, Vocabulary words)
    {
        var turned = alteration.After.Sources.Where(s => alteration.Before.Sources.Any(b => b.Part.Id == s.Part.Id && b.PlusIsFeed != s.PlusIsFeed));
        var notes = turned.Select(s => $"{s.Part.Id}: its {Pole(s)} pole goes to {Return(alteration.After, words)}; before, its {(s.PlusIsFeed ? "plus" : "minus")} pole was on {Return(alteration.Before, words)}.");
        string[] styles = [.. goes ? ["what goes is dashed"] : Array.Empty<string>(), .. lay ? ["where a moved wire lay is dotted"] : Array.Empty<string>()];
        return string.Join(" ", notes.Prepend("All is drawn as it will be" + (styles.Length > 0 ? "; " + string.Join(", ", styles) : "") + "."));
    }

    // The pole on the side of the return.
    private static string Pole(SourcePoles source) => source.PlusIsFeed ? "minus" : "plus";

    private static string Return(Circuit circuit, Vocabulary words) => circuit.System.Return is { } node ? EndWords.Of(node, circuit) : words.Ground;

    /// <summary>What the picture shows, in sentences that replace it.</summary>
    /// <param name="alteration">The alteration.</param>
    /// <param name="study">Both circuits' studies.</param>
    /// <param name="words">Whose words.</param>
    /// <param name="hasBefore">Whether it shows the circuit as it was.</param>
    /// <param name="hasAfter">Whether it shows the circuit as it will be.</param>
    public static string Description(Alteration alteration, Study study, Vocabulary words, bool hasBefore = true, bool hasAfter = true)
    {
        string Of(string view, CircuitStudy circuit) => $"{view}{System(circuit.Circuit.System, words)}: {Verdicts(circuit, words)}";
        if (alteration.Changes.IsEmpty) return Of("", study.Before);
        string changes = $"{Numbers.Whole(alteration.Changes.Length)} changes, numbered on the drawing and in the list.";
        return string.Join(" ", [.. hasBefore ? [Of("Before, ", study.Before)] : Array.Empty<string>(), .. hasAfter ? [Of("After, ", study.After)] : Array.Empty<string>(), changes]);
    }

    private static string Verdicts(CircuitStudy study, Vocabulary words)
    {
        var loads = study.Loads.Where(l => !l.Element.IsInternal).ToArray();
        if (loads.Length == 0) return "no loads.";
        return string.Join("; ", loads.Select(l => $"{l.Name} {Is(l, study, words)}")) + ".";
    }

    private static string Is(LoadStudy load, CircuitStudy study, Vocabulary words)
    {
        string by = VerdictCaption.ByOf(load, study);
        string side = load.Side switch
        {
            SwitchedSide.Unswitched => "is always fed",
            SwitchedSide.Dead => "never comes on:",
            SwitchedSide.Elsewhere when by.Length > 0 => "is fed",
            var other => "is " + SideText.Of(other, words),
        };
        return by.Length == 0 ? side : side + " " + by;
    }
}
