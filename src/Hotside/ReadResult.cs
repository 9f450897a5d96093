
namespace Hotside;

/// <summary>What came of reading a job file: a job, or what is wrong with the file, or both.</summary>
public sealed record ReadResult
{
    /// <summary>The job; <see langword="null"/> when there is an error that nothing can be made of.</summary>
    public Job? Job { get; init; }
}
