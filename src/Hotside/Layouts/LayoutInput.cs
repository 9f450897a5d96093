using System.Collections.Immutable;
using Hotside.Symbols;

namespace Hotside.Layouts;

/// <summary>The union of both circuits, in file order: the order decides every tie.</summary>
internal sealed record LayoutInput(ImmutableArray<LayoutBox> Boxes, ImmutableArray<LayoutWire> Wires)
{
    /// <summary>Both circuits are shown over each other: what no circuit has at one time keeps clear of each other all the same.</summary>
    public bool IsOverlaid { get; init; }

    /// <summary>Each conductor is seen to end at its own pin: none runs along a trunk past the branch of a pin that it has nothing to do with.</summary>
    public bool TellsPins { get; init; }

    /// <summary>Loads stand right below what feeds them, not on the row of the chassis: that takes less height.</summary>
    public bool HangsHigh { get; init; }

    /// <summary>The chassis is shown by signs, not by a bar: a lead may have one of its own.</summary>
    public bool HasSigns { get; init; }

    /// <summary>The same with every part facing as it is given: no part is mirrored, and no connector's ways are sorted.</summary>
    public LayoutInput AsGiven() => this with { Boxes = [.. Boxes.Select(b => b with { MayMirror = false, Ways = [] })] };

    /// <summary>The same with the ends of the page beside what they hang on, not below it.</summary>
    public LayoutInput WithEndsHigh() => this with { Boxes = [.. Boxes.Select(b => b.IsReturnEnd ? b with { IsReturnEnd = false, IsFeedEnd = true } : b)] };

    /// <summary>The same with everything in both views.</summary>
    public LayoutInput AllSeen() => this with { Boxes = [.. Boxes.Select(b => b.AllSeen())], Wires = [.. Wires.Select(w => w with { Seen = SeenIn.Both })] };
}
