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

    /// <summary>The same with loads right below what feeds them, which takes less height.</summary>
    public DrawingPlan HungHigh() => this with { Input = Input with { HangsHigh = true } };

    /// <summary>The same with every part facing as it is given besides, for a drawing that finds no room otherwise.</summary>
    public DrawingPlan AsGiven() => this with { Input = Input.AsGiven() };

    /// <summary>The same with narrow relays, for a drawing that finds no room otherwise.</summary>
    public DrawingPlan WithCloseRelays() =>
        Of(Alteration, Study, Lettering, Words, Figures, closeRelays: true) is var close && Input.IsOverlaid ? OverlayPlan.Of(close) : close;

    /// <summary>Plans and measures.</summary>
    /// <param name="alteration">Both circuits.</param>
    /// <param name="study">Their verdicts.</param>
    /// <param name="lettering">The size of letters.</param>
    /// <param name="words">Whose words.</param>
    /// <param name="figures">What stands at lines in the place of their labels; <see langword="null"/>: the labels.</param>
    /// <param name="closeRelays">Whether relays are drawn narrow, with the text of what they feed at the left.</param>
    public static DrawingPlan Of(Alteration alteration, Study study, Lettering lettering, Vocabulary words, LineFigures? figures = null, bool closeRelays = false)
    {
        string? feedRail = Plans.FeedRail.Of(alteration);
        var parts = new PartPlanner(alteration, study, lettering, words, feedRail, closeRelays, figures).All().ToImmutableArray();
        var lines = new LinePlanner(alteration, feedRail, parts, lettering, figures);
        var planned = lines.All().ToImmutableArray();
        return new(alteration, study, lettering, words, [.. parts, .. lines.FreeEnds], planned, new([.. BoxPlanner.Boxes([.. parts, .. lines.FreeEnds])], lines.Wires) { TellsPins = true }, feedRail) { Figures = figures };
    }
}
