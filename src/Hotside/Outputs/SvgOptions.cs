using Hotside.Drawings;

namespace Hotside.Outputs;

/// <summary>How the texts of an SVG find their font.</summary>
internal enum SvgFont
{
    /// <summary>The font is inside the file.</summary>
    Embedded,

    /// <summary>The page brings the font; each text carries its measured width, so that another font cannot run into its neighbour.</summary>
    Family,

    /// <summary>The renderer brings the very faces that were measured with.</summary>
    Provided,
}

/// <summary>Choices for an SVG.</summary>
internal sealed record SvgOptions
{
    /// <summary>Paper, font embedded.</summary>
    public static readonly SvgOptions Default = new();

    /// <summary>Colours.</summary>
    public Theme Theme { get; init; } = Theme.Paper;

    /// <summary>The font.</summary>
    public SvgFont Font { get; init; } = SvgFont.Embedded;
}
