using Hotside.Symbols.Shapes;

namespace Hotside.Packs.Papers;

/// <summary>Lines to write on, each with what is asked.</summary>
internal static class Blanks
{
    private const double Between = 20;

    /// <summary>The blanks, so many beside each other.</summary>
    /// <param name="names">What is asked; an empty one leaves its place free.</param>
    /// <param name="beside">How many stand beside each other.</param>
    /// <param name="width">Width of all.</param>
    /// <param name="lettering">The letters.</param>
    public static FlowPart Of(IReadOnlyList<string> names, int beside, double width, PackLettering lettering)
    {
        double each = (width - ((beside - 1) * Between)) / beside;
        var rows = names.Chunk(beside).Select(row => new Piece(width, 34, [.. row.SelectMany((n, i) => n.Length == 0 ? [] : Marks.Blank(n, each, lettering).At(i * (each + Between), 0))]));
        return new([.. rows]) { After = 12 };
    }
}
