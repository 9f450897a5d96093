namespace Hotside.Wording;

/// <summary>Something that a legend may have to explain.</summary>
internal enum LegendEntry
{
    /// <summary>A conductor or part that leaves.</summary>
    TakeOut,

    /// <summary>A conductor or part that is new.</summary>
    RunNew,

    /// <summary>A conductor one end of which moves.</summary>
    MoveOneEnd,

    /// <summary>A conductor renewed between the same ends.</summary>
    Renew,

    /// <summary>Where a moved conductor lay.</summary>
    WhereItLay,

    /// <summary>What stays.</summary>
    LeaveAsIs,

    /// <summary>A part whose leads are swapped.</summary>
    SwapLeads,

    /// <summary>A number in a triangle.</summary>
    Number,

    /// <summary>The bar of a verdict towards the feed.</summary>
    HotSide,

    /// <summary>The bar of a verdict towards the return.</summary>
    GroundSide,

    /// <summary>The bars of a verdict on both sides.</summary>
    BothSides,

    /// <summary>A verdict without a bar.</summary>
    Unswitched,

    /// <summary>A verdict with a dotted outline.</summary>
    InSeries,

    /// <summary>A verdict with a dashed outline.</summary>
    Dead,

    /// <summary>A flag.</summary>
    GoesElsewhere,

    /// <summary>A zone code on a flag.</summary>
    Zone,

    /// <summary>A dashed line within a part.</summary>
    MechanicalLink,
}
