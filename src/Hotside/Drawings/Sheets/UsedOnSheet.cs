using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.Drawings.Marks;
using Hotside.Drawings.Pictures;
using Hotside.Drawings.Plans;
using Hotside.Layouts;
using Hotside.Studies;
using Hotside.Symbols;
using Hotside.Wording;

namespace Hotside.Drawings.Sheets;

/// <summary>The legend's entries: all that the shown views use, and nothing else.</summary>
internal static class UsedOnSheet
{
    /// <summary>The entries in their order.</summary>
    /// <param name="plan">What is drawn.</param>
    /// <param name="views">Which views.</param>
    /// <param name="words">Whose words.</param>
    /// <param name="hasList">Whether the sheet has a list of changes.</param>
    /// <param name="joints">What is seen of joints; <see langword="null"/> while nothing has its place.</param>
    public static ImmutableArray<LegendEntry> Entries(DrawingPlan plan, IReadOnlyCollection<SeenIn> views, Vocabulary words, bool hasList = true, ShownJoints? joints = null)
    {
        joints ??= ShownJoints.Possible(plan, views);
        var lines = views.SelectMany(v => plan.Lines.Select(l => l.In(v))).OfType<LineView>().ToArray();
        var parts = views.SelectMany(v => plan.Parts.Select(p => p.In(v))).OfType<PartView>().ToArray();
        // A fitted part has an outline of its own; else what is done to parts and to lines looks alike.
        var states = lines.Select(l => l.State).Concat(parts.Where(p => p.Look is PartStyle.Kept or PartStyle.TakenOut).Select(p => StateOf(p.Look))).ToHashSet();
        var entries = ImmutableArray.CreateBuilder<LegendEntry>();
        entries.AddRange(OfStates(states, plan.Alteration));
        if (joints.HaveLead) entries.Add(LegendEntry.OfLead("no size: a part's lead"));
        entries.AddRange(OfParts(parts.Where(p => !p.Symbol.Shapes.IsEmpty).Select(p => p.Look).ToHashSet(), plan.Alteration));
        if (plan.Parts.Any(p => p.Role == PlannedRole.Symbol && views.Any(v => p.In(v) is { } shown && PlannedRoles.IsMetal(shown.Part)))) entries.Add(LegendEntry.OfMetal("metal on which cases stand"));
        if (parts.Any(p => p.Part.Kind.TakesAnyTerminal)) entries.Add(LegendEntry.OfFlag("goes on elsewhere"));
        if (plan.Parts.Any(p => p.Box.StartsWith("flag ", StringComparison.Ordinal))) entries.Add(LegendEntry.Flagged("2.C4", "goes on: sheet 2, zone C4", plan.Lettering));
        if (plan.Parts.Any(p => p.Role == PlannedRole.Stud && views.Any(v => p.In(v) is not null))) entries.Add(LegendEntry.OfStud("stud"));
        if (joints.HaveBar) entries.Add(LegendEntry.OfBar("one joint"));
        if (joints.HaveSlant) entries.Add(LegendEntry.OfSlant("goes to the pin it slants to"));
        // Beside lines that slant one that does not needs a word.
        if (joints.HaveSquare) entries.Add(LegendEntry.OfSquare("both end at this pin") with { IsUsual = !joints.HaveSlant });
        if (joints.HaveOld) entries.Add(LegendEntry.OfOldJoint("wires met here before"));
        if (views.Any(v => plan.Parts.Any(p => p.Role == PlannedRole.Symbol && p.In(v) is { } shown && FreeTerminals.Of(shown.Symbol, shown.Part, FreeTerminals.CircuitsOf(plan, v)).Any()))) entries.Add(LegendEntry.OfFreeTerminal("terminal without a wire"));
        string? name = lines.Where(l => l.NamesSign).Select(l => l.Label).MinBy(l => l.Length);
        if (name is not null) entries.Add(LegendEntry.OfNamedSign(name, "joined to what it names", plan.Lettering));
        // Where some signs have names, one without has its own meaning.
        if (!plan.Parts.Any(p => p.Role == PlannedRole.ReturnRail) && plan.Input.Wires.Zip(plan.Lines).Any(l => l.First is { NamesSign: false } wire && (wire.From.Kind == EndKind.Chassis || wire.To.Kind == EndKind.Chassis) && views.Any(v => l.Second.In(v) is not null)))
            entries.Add(LegendEntry.OfChassis("chassis") with { IsUsual = name is null });
        if (plan.Parts.Any(p => p.Box.StartsWith(LinePlanner.FreeBox, StringComparison.Ordinal) && views.Any(v => p.In(v) is not null))) entries.Add(LegendEntry.OfStud("free end, insulated"));
        if (parts.Any(p => p.IsReversed)) entries.Add(LegendEntry.OfReversal("leads swapped"));
        if (lines.Any(l => l.Number is not null) || plan.Alteration.Changes.Length > 0) entries.Add(LegendEntry.OfTriangle(hasList ? "line n of the change list" : "change n", plan.Lettering));
        if (plan.Figures is { } figures)
        {
            if (lines.Any(l => l.IsLive)) entries.Add(LegendEntry.OfBand(figures.LiveMeaning));
            // A short one: the room for samples is narrow.
            if (lines.Where(l => !l.NamesSign).Select(l => l.Label).Where(l => l.Length > 0).MinBy(l => l.Length) is { } figure) entries.Add(LegendEntry.Written(figure, figures.Meaning, plan.Lettering));
        }
        else if (lines.Select(l => l.Label).Where(l => l.Contains(' ', StringComparison.Ordinal) && !l.Contains('→', StringComparison.Ordinal) && !l.Contains(':', StringComparison.Ordinal)).MinBy(l => l.Length) is { } label)
            entries.Add(LegendEntry.Written(label, SheetText.LabelMeaning(plan.Alteration, words), plan.Lettering));
        entries.AddRange(OfSides(views.SelectMany(v => SidesIn(plan, v)).ToHashSet(), words));
        return entries.ToImmutable();
    }

    /// <summary>Those of a sheet of text: what its lists and tables use, and nothing else.</summary>
    /// <param name="changes">The changes that it lists.</param>
    /// <param name="rows">The loads in its table.</param>
    /// <param name="zone">Where one of them is drawn; <see langword="null"/> where it says that of none.</param>
    /// <param name="plan">What is drawn.</param>
    /// <param name="words">Whose words.</param>
    public static ImmutableArray<LegendEntry> InText(IEnumerable<ListLine> changes, IEnumerable<SwitchRow> rows, string? zone, DrawingPlan plan, Vocabulary words)
    {
        var told = changes.ToArray();
        var states = told.Where(c => c.Part is null).Select(c => c.Line).OfType<LineStyle>().ToHashSet();
        var sides = rows.SelectMany(r => new[] { r.Before?.Side, r.After?.Side }).OfType<SwitchedSide>().ToHashSet();
        return [.. OfStates(states, plan.Alteration), .. OfParts(told.Select(c => c.Part).OfType<PartStyle>().ToHashSet(), plan.Alteration), .. OfSides(sides, words), .. zone?.Split('.') is [var sheet, var field] ? new[] { LegendEntry.Written(zone, $"sheet {sheet}, zone {field}", plan.Lettering) } : []];
    }

    private static IEnumerable<LegendEntry> OfStates(HashSet<LineStyle> states, Alteration alteration) => new (LineStyle State, string Text)[]
    {
        (LineStyle.TakenOut, "take out"), (LineStyle.New, SheetText.NewMeaning(alteration)), (LineStyle.Moved, SheetText.MovedMeaning(alteration)),
        (LineStyle.WhereItLay, "where a moved wire lay"),
        (LineStyle.Renewed, "renew between the same ends"), (LineStyle.Kept, "leave as is"),
    }.Where(s => states.Contains(s.State)).Select(s => LegendEntry.Of(s.State, s.Text));

    private static IEnumerable<LegendEntry> OfParts(HashSet<PartStyle> looks, Alteration alteration) => new (PartStyle Look, string Text)[]
    {
        (PartStyle.New, SheetText.NewPartMeaning(alteration)), (PartStyle.Moved, SheetText.MovedPartMeaning(alteration)), (PartStyle.ToBeReplaced, "part to be replaced"),
    }.Where(p => looks.Contains(p.Look)).Select(p => LegendEntry.OfPart(p.Look, p.Text));

    private static IEnumerable<LegendEntry> OfSides(HashSet<SwitchedSide> sides, Vocabulary words) =>
        SideText.Order.Where(sides.Contains).Select(side => LegendEntry.Of(side, SideText.Legend(side, words)));

    private static IEnumerable<SwitchedSide> SidesIn(DrawingPlan plan, SeenIn view) => view switch
    {
        SeenIn.Before => SidesOf(plan, plan.Study.Before, _ => true),
        SeenIn.After => SidesOf(plan, plan.Study.After, _ => true),
        // An overlay has the badges of what will be, and of what goes.
        _ => SidesOf(plan, plan.Study.After, _ => true).Concat(SidesOf(plan, plan.Study.Before, p => p.After is null || !BoxPlanner.Share(p))),
    };

    // A part has one badge, and of its other loads the line below tells; signs beside a reference are of all.
    private static IEnumerable<SwitchedSide> SidesOf(DrawingPlan plan, CircuitStudy study, Predicate<PlannedPart> isShown)
    {
        var shown = plan.Parts.Where(p => isShown(p)).Select(p => p.PartId).ToHashSet(StringComparer.Ordinal);
        var loads = study.Loads.Where(l => !l.Element.IsInternal && shown.Contains(l.Part.Id)).ToArray();
        return plan.Style.HasSwitchTable ? loads.Select(l => l.Side) : loads.GroupBy(l => l.Part.Id).Select(VerdictCaption.BadgeOf);
    }

    private static LineStyle StateOf(PartStyle look) => look switch
    {
        PartStyle.TakenOut => LineStyle.TakenOut,
        _ => LineStyle.Kept,
    };
}
