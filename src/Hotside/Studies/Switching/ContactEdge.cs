using Hotside.Circuits;

namespace Hotside.Studies.Switching;

/// <summary>An inner element between two points of the contact graph.</summary>
/// <param name="Part">The part.</param>
/// <param name="Element">The element within it.</param>
/// <param name="From">The point of its first end.</param>
/// <param name="To">The point of its second end.</param>
/// <param name="Condition">When it conducts, as a function of positions and relays.</param>
internal sealed record ContactEdge(Part Part, Element Element, int From, int To, int Condition)
{
    /// <summary>Whether it is taken as without resistance.</summary>
    public bool IsLink => Element.IsLink;

    public int Other(int point) => point == From ? To : From;
}
