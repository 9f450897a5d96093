using Hotside.Drawings.Plans;
using Hotside.Symbols;

namespace Hotside.Drawings.Sheets;

/// <summary>About how wide parts stand, known before anything is laid out.</summary>
internal static class PartRows
{
    // Parts with their texts, in about so many rows below each other.
    private const int Rows = 4;

    /// <summary>How wide each part is with its text, in modules.</summary>
    public static Dictionary<string, int> WidthsOf(DrawingPlan plan) =>
        plan.Input.Boxes.Where(b => !b.IsPoint).GroupBy(b => BoxPlanner.OwnerOf(b.Id)).ToDictionary(g => g.Key, g => g.Max(b => b.Width + (int)b.TextWidth), StringComparer.Ordinal);

    /// <summary>How wide some parts are together, in modules.</summary>
    /// <param name="widths">The widths of parts.</param>
    /// <param name="parts">Which of them.</param>
    public static int Of(IReadOnlyDictionary<string, int> widths, IEnumerable<string> parts) => parts.Sum(p => widths.GetValueOrDefault(p)) / Rows;

    /// <summary>How much of the longer edge of a paper views take that stand beside each other.</summary>
    /// <param name="width">The width of a view, in modules.</param>
    /// <param name="views">How many.</param>
    /// <param name="paper">The paper.</param>
    public static double ShareOf(int width, int views, SheetSize paper) => width * views * Symbol.Module / Math.Max(paper.Width, paper.Height);

    /// <summary>The same of all that a plan has.</summary>
    public static double ShareOf(DrawingPlan plan, int views, SheetSize paper) => WidthsOf(plan) is var widths ? ShareOf(Of(widths, widths.Keys), views, paper) : 0;
}
