using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.Layouts;
using Hotside.Studies;
using Hotside.Symbols.Texts;

namespace Hotside.Drawings.Plans;

/// <summary>All that will be drawn of both circuits, measured, before anything has a place.</summary>
internal sealed record DrawingPlan(
    Alteration Alteration, Study Study, Lettering Lettering, ImmutableArray<PlannedPart> Parts, ImmutableArray<PlannedLine> Lines, LayoutInput Input, string? FeedRail)
{
    public static DrawingPlan Of(Alteration alteration, Study study, Lettering lettering)
    {
        string? feedRail = Plans.FeedRail.Of(alteration);
        var parts = new PartPlanner(alteration, study, lettering, feedRail).All().ToImmutableArray();
        var lines = new LinePlanner(alteration, feedRail, parts, lettering);
        var planned = lines.All().ToImmutableArray();
        return new(alteration, study, lettering, [.. parts, .. lines.FreeEnds], planned, new([.. BoxPlanner.Boxes([.. parts, .. lines.FreeEnds])], lines.Wires), feedRail);
    }
}
