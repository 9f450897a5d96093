namespace Hotside.Diagnostics;

/// <summary>How bad a finding is, least first.</summary>
public enum Severity
{
    /// <summary>Worth knowing.</summary>
    Note,

    /// <summary>Doubtful.</summary>
    Warning,

    /// <summary>Wrong.</summary>
    Error,

    /// <summary>Fire, injury, a destroyed part.</summary>
    Stop,
}
