using Hotside.Circuits;
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

    /// <summary>Whether the job names the setting.</summary>
    public bool IsNamed { get; init; }

    /// <summary>Whether an element conducts: one that is always there, or whose condition holds.</summary>
    public bool IsClosed(Part part, Element element) =>
        element.When is not { } when || when.Tests.All(t => Solution.Positions.Any(p =>
            p.Actuator == t.Actuator && (p.Part == part.Id || p.Part is null) && t.Positions.Contains(p.Position)));

    /// <summary>Whether current can pass an edge.</summary>
    public bool IsClosed(WireEdge edge) => edge.Element is null || IsClosed(edge.Part!, edge.Element);

    /// <summary>Whether a machine's output is given.</summary>
    public bool Has(string part, string actuator, string position) =>
        Solution.Positions.Any(p => p.Part == part && p.Actuator == actuator && p.Position == position);
}
