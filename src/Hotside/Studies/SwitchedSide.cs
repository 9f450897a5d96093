namespace Hotside.Studies;

/// <summary>On which side of a load its control lies.</summary>
public enum SwitchedSide
{
    /// <summary>Fed in every state.</summary>
    Unswitched,

    /// <summary>The way to the return always stands; the way to the feed is switched.</summary>
    HotSwitched,

    /// <summary>The way to the feed always stands; the way to the return is switched.</summary>
    GroundSwitched,

    /// <summary>Both ways are switched.</summary>
    BothSides,

    /// <summary>Fed only through other loads.</summary>
    InSeries,

    /// <summary>On in no state: no current ever flows through it. Its terminals may have voltage all the same.</summary>
    Dead,

    /// <summary>Fed only from a part that lies elsewhere: what switches it is not in the file.</summary>
    Elsewhere,
}
