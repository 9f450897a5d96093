using System.Collections.Immutable;
using Hotside.Layouts.Passes;

namespace Hotside.Layouts;

/// <summary>Where everything is drawn, in modules; made once for both circuits, so that what stands in both stands in one place.</summary>
internal sealed record Layout(
    ImmutableArray<PlacedBox> Boxes, ImmutableArray<PlacedWire> Wires, ImmutableArray<PlacedLabel> Labels, ImmutableArray<PlacedRail> Rails,
    ImmutableArray<PlacedDot> Dots, int Width, int Height)
{
    /// <summary>The height of the feed rail.</summary>
    public const int FeedY = 0;

    /// <summary>The height of the chassis row.</summary>
    public int ChassisY => Height;

    /// <summary>The labels of those that have one only where their line is long.</summary>
    public ImmutableArray<PlacedLabel> LongLines { get; init; } = [];

    /// <summary>How many labels stand where their conductor shares its way with others, though it runs alone elsewhere.</summary>
    public int SharedLabels { get; init; }

    /// <summary>The conductors that end at a chassis sign of their own, not on the row.</summary>
    public ImmutableHashSet<string> Signs { get; init; } = [];

    /// <summary>For each conductor of an input, in the order given, whether its first end is the hotter one.</summary>
    public static ImmutableArray<bool> FallsOf(LayoutInput input) => Heights.FallsOf(input);

    /// <summary>The leads of an input that had better end at chassis signs of their own, by name; those of cases that share a body end at signs that name it.</summary>
    public static ImmutableHashSet<string> OwnSignsOf(LayoutInput input) => OwnSigns.Of(input);

    /// <summary>What the layout of a circuit that differs a little needs to know of this one.</summary>
    public LayoutMemory? Memory { get; init; }

    /// <summary>The layout of one input at one spacing; what stood in a previous layout stays where it was unless something needs it to move.</summary>
    public static Layout Of(LayoutInput input, LayoutOptions options, Layout? previous = null, CancellationToken cancel = default) =>
        // Where what stood leaves no sound place for what is new, everything is laid out anew.
        (previous is null ? null : Sound(input, previous, options, cancel)) ?? Arrangement.Of(input, cancel: cancel).At(options, cancel);

    /// <summary>The layout of an input at the spacing of a previous one, with all that need not move where it stood; <see langword="null"/> where that leaves no sound place for what is new.</summary>
    public static Layout? Like(LayoutInput input, Layout previous, CancellationToken cancel = default) => Sound(input, previous, previous.Memory!.Asked, cancel);

    private static Layout? Sound(LayoutInput input, Layout previous, LayoutOptions options, CancellationToken cancel) =>
        Arrangement.Of(input, previous, cancel).At(options, cancel) is var layout && !Check.Of(input, layout).Any() ? layout : null;
}
