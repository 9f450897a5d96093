namespace Hotside;

/// <summary>x</summary>
public sealed class Job { }
