using System.Collections.Frozen;
using Hotside.Layouts.Passes;

namespace Hotside.Layouts;

/// <summary>Where a stand or a joint stood.</summary>
/// <param name="Row">Its row; 0 for a joint.</param>
/// <param name="Place">Its place in the order from left to right; −1 for a joint.</param>
internal readonly record struct RememberedBox(int Row, int X, int Place, bool Turned, bool TextOnLeft, Facing Facing);

/// <summary>How the end of a conductor led to its trunk.</summary>
internal readonly record struct RememberedEnd(bool Above, int Place);

/// <summary>
/// What a layout remembers, by names alone, so that the layout of a circuit that differs a little leaves standing what need not move: rows and order,
/// columns, tracks and heights, and on which side texts stand.
/// </summary>
/// <param name="Asked">The options that the layout was asked for.</param>
/// <param name="Spacing">The spacing that came of them.</param>
/// <param name="Boxes">By box.</param>
/// <param name="Ends">By end of a conductor.</param>
/// <param name="Passages">The column in which the conductor of an end passes a row.</param>
/// <param name="Tracks">The track of the piece that leads an end through a channel.</param>
/// <param name="Trunks">Channel and track of a conductor's trunk.</param>
internal sealed record LayoutMemory(
    LayoutOptions Asked, LayoutOptions Spacing, FrozenDictionary<string, RememberedBox> Boxes, FrozenDictionary<string, RememberedEnd> Ends,
    FrozenDictionary<(string End, int Row), int> Passages, FrozenDictionary<(string End, int Channel), int> Tracks,
    FrozenDictionary<string, (int Channel, int Track)> Trunks, Levels Levels)
{
    /// <summary>The conductors that ran beside the nets they belong to.</summary>
    public FrozenSet<string> Apart { get; init; } = [];

    /// <summary>How many rows there were.</summary>
    public int Rows => Levels.RowCentre.Length - 2;
}
