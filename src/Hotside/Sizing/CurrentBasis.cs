namespace Hotside.Sizing;

/// <summary>How the greatest steady current of a conductor was found.</summary>
public enum CurrentBasis
{
    /// <summary>By Kirchhoff's law: what all loads behind it take that can be on together, at the highest volts of the running vehicle.</summary>
    Bound,

    /// <summary>By computing every combination of the switches that matter to it.</summary>
    Enumerated,

    /// <summary>By a search, since there are too many combinations; it may be a little low.</summary>
    Searched,
}
