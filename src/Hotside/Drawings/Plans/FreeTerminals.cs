using Hotside.Circuits;
using Hotside.Symbols;
using Hotside.Symbols.Shapes;

namespace Hotside.Drawings.Plans;

/// <summary>
/// The terminals of a part on which nothing is: no wire, nothing bolted on, no metal. A lead that just ends looks like one whose wire was forgotten, so it ends in a ring; where a symbol
/// has a ring of its own, that says it.
/// </summary>
internal static class FreeTerminals
{
    private const double Near = 6;

    /// <summary>Radius of the ring in units.</summary>
    public const double Radius = 1.9;

    /// <summary>The circuits of a view, whole: a wire that an excerpt leaves out is there all the same.</summary>
    public static Circuit[] CircuitsOf(DrawingPlan plan, SeenIn view)
    {
        var whole = plan.Alteration.Whole;
        return view switch { SeenIn.Before => [whole.Before], SeenIn.After => [whole.After], _ => [whole.Before, whole.After] };
    }

    /// <summary>The rings of a symbol, in its own units.</summary>
    public static IEnumerable<CircleShape> Of(Symbol symbol, Part part, IEnumerable<Circuit> circuits)
    {
        if (part.Kind.TakesAnyTerminal || PlannedRoles.IsMetal(part)) yield break;
        foreach (var pin in symbol.Pins.Where(p => part.Kind.TerminalNamed(p.Terminal) == p.Terminal && circuits.All(c => IsFree(part.Id, p.Terminal, c))))
        {
            double x = pin.X * Symbol.Module, y = pin.Y * Symbol.Module;
            if (symbol.Shapes.OfType<CircleShape>().Any(c => Math.Abs(c.Centre.X - x) < Near && Math.Abs(c.Centre.Y - y) < Near)) continue;
            // Within the symbol's box, so that it comes near nothing else.
            yield return new((x + (pin.Side switch { SymbolSide.Left => Radius, SymbolSide.Right => -Radius, _ => 0 }), y + (pin.Side switch { SymbolSide.Top => Radius, SymbolSide.Bottom => -Radius, _ => 0 })),
                Radius, new(StrokeRank.Medium, ColourRole.PartInk), ColourRole.Paper);
        }
    }

    private static bool IsFree(string part, string terminal, Circuit circuit)
    {
        var end = End.At(part, terminal);
        return circuit.FindPart(part) is not { } own
            || (!circuit.ConductorsAt(end).Any() && own.Joints.All(j => j.Terminal != terminal) && circuit.Parts.All(p => p.Joints.All(j => j.On != end) && p.CaseOn != end) && (own.CaseOn is null || Nodes.CaseOf(own) != end));
    }
}
