using Hotside.Symbols.Shapes;

namespace Hotside.Packs.Papers;

/// <summary>
/// A page of a pack. What is written is 180 mm wide on every standing paper and 249 mm on every lying one, so that columns and lines are the same and only where a page ends
/// differs: 20 mm to the left edge for the holes, 10 mm at least to the others, which printers and copiers leave alone.
/// </summary>
/// <param name="Name">Its name.</param>
/// <param name="Width">Width in units of 0.25 mm.</param>
/// <param name="Height">Height in units.</param>
/// <param name="TextWidth">Width of what is written.</param>
internal sealed record PackPaper(string Name, double Width, double Height, double TextWidth)
{
    private const double Left = 80, Clear = 40, Standing = 720, Across = 996;

    /// <summary>210 × 297 mm (ISO 216).</summary>
    public static readonly PackPaper A4 = new("A4", 840, 1188, Standing);

    /// <summary>8.5 × 11 in (ANSI/ASME Y14.1, size A).</summary>
    public static readonly PackPaper Letter = new("Letter", 863.6, 1117.6, Standing);

    /// <summary>The same paper, lying.</summary>
    public PackPaper Lying => new(Name, Height, Width, Across);

    /// <summary>Where things may be written, the foot too.</summary>
    public Box Inside => new(Left, Clear, Left + TextWidth, Height - Clear);
}
