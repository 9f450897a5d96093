using Hotside.Symbols.Shapes;

namespace Hotside.Drawings.Marks;

/// <summary>The dot where three lines meet.</summary>
internal static class JointDot
{
    /// <summary>Radius in units.</summary>
    public const double Radius = 3.4;

    // Seen on the thick line of a change, more than twice as wide as it.
    private const double OnThick = 4.4;

    /// <summary>A dot; a joint that is new has the colour of the change, any other that of the wires.</summary>
    public static CircleShape At(double x, double y, ColourRole colour = ColourRole.Wire, bool onThick = false) => Shape.Dot(colour, x, y, onThick ? OnThick : Radius);

    /// <summary>Where wires met that lie elsewhere now.</summary>
    public static CircleShape Was(double x, double y) => new((x, y), Radius, new(StrokeRank.Medium, ColourRole.Moved), ColourRole.Paper);
}
