using System.Collections.Immutable;

namespace Hotside.Orders;

/// <summary>A step of a work order: acts at one place, of one circuit, with nothing between them that has to be looked at. It has one tick box.</summary>
/// <param name="Number">Its number, from 1.</param>
/// <param name="Phase">The phase of the work, such as <c>take out</c>.</param>
/// <param name="Place">Where it is done; <see langword="null"/> where the job does not say.</param>
/// <param name="Acts">What is done, in order; at least one.</param>
public sealed record WorkStep(int Number, string Phase, string? Place, ImmutableArray<WorkAct> Acts)
{
    /// <summary>The circuit it belongs to: the id of a fuse, or of what is nearest the feed; empty for the whole vehicle.</summary>
    public string Circuit { get; internal init; } = "";

    /// <summary>What is to be minded with several of its acts alike, after them; each a sentence.</summary>
    public ImmutableArray<string> Remarks { get; internal init; } = [];

    /// <summary>Why it stands where it stands, as clauses behind "because"; empty where its place does not matter.</summary>
    public ImmutableArray<string> Reasons { get; internal init; } = [];

    /// <summary>What happens if it is done carelessly and how to avoid it; <see langword="null"/> where nothing does.</summary>
    public string? Caution { get; internal init; }

    /// <summary>Whether its phase is the same wherever it is done, so that it stands under the phase's name and not under a place.</summary>
    internal bool StandsUnderPhase { get; init; }

    /// <summary>What stands in the triangles of the changes that its acts belong to, in their order: <c>4</c>, <c>A1</c>.</summary>
    internal IEnumerable<string> Labels => Acts.OrderBy(a => a.Change).Select(a => a.Label).Where(l => l.Length > 0).Distinct(StringComparer.Ordinal);

    /// <summary>The numbers of the changes that its acts belong to, in order.</summary>
    public ImmutableArray<int> Changes => [.. Acts.Select(a => a.Change).OfType<int>().Distinct().Order()];

    /// <summary>Whether the old battery may be connected as the vehicle stands after the step; <see langword="null"/> where there is none to connect any more.</summary>
    public bool? SafeWithOld { get; internal init; }

    /// <summary>Whether the new battery may be connected as the vehicle stands after the step.</summary>
    public bool SafeWithNew { get; internal init; }

    /// <summary>What would come to harm if a battery were connected after the step: gravest first, each once.</summary>
    public ImmutableArray<Harm> Harms { get; internal init; } = [];

    /// <summary>Whether all its acts are done.</summary>
    public bool IsDone => Acts.All(a => a.IsDone);
}
