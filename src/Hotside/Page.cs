namespace Hotside;

/// <summary>The paper of a drawing. It lies, unless the two views of a pair, or a single view, find room on it standing only.</summary>
public enum Page
{
    /// <summary>The smallest of A4 to A0 that holds the drawing; larger than A0 where none does. <see cref="Job.DrawSheets"/> takes several A3 where A2 does not hold it.</summary>
    Smallest,

    /// <summary>297 × 210 mm (ISO 216).</summary>
    A4,

    /// <summary>420 × 297 mm (ISO 216).</summary>
    A3,

    /// <summary>594 × 420 mm (ISO 216).</summary>
    A2,

    /// <summary>841 × 594 mm (ISO 216).</summary>
    A1,

    /// <summary>1189 × 841 mm (ISO 216).</summary>
    A0,

    /// <summary>11 × 8.5 in.</summary>
    Letter,

    /// <summary>17 × 11 in.</summary>
    Tabloid,

    /// <summary>As large as the drawing with its frame, and no larger.</summary>
    Fit,

    /// <summary>As large as the drawing, which has a legend and a caption but no frame, no title block, no list of changes and no cautions: for an article, or a page of something else that has these.</summary>
    Bare,
}
