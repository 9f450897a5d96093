using System.Collections.Immutable;

namespace Hotside.Solving.Networks;

/// <summary>Nodes and what may conduct between them. It stays the same in every setting and state; what is open just does not conduct.</summary>
/// <param name="NodeCount">The number of nodes, the reference not counted.</param>
/// <param name="Edges">What may conduct, from its first end to its second.</param>
internal sealed record Network(int NodeCount, ImmutableArray<NetworkEdge> Edges);

/// <summary>Something between two nodes.</summary>
/// <param name="A">The node of the first end; <see cref="Reference"/> for the reference.</param>
/// <param name="B">The node of the second end.</param>
internal readonly record struct NetworkEdge(int A, int B)
{
    /// <summary>Stands for the reference, whose potential is 0 V.</summary>
    public const int Reference = -1;
}
