namespace Hotside.CheckSheets;

/// <summary>When a row of a check sheet is measured; rows stand in this order.</summary>
public enum CheckStage
{
    /// <summary>Battery out: grounds and straps.</summary>
    DeadGrounds,

    /// <summary>Battery out: shorts, fuse way by fuse way.</summary>
    DeadShorts,

    /// <summary>Battery out: through the loads, by setting.</summary>
    DeadLoads,

    /// <summary>Battery in by steps, through a lamp in the ground lead.</summary>
    PowerUp,

    /// <summary>Battery in, everything at rest.</summary>
    AtRest,

    /// <summary>Battery in, by setting.</summary>
    Live,

    /// <summary>While cranking.</summary>
    Cranking,

    /// <summary>Engine running.</summary>
    Charging,

    /// <summary>Hot: the largest drops once more.</summary>
    Hot,
}
