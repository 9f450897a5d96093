namespace Hotside;

/// <summary>How large a drawing is lettered. Everything is laid out anew for it.</summary>
public enum TextSize
{
    /// <summary>Capitals of 1.8 mm for what qualifies, 2.5 mm for what identifies.</summary>
    Normal,

    /// <summary>Capitals of 2.5 and 3.5 mm: read at arm's length, with the hood open.</summary>
    Large,
}
