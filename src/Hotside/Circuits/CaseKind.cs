namespace Hotside.Circuits;

/// <summary>What a kind's case is, electrically.</summary>
public enum CaseKind
{
    /// <summary>No case that conducts, or none that matters.</summary>
    None,

    /// <summary>The case is a terminal and stands on the chassis unless the part says otherwise.</summary>
    Grounded,

    /// <summary>The case is a terminal; it stands on nothing unless the part says so.</summary>
    Optional,

    /// <summary>The case is metal but no terminal of the circuit within.</summary>
    Isolated,
}
