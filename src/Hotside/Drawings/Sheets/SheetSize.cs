using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Drawings.Sheets;

/// <summary>A sheet of paper, lying unless turned.</summary>
/// <param name="Name">What the title block calls it.</param>
/// <param name="Width">Width in units of 0.25 mm.</param>
/// <param name="Height">Height in units.</param>
internal sealed record SheetSize(string Name, double Width, double Height)
{
    /// <summary>297 × 210 mm (ISO 216).</summary>
    public static readonly SheetSize A4 = new("A4", 1188, 840);

    /// <summary>420 × 297 mm (ISO 216).</summary>
    public static readonly SheetSize A3 = new("A3", 1680, 1188);

    /// <summary>594 × 420 mm (ISO 216).</summary>
    public static readonly SheetSize A2 = new("A2", 2376, 1680);

    /// <summary>841 × 594 mm (ISO 216).</summary>
    public static readonly SheetSize A1 = new("A1", 3364, 2376);

    /// <summary>1189 × 841 mm (ISO 216).</summary>
    public static readonly SheetSize A0 = new("A0", 4756, 3364);

    /// <summary>The same paper, standing.</summary>
    public SheetSize Upright => this with { Width = Height, Height = Width };

    /// <summary>Whether it stands.</summary>
    public bool IsUpright => Height > Width;

    /// <summary>The A series, from small to large.</summary>
    public static readonly ImmutableArray<SheetSize> Series = [A4, A3, A2, A1, A0];

    /// <summary>11 × 8.5 in.</summary>
    public static readonly SheetSize Letter = new("Letter", 1117.6, 863.6);

    /// <summary>17 × 11 in.</summary>
    public static readonly SheetSize Tabloid = new("Tabloid", 1727.2, 1117.6);

    /// <summary>The paper of a name; not for those that depend on the drawing.</summary>
    public static SheetSize Of(Page page) => page switch
    {
        Page.A4 => A4,
        Page.A3 => A3,
        Page.A2 => A2,
        Page.A1 => A1,
        Page.A0 => A0,
        Page.Letter => Letter,
        Page.Tabloid => Tabloid,
        _ => throw new ArgumentOutOfRangeException(nameof(page), page, "That is no paper of a fixed size."),
    };

    /// <summary>What a sentence calls it.</summary>
    public string Called => Name.Length > 0 ? Name : InMillimetres;

    /// <summary>Its size as the title block has it where the paper has no name.</summary>
    public string InMillimetres => $"{Numbers.Plain(Width / 4, 0)} × {Numbers.Plain(Height / 4, 0)} mm";
}
