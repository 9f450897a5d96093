namespace Hotside.Circuits;

/// <summary>What a conductor is there for.</summary>
public enum WireRole
{
    /// <summary>An ordinary wire or cable.</summary>
    Wire,

    /// <summary>A part's own lead.</summary>
    Lead,

    /// <summary>A screen around others.</summary>
    Shield,

    /// <summary>A spare, which may have a free end.</summary>
    Spare,
}
