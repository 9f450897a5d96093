using Hotside.Circuits;

namespace Hotside.Studies;

/// <summary>Sides told from what is joined for good, for a circuit beyond the budget: a way that always stands is not the switched one.</summary>
internal static class Approximation
{
    public static IEnumerable<LoadStudy> Of(Circuit circuit)
    {
        var nodes = Nodes.Of(circuit, throughLinks: true);
        foreach (var part in circuit.Parts)
            foreach (var element in part.Kind.Elements.Where(e => e.IsConsumer))
            {
                End[] ends = [Nodes.NodeOf(part, element.From), Nodes.NodeOf(part, element.To)];
                bool feed = circuit.Sources.Any(s => ends.Any(e => nodes.AreOne(e, s.Feed))), back = ends.Any(e => nodes.AreOne(e, circuit.System.ReturnNode));
                var side = feed && back ? SwitchedSide.Unswitched : feed ? SwitchedSide.GroundSwitched : back ? SwitchedSide.HotSwitched : SwitchedSide.BothSides;
                yield return new(part, element, side, new([])) { IsApproximate = true };
            }
    }
}
