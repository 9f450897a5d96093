using Hotside.Alterations;
using Hotside.Drawings.Marks;
using Hotside.Symbols.Shapes;

namespace Hotside.Drawings.Plans;

/// <summary>The look of a change: the line and the outline by which it goes in the list, and the one colour that its number has in the list and wherever it stands on the drawing.</summary>
internal static class ChangeLook
{
    /// <summary>The line; none where nothing is changed.</summary>
    public static LineStyle? LineOf(Change change) => LineOf(change.Acts[0]);

    // As wires are drawn: one with both ends elsewhere is a moved one.
    private static LineStyle? LineOf(Act act) => act switch
    {
        TakeOut => LineStyle.TakenOut,
        Fit or Replace or Run => LineStyle.New,
        Move { Ends.Length: 1, IsRenewed: true } or Renew => LineStyle.Renewed,
        Move or Cut or Reverse or Remount => LineStyle.Moved,
        _ => null,
    };

    /// <summary>The outline of the part that a change is about, as the legend has it; <see langword="null"/> where it is about wires.</summary>
    public static PartStyle? PartOf(Change change) => change.Acts[0] switch { Fit or Replace => PartStyle.New, Reverse or Remount => PartStyle.Moved, _ => null };

    /// <summary>The numbers of a part or conductor, each in the colour of its change; <see langword="null"/> where nothing is done to it.</summary>
    /// <param name="id">The part or conductor.</param>
    /// <param name="alteration">The alteration, or an excerpt of one.</param>
    public static ChangeNumber? NumberOf(string id, Alteration alteration)
    {
        ColourRole[] colours = [.. alteration.NumbersOf(id).Select(n => ColourOf(n, alteration.Whole))];
        return colours.Length == 0 ? null : new(alteration.LabelsOf(id), colours[0]) { Colours = [.. colours] };
    }

    /// <summary>The number of a change as the list has it.</summary>
    /// <param name="change">The change.</param>
    /// <param name="alteration">The alteration, or an excerpt of one.</param>
    public static ChangeNumber NumberOf(Change change, Alteration alteration) => new(change.Label, ColourOf(change.Number, alteration.Whole));

    // That of what becomes of the parts and wires it stands at; ink where these are of several colours, since a number has one.
    private static ColourRole ColourOf(int number, Alteration alteration)
    {
        var change = alteration.Changes.First(c => c.Number == number);
        if (change.Acts.Select(LineOf).OfType<LineStyle>().Select(ConductorLine.ColourOf).Distinct().ToArray() is { Length: > 0 } colours) return colours.Length == 1 ? colours[0] : ColourRole.Ink;
        string about = change.Acts[0].Items[0];
        return alteration.Before.FindPart(about) is not null || alteration.After.FindPart(about) is not null ? PartLook.ColourOf(PartPlanner.LookOf(alteration.StateOf(about), isBefore: false))
            : alteration.Before.FindConductor(about) is not null || alteration.After.FindConductor(about) is not null ? ConductorLine.ColourOf(LinePlanner.LookOf(alteration.StateOfConductor(about), isBefore: false))
            : ColourRole.Ink;
    }
}
