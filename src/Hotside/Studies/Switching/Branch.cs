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
    public bool IsOneWay { get; } = Element.Directs;

    /// <summary>Whether it is a winding that moves an actuator of its part.</summary>
    public bool Pulls { get; } = Part.Kind.Actuators.Any(a => a.Pulls.Any(p => p.Coils.Contains(Element.Name)));

    /// <summary>Whether it is a winding that moves an actuator of its part, or keeps one where it is.</summary>
    public bool Moves { get; } =
        Part.Kind.Actuators.Any(a => a.Pulls.Any(p => p.Coils.Contains(Element.Name))) || Part.Kind.Actuators.Any(a => a.KeptBy.Contains(Element.Name));

    // A branch is one thing of its graph: it is told by its number, not by what it holds.
    public bool Equals(Branch? other) => ReferenceEquals(this, other);

    public override int GetHashCode() => Number;

    /// <summary>The other end.</summary>
    public int Other(int point) => point == Source ? Target : Source;
}

/// <summary>A source between two points of the contact graph.</summary>
/// <param name="Plus">The point of its plus pole.</param>
/// <param name="Minus">The point of its minus pole.</param>
/// <param name="Volts">Its rated volts.</param>
/// <param name="When">When it gives.</param>
internal sealed record SourceBranch(int Plus, int Minus, double Volts, Condition When);
