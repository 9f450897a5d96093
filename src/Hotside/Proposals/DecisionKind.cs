namespace Hotside.Proposals;

/// <summary>What becomes of a part.</summary>
public enum DecisionKind
{
    /// <summary>It stays as it is.</summary>
    Keep,

    /// <summary>It stays if a test or a condition holds, which the proposal says.</summary>
    Check,

    /// <summary>Its leads change places.</summary>
    Reverse,

    /// <summary>It is magnetised for the new polarity.</summary>
    Polarise,

    /// <summary>It stays behind something that holds its volts.</summary>
    Protect,

    /// <summary>Another one takes its place.</summary>
    Replace,

    /// <summary>It goes.</summary>
    TakeOut,

    /// <summary>It is new.</summary>
    Fit,

    /// <summary>A wire is renewed.</summary>
    Renew,

    /// <summary>A relay takes over its current.</summary>
    Relay,
}
