using Hotside.Solving;
using Hotside.Studies;

namespace Hotside.Checks;

/// <summary>A circuit solved in one setting.</summary>
/// <param name="When">The setting as the end of a sentence: <c>in "main beam"</c>, <c>when S3 on</c>.</param>
/// <param name="Solution">Volts and amperes.</param>
internal sealed record OperatingPoint(string When, Solution Solution)
{
    /// <summary>The load for which the setting is the least that feeds it; <see langword="null"/> where it is none of these.</summary>
    public LoadStudy? For { get; init; }

    /// <summary>Whether a machine turns.</summary>
    public bool IsRunning { get; init; }

    /// <summary>Whether a starter turns.</summary>
    public bool IsCranking { get; init; }

    /// <summary>Whether everything rests but, perhaps, a running engine: every key is off.</summary>
    public bool IsAtRest { get; init; }

    /// <summary>Whether the job names the setting.</summary>
    public bool IsNamed { get; init; }

    /// <summary>Whether current can pass an edge: one that is always there, or whose condition holds.</summary>
    public bool IsClosed(WireEdge edge)
    {
        foreach (var (variable, positions) in edge.When)
            if (!positions.Contains(Solution.Positions[variable].Position)) return false;
        return true;
    }
}
