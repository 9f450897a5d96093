using Hotside.Alterations;
using Hotside.Drawings.Marks;
using Hotside.Symbols.Shapes;

namespace Hotside.Drawings.Sheets;

/// <summary>The line and the colour by which a change goes in the list: those that it has on the drawing.</summary>
internal static class ChangeLook
{
    public static LineStyle LineOf(Change change)
    {
        return change.Acts[0] switch
        {
            TakeOut => LineStyle.TakenOut,
            Fit or Replace or Run => LineStyle.New,
            Move { Ends.Length: > 1 } => LineStyle.New,
            Move { IsRenewed: true } or Renew => LineStyle.Renewed,
            Move or Cut or Reverse or Remount => LineStyle.Moved,
            _ => LineStyle.Kept,
        };
    }

    public static ColourRole ColourOf(Change change) =>
        change.Acts[0] is Work ? ColourRole.Ink : ConductorLine.ColourOf(LineOf(change));
}
