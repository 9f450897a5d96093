using System.Collections.Immutable;

namespace Hotside.Solving.Networks;

/// <summary>Nodes and what may conduct between them. It stays the same in every setting and state; what is open just does not conduct.</summary>
/// <param name="NodeCount">The number of nodes, the reference not counted.</param>
/// <param name="Edges">What may conduct, from its first end to its second.</param>
internal sealed record Network(int NodeCount, ImmutableArray<NetworkEdge> Edges)
{
    /// <summary>
    /// Of each edge, whether its law is a straight line whenever it conducts; edges beyond the end of the list, all where it is left out, may have any law. Nothing but time hangs
    /// on it: nodes between straight lines are eliminated once, not in each step.
    /// </summary>
    public ImmutableArray<bool> Straight { get; init; } = [];

    /// <summary>Whether an edge is known to be a straight line.</summary>
    public bool IsStraight(int edge) => edge < Straight.Length && Straight[edge];
}

/// <summary>Something between two nodes.</summary>
/// <param name="A">The node of the first end; <see cref="Reference"/> for the reference.</param>
/// <param name="B">The node of the second end.</param>
internal readonly record struct NetworkEdge(int A, int B)
{
    /// <summary>Stands for the reference, whose potential is 0 V.</summary>
    public const int Reference = -1;
}
