using Hotside.Diagnostics;

namespace Hotside.Orders;

/// <summary>What would come to harm if a battery were connected to a vehicle that is half altered.</summary>
/// <param name="Kind">In what way.</param>
/// <param name="Item">The part or wire.</param>
/// <param name="Setting">In which setting, such as <c>S1 run</c>; <c>at rest</c> where everything rests.</param>
/// <param name="Battery">With which battery.</param>
/// <param name="Text">What happens, with value and unit: <c>P2: 12.2 V on 6 V (S1 run)</c>.</param>
public sealed record Harm(HarmKind Kind, string Item, string Setting, Battery Battery, string Text)
{
    /// <summary>How bad it is: stop destroys or burns, error blows a fuse, warning is worth knowing and does not make the state unsafe.</summary>
    public Severity Severity { get; internal init; } = Severity.Stop;

    /// <summary>The number of the step with which it ends; <see langword="null"/> where none ends it.</summary>
    public int? EndsWithStep { get; internal init; }
}

/// <summary>In what way something comes to harm.</summary>
public enum HarmKind
{
    /// <summary>A consumer gets far more volts than it is made for.</summary>
    OverVoltage,

    /// <summary>Something that a wrong sign destroys gets it.</summary>
    Reversed,

    /// <summary>Something runs or reads the other way.</summary>
    RunsBackward,

    /// <summary>The free end of a wire is live.</summary>
    LiveFreeEnd,

    /// <summary>Feed and return meet.</summary>
    Short,

    /// <summary>A wire carries more than it may, with nothing to open.</summary>
    OverCurrent,

    /// <summary>A feed that will be fused is not yet.</summary>
    Unprotected,

    /// <summary>Two sources meet.</summary>
    SourceFight,

    /// <summary>A regulator or module is fed without its ground.</summary>
    NoReference,
}

/// <summary>Which battery is thought to be connected.</summary>
public enum Battery
{
    /// <summary>The one that was in the vehicle.</summary>
    Old,

    /// <summary>The one that will be in it; the same where it is not changed.</summary>
    New,
}
