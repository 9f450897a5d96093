namespace Hotside.Tool;

/// <summary>What the shell is told.</summary>
internal static class ExitCode
{
    public const int Done = 0;

    /// <summary>There are findings of severity stop or error.</summary>
    public const int Findings = 1;

    public const int InputUnreadable = 2;

    public const int OutputUnwritable = 3;

    public const int WrongUsage = 64;
}
