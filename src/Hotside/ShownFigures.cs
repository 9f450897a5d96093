namespace Hotside;

/// <summary>Which figures of a setting stand at the conductors of a drawing, in the place of their sizes and colours.</summary>
public enum ShownFigures
{
    /// <summary>None: sizes and colours.</summary>
    None,

    /// <summary>Amperes, where there are any.</summary>
    Currents,

    /// <summary>What is lost along the conductor in volts, where current flows and its resistance is known.</summary>
    Drops,

    /// <summary>Volts against the return at both its ends, as a meter shows them.</summary>
    Voltages,
}
