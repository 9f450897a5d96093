using Hotside.Circuits;
using QuikGraph;

namespace Hotside.Studies.Switching;

/// <summary>What an element is to a path.</summary>
internal enum BranchRole
{
    /// <summary>In line and without resistance: its ends are one while it conducts.</summary>
    Link,

    /// <summary>In line, with resistance or in one direction only.</summary>
    InLine,

    /// <summary>A consumer; also a machine that stands.</summary>
    Consumer,
}

/// <summary>An element between two points of the contact graph.</summary>
/// <param name="Number">Its number in the graph.</param>
/// <param name="Part">Its part.</param>
/// <param name="Element">The element.</param>
/// <param name="Source">The point of its first end.</param>
/// <param name="Target">The point of its second end.</param>
/// <param name="When">When it conducts.</param>
/// <param name="Role">What it is to a path.</param>
internal sealed record Branch(int Number, Part Part, Element Element, int Source, int Target, Condition When, BranchRole Role) : IEdge<int>
{
    /// <summary>Whether current passes from the first end to the second only.</summary>
    public bool IsOneWay => Element.Directs;

    /// <summary>The other end.</summary>
    public int Other(int point) => point == Source ? Target : Source;
}
