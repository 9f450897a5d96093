using Hotside.Circuits;
using Hotside.Layouts;
using Hotside.Symbols;

namespace Hotside.Drawings.Plans;

/// <summary>Which place of the layout each end of a circuit is: a pin of a box, the feed rail, or the return.</summary>
internal sealed class CircuitEnds(Circuit circuit, string? feedRail, IReadOnlyDictionary<string, Symbol> symbols)
{
    /// <summary>The pin of a node without symbol.</summary>
    public const string Point = "p";

    /// <summary>The upper and the lower side of a piece of metal.</summary>
    public const string Above = "above", Below = "below";

    /// <summary>The box of a flag: one for each terminal of what lies elsewhere.</summary>
    public static string FlagBox(string part, string terminal) => part + "." + terminal;

    /// <summary>The name of a pin by its place, so that equal places of two symbols are one pin.</summary>
    public static string PinName(SymbolPin pin) => $"{Numbers.Whole(pin.X)},{Numbers.Whole(pin.Y)}";

    public LayoutEnd Of(End end, End other, string line)
    {
        if (end == circuit.System.ReturnNode || (circuit.System.Return is { } node && end.Part == node.Part)) return LayoutEnd.Chassis;
        if (end.IsFree) return LayoutEnd.At("free " + line, Point);
        if (end.IsChassis) return LayoutEnd.Chassis;
        string id = end.Part!;
        if (id == feedRail) return LayoutEnd.Feed;
        var part = circuit.FindPart(id)!;
        if (part.Kind.TakesAnyTerminal) return LayoutEnd.At(FlagBox(id, end.Terminal), Point);
        if (PlannedRoles.IsMetal(part)) return LayoutEnd.At(id, other == circuit.System.ReturnNode ? Below : Above);
        return symbols.TryGetValue(id, out var symbol) ? LayoutEnd.At(id, PinName(symbol.Pin(end.Terminal))) : LayoutEnd.At(id, Point);
    }
}

/// <summary>Tells nodes from symbols.</summary>
internal static class PlannedRoles
{
    public static bool IsMetal(Part part) => part.Kind.Symbol == "metal";

    /// <summary>What a part is for the layout, the feed rail and the return apart.</summary>
    public static PlannedRole Of(Part part) => part.Kind.OnlyTerminal is null ? PlannedRole.Symbol : part.Kind.Symbol switch
    {
        // A node without box: all its wires meet on one terminal.
        "rail" => PlannedRole.Rail,
        "splice" => PlannedRole.Splice,
        "stud" => PlannedRole.Stud,
        _ => PlannedRole.Symbol,
    };
}
