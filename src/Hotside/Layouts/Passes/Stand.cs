using System.Collections.Immutable;
using Hotside.Symbols;

namespace Hotside.Layouts.Passes;

/// <summary>A box on its stand, from the stand's top left corner, neither turned nor mirrored.</summary>
internal sealed record StandingBox(LayoutBox Box, int X, int Y);

/// <summary>
/// A place in a row: one box, or a before-only box and the after-only one that replaces it. Both share the place, since no view
/// shows both.
/// </summary>
internal sealed record Stand(int Id, SeenIn Seen, ImmutableArray<StandingBox> Boxes, int Width, int Height, bool Turned)
{
    /// <summary>Left out between symbol and text block.</summary>
    public const double TextGap = 0.8;

    /// <summary>How it faces; both of its boxes face alike.</summary>
    public Facing Facing { get; init; } = Facing.AsGiven;

    /// <summary>A joint that had to become a place of its own.</summary>
    public bool IsPoint => Boxes[0].Box.IsPoint;

    public string Shape => Boxes[0].Box.Shape;

    /// <summary>Where a box begins as the stand faces, from the stand's left edge.</summary>
    public int LeftOf(StandingBox standing) => Facing.Mirrored ? Width - standing.X - standing.Box.Width : standing.X;

    /// <summary>Room for the text block in a view, in whole modules.</summary>
    public int TextModules(SeenIn view) => IsPoint ? 0 : Boxes.Where(b => (b.Box.Seen & view) != 0).Select(b => b.Box.TextWidths.In(view))
        .Select(w => w > 0 ? (int)Math.Ceiling(TextGap + w - 1e-9) : 0).DefaultIfEmpty(0).Max();
}

/// <summary>A point of a stand where conductors end; offsets as it stands, turned over where the stand is, not mirrored.</summary>
internal sealed record Terminal(int Id, int Stand, Side Side, int X, int Y, SeenIn Seen)
{
    public bool IsSideways => Side is Side.Left or Side.Right;
}

/// <summary>An end of a line: on a terminal, on a joint, or on one of the rails.</summary>
internal readonly record struct LineEnd(EndKind Kind, int Terminal, int Joint)
{
    public bool OnTerminal => Terminal >= 0;

    public bool OnJoint => Joint >= 0;
}

/// <summary>A conductor by numbers, in file order.</summary>
internal sealed record Line(int Id, string Name, SeenIn Seen, LineEnd From, LineEnd To);

/// <summary>A way of the current inside a stand, between two points: its terminals by number, places inside behind them.</summary>
internal readonly record struct Tie(int Stand, int A, int B, double Conductance);
