namespace Hotside.Circuits;

/// <summary>The state of an old conductor, as seen.</summary>
public enum WireCondition
{
    /// <summary>Sound.</summary>
    Good,

    /// <summary>The insulation breaks when bent.</summary>
    Brittle,

    /// <summary>The insulation is burnt or melted.</summary>
    Burnt,

    /// <summary>Somebody has spliced it.</summary>
    Spliced,
}
