namespace Hotside.Alterations;

/// <summary>What an alteration does to a part.</summary>
public enum PartState
{
    /// <summary>Nothing.</summary>
    Left,

    /// <summary>It is in the before circuit only.</summary>
    TakenOut,

    /// <summary>It is in the after circuit only.</summary>
    Fitted,

    /// <summary>Another part stands in its place.</summary>
    Replaced,

    /// <summary>Its leads are swapped.</summary>
    Reversed,

    /// <summary>Another part stands in its place, with swapped leads.</summary>
    ReplacedReversed,

    /// <summary>Its case stands on something else.</summary>
    Remounted,
}
