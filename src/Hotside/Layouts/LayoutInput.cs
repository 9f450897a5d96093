using System.Collections.Immutable;

namespace Hotside.Layouts;

/// <summary>The union of both circuits, in file order: the order decides every tie.</summary>
internal sealed record LayoutInput(ImmutableArray<LayoutBox> Boxes, ImmutableArray<LayoutWire> Wires);
