namespace Hotside.Studies.Figures;

/// <summary>What becomes of the relays in a setting, by the volts of their windings.</summary>
public enum RelayOutcome
{
    /// <summary>They come to rest in one way, or there are none.</summary>
    Settled,

    /// <summary>Which of several states they rest in depends on which is quicker.</summary>
    Race,

    /// <summary>They never come to rest: one chatters, as a buzzer does.</summary>
    NeverSettles,

    /// <summary>There are too many states to look at; the one given is one of them.</summary>
    NotSearchedOut,
}
