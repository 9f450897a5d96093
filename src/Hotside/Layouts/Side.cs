namespace Hotside.Layouts;

/// <summary>The side of a box on which a pin stands.</summary>
internal enum Side
{
    /// <summary>Its conductor leaves upwards.</summary>
    Top,

    /// <summary>Its conductor leaves to the right.</summary>
    Right,

    /// <summary>Its conductor leaves downwards.</summary>
    Bottom,

    /// <summary>Its conductor leaves to the left.</summary>
    Left,

    /// <summary>A joint: the box is a point, conductors leave it any way.</summary>
    Centre,
}

/// <summary>What turning over and mirroring do to a side.</summary>
internal static class Sides
{
    public static Side TurnedOver(this Side side) => side switch
    {
        Side.Top => Side.Bottom,
        Side.Bottom => Side.Top,
        _ => side,
    };

    public static Side Mirrored(this Side side) => side switch
    {
        Side.Left => Side.Right,
        Side.Right => Side.Left,
        _ => side,
    };
}
