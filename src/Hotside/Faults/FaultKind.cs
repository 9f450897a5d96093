namespace Hotside.Faults;

/// <summary>What goes wrong with a conductor.</summary>
public enum FaultKind
{
    /// <summary>It is broken, or off its terminal.</summary>
    Open,

    /// <summary>One of its joints resists.</summary>
    BadJoint,

    /// <summary>Its first end touches the chassis.</summary>
    ShortAtFirstEnd,

    /// <summary>Its second end touches the chassis.</summary>
    ShortAtSecondEnd,
}

/// <summary>What becomes of a load.</summary>
public enum LoadEffect
{
    /// <summary>It goes out.</summary>
    Dead,

    /// <summary>It works on less than 85 % of the volts that it had.</summary>
    Weak,

    /// <summary>It gets current though nothing is meant to feed it now.</summary>
    OnThoughOff,

    /// <summary>Its current goes the other way.</summary>
    Reversed,
}

/// <summary>What becomes of a conductor that carries the current of a fault.</summary>
public enum Survival
{
    /// <summary>It stays below what its insulation stands.</summary>
    Survives,

    /// <summary>It stands the shortest opening time of the fuse, but not the longest, or a time or an ampacity is not known.</summary>
    NotShown,

    /// <summary>It gets hotter than its insulation stands.</summary>
    Overheats,

    /// <summary>It glows and melts (by an order of magnitude).</summary>
    Melts,
}

/// <summary>How a short circuit ends.</summary>
public enum FaultEnd
{
    /// <summary>It is no short circuit, or no current flows.</summary>
    None,

    /// <summary>Fuses open.</summary>
    Cleared,

    /// <summary>A fuse carries more than its rating, but may never open.</summary>
    MayNeverClear,

    /// <summary>No fuse opens, since a load in the way limits the current.</summary>
    LimitedByLoads,

    /// <summary>Nothing protects it: the source feeds it until something burns.</summary>
    Unprotected,
}
