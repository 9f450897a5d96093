using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.Layouts;
using Hotside.Studies;
using Hotside.Symbols.Texts;
using Hotside.Wording;

namespace Hotside.Drawings.Plans;

/// <summary>All that will be drawn of both circuits, measured, before anything has a place.</summary>
internal sealed record DrawingPlan(
    Alteration Alteration, Study Study, Lettering Lettering, Vocabulary Words, ImmutableArray<PlannedPart> Parts, ImmutableArray<PlannedLine> Lines, LayoutInput Input, string? FeedRail)
{
    /// <summary>The figures at its lines; <see langword="null"/> where their labels are sizes and colours.</summary>
    public LineFigures? Figures { get; private init; }

    /// <summary>How it saves room.</summary>
    public PlanStyle Style { get; private init; }

    /// <summary>What is laid out in its style.</summary>
    public LayoutInput Laid => (Style.FacesAsGiven ? Input.AsGiven() : Style.EndsHigh ? Input.WithEndsHigh() : Input) with { HangsHigh = Style.HangsHigh };

    /// <summary>The same in another style, for a drawing that finds no room otherwise.</summary>
    public DrawingPlan In(PlanStyle style) =>
        style.OfParts() == Style.OfParts() ? this with { Style = style } : Of(Alteration, Study, Lettering, Words, Figures, style) is var other && Input.IsOverlaid ? OverlayPlan.Of(other) : other;

    /// <summary>Plans and measures.</summary>
    /// <param name="alteration">Both circuits.</param>
    /// <param name="study">Their verdicts.</param>
    /// <param name="lettering">The size of letters.</param>
    /// <param name="words">Whose words.</param>
    /// <param name="figures">What stands at lines in the place of their labels; <see langword="null"/>: the labels.</param>
    /// <param name="style">How it saves room.</param>
    public static DrawingPlan Of(Alteration alteration, Study study, Lettering lettering, Vocabulary words, LineFigures? figures = null, PlanStyle style = default)
    {
        string? feedRail = Plans.FeedRail.Of(alteration);
        var parts = new PartPlanner(alteration, study, lettering, words, feedRail, style, figures).All().ToImmutableArray();
        var lines = new LinePlanner(alteration, feedRail, parts, lettering, figures);
        var planned = lines.All().ToImmutableArray();
        return SignPlan.Of(new(alteration, study, lettering, words, [.. parts, .. lines.FreeEnds], planned, new([.. BoxPlanner.Boxes([.. parts, .. lines.FreeEnds])], lines.Wires) { TellsPins = true }, feedRail) { Figures = figures, Style = style });
    }
}
