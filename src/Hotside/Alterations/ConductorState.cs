namespace Hotside.Alterations;

/// <summary>What an alteration does to a conductor.</summary>
public enum ConductorState
{
    /// <summary>Nothing; a part at its end may have been replaced or reversed.</summary>
    LeftAsIs,

    /// <summary>It is in the before circuit only.</summary>
    TakenOut,

    /// <summary>It is in the after circuit only.</summary>
    RunNew,

    /// <summary>One end goes elsewhere.</summary>
    Moved,

    /// <summary>The same ends, another size or colour.</summary>
    Renewed,

    /// <summary>One end elsewhere and another size or colour.</summary>
    MovedAndRenewed,

    /// <summary>Both ends elsewhere: the copper is used again; drawn as a moved one.</summary>
    UsedElsewhere,
}
