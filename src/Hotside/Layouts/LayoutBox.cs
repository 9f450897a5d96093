using System.Collections.Immutable;
using Hotside.Symbols;

namespace Hotside.Layouts;

/// <summary>Widths of a text block in the two views, in modules.</summary>
internal readonly record struct TextWidths(double Before, double After)
{
    /// <summary>The larger of the views asked for.</summary>
    public double In(SeenIn seen) => Math.Max((seen & SeenIn.Before) != 0 ? Before : 0, (seen & SeenIn.After) != 0 ? After : 0);
}

/// <summary>A part as the layout sees it: a box with pins and room for a text block. Whole modules of 2.5 mm.</summary>
internal sealed record LayoutBox(string Id, SeenIn Seen, int Width, int Height, ImmutableArray<LayoutPin> Pins)
{
    /// <summary>Boxes of one shape are alike: where they hang on one net they stand in file order at equal pitch.</summary>
    public string Shape { get; init; } = "";

    /// <summary>Width of the text block beside the box in each view; 0 = none.</summary>
    public TextWidths TextWidths { get; init; }

    /// <summary>Width of the text block, the larger of the views.</summary>
    public double TextWidth => TextWidths.In(SeenIn.Both);

    /// <summary>Height of the text block, the larger of the views; 0 = none.</summary>
    public double TextHeight { get; init; }

    /// <summary>A splice: no body, only a place on the trunk of its net.</summary>
    public bool IsJoint { get; init; }

    /// <summary>A joint drawn as a heavy horizontal rail along the trunk of its net.</summary>
    public bool IsRail { get; init; }

    /// <summary>The before-only box in whose place this after-only box stands.</summary>
    public string? ReplacedIn { get; init; }

    /// <summary>May stand upside down when its lower pin is the hotter one.</summary>
    public bool MayTurnOver { get; init; }

    /// <summary>The ways of the current inside; none = all pins are taken as joined alike.</summary>
    public ImmutableArray<LayoutPath> Paths { get; init; } = [];

    /// <summary>The poles of the sources inside.</summary>
    public ImmutableArray<LayoutPole> Poles { get; init; } = [];

    /// <summary>May stand with left and right exchanged.</summary>
    public bool MayMirror { get; init; }

    /// <summary>The columns of its ways, in modules from the left, where the ways may stand in any order; empty = as they are.</summary>
    public ImmutableArray<int> Ways { get; init; } = [];

    /// <summary>Those of its ways that each view shows, where an old and a new connector share the box; empty = all.</summary>
    public (ImmutableArray<int> Before, ImmutableArray<int> After) WaysShown { get; init; } = ([], []);

    /// <summary>The end of the page for a feed that goes on elsewhere: it belongs at the top, with the feed.</summary>
    public bool IsFeedEnd { get; init; }

    /// <summary>The end of the page for a line that goes on elsewhere: it belongs below what it leaves.</summary>
    public bool IsReturnEnd { get; init; }

    /// <summary>The end of a conductor that hangs free: what stood right beyond it would be read as its label.</summary>
    public bool IsFreeEnd { get; init; }

    /// <summary>Metal that cases stand on.</summary>
    public bool IsBody { get; init; }

    /// <summary>The same in both views.</summary>
    public LayoutBox AllSeen() => this with { Seen = SeenIn.Both, TextWidths = new(TextWidth, TextWidth) };

    /// <summary>A joint has no body: it becomes a point on a line.</summary>
    public bool IsPoint => IsJoint || IsRail;

    /// <summary>Does a text block stand beside the box?</summary>
    public bool HasText => TextWidth > 0 && TextHeight > 0;
}
