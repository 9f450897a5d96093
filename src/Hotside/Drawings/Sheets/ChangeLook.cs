using Hotside.Alterations;
using Hotside.Drawings.Marks;
using Hotside.Drawings.Plans;
using Hotside.Symbols.Shapes;

namespace Hotside.Drawings.Sheets;

/// <summary>The line and the colour by which a change goes in the list: those that it has on the drawing.</summary>
internal static class ChangeLook
{
    /// <summary>The line; none where nothing is changed.</summary>
    public static LineStyle? LineOf(Change change)
    {
        return change.Acts[0] switch
        {
            TakeOut => LineStyle.TakenOut,
            Fit or Replace or Run => LineStyle.New,
            Move { Ends.Length: > 1 } => LineStyle.New,
            Move { IsRenewed: true } or Renew => LineStyle.Renewed,
            Move or Cut or Reverse or Remount => LineStyle.Moved,
            _ => null,
        };
    }

    /// <summary>The outline of the part that a change is about, as the legend has it; <see langword="null"/> where it is about wires.</summary>
    public static PartStyle? PartOf(Change change) => change.Acts[0] switch { Fit or Replace => PartStyle.New, Reverse or Remount => PartStyle.Moved, _ => null };

    /// <summary>The colour of the number: that of the triangle of what it is about.</summary>
    public static ColourRole ColourOf(Change change, Alteration alteration)
    {
        if (LineOf(change) is { } line) return ConductorLine.ColourOf(line);
        string about = change.Acts[0].Items[0];
        return alteration.Before.FindPart(about) is not null || alteration.After.FindPart(about) is not null ? PartLook.ColourOf(PartPlanner.LookOf(alteration.StateOf(about), isBefore: false))
            : alteration.Before.FindConductor(about) is not null || alteration.After.FindConductor(about) is not null ? ConductorLine.ColourOf(LinePlanner.LookOf(alteration.StateOfConductor(about), isBefore: false))
            : ColourRole.Ink;
    }
}
