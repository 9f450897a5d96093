using System.Collections.Immutable;
using Hotside.Symbols;

namespace Hotside.Layouts;

/// <summary>The union of both circuits, in file order: the order decides every tie.</summary>
internal sealed record LayoutInput(ImmutableArray<LayoutBox> Boxes, ImmutableArray<LayoutWire> Wires)
{
    /// <summary>Both circuits are shown over each other: what no circuit has at one time keeps clear of each other all the same.</summary>
    public bool IsOverlaid { get; init; }

    /// <summary>The same with everything in both views.</summary>
    public LayoutInput AllSeen() => this with { Boxes = [.. Boxes.Select(b => b.AllSeen())], Wires = [.. Wires.Select(w => w with { Seen = SeenIn.Both })] };
}
