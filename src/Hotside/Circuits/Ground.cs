namespace Hotside.Circuits;

/// <summary>Which pole of the sources stands on the return.</summary>
public enum Ground
{
    /// <summary>The minus pole stands on the chassis.</summary>
    Negative,

    /// <summary>The plus pole stands on the chassis.</summary>
    Positive,

    /// <summary>Nothing stands on metal: the return is a node of the circuit.</summary>
    Isolated,
}
