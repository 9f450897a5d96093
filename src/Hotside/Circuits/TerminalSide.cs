namespace Hotside.Circuits;

/// <summary>The side of a symbol on which a terminal is drawn; up is towards the feed.</summary>
public enum TerminalSide
{
    /// <summary>Towards the feed.</summary>
    Top,

    /// <summary>Towards the return.</summary>
    Bottom,

    /// <summary>On the left.</summary>
    Left,

    /// <summary>On the right.</summary>
    Right,

    /// <summary>Wherever a wire comes from.</summary>
    Any,
}
