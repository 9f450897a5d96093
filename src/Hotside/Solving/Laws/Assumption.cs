namespace Hotside.Solving.Laws;

/// <summary>A figure that nothing in the circuit states and that was taken for computing.</summary>
/// <param name="Of">A conductor's id, or an element such as <c>H1.horn</c>.</param>
/// <param name="What">What was taken.</param>
/// <param name="Value">The figure, in ohms, amperes, watts or volts.</param>
/// <param name="Source">Where it is from: a kind's default, or the library's own choice.</param>
internal sealed record Assumption(string Of, AssumedFigure What, double Value, string Source)
{
    /// <summary>The source of figures that nobody publishes.</summary>
    public const string Own = "own choice, no source";
}

/// <summary>What is taken where nothing is stated.</summary>
internal enum AssumedFigure
{
    /// <summary>A conductor without size or length: taken as a joint, in ohms.</summary>
    Conductor,

    /// <summary>A current in amperes.</summary>
    Current,

    /// <summary>A resistance in ohms.</summary>
    Resistance,

    /// <summary>A power in watts.</summary>
    Power,

    /// <summary>A voltage in volts.</summary>
    Voltage,
}
