using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Wording;

namespace Hotside.Drawings.Plans;

/// <summary>The potential of a rail that one switch alone joins to a battery: it is live only with that switch on, and its name says so.</summary>
internal static class RailPotential
{
    /// <summary>Such as <c>+24 V with Q1 on</c>; empty for any other rail.</summary>
    /// <param name="id">The rail.</param>
    /// <param name="circuit">The circuit.</param>
    public static string Of(string id, Circuit circuit)
    {
        if (circuit.FindPart(id) is not { Kind.Terminals: [var terminal, ..] } || circuit.System.Return?.Part == id) return "";
        var nodes = Nodes.Of(circuit, throughLinks: true);
        var batteries = circuit.Sources.Where(s => s.Element.When is null).ToArray();
        var rail = nodes.Representative(End.At(id, terminal.Name));
        if (batteries.Any(b => nodes.Representative(b.Feed) == rail)) return "";
        var joined =
            from part in circuit.Parts
            from element in part.Kind.Elements
            where element.Type == ElementType.Contact && element.When is { Tests.Length: 1 }
            let ends = new[] { nodes.Representative(Nodes.NodeOf(part, element.From)), nodes.Representative(Nodes.NodeOf(part, element.To)) }
            where ends.Contains(rail)
            from battery in batteries
            where ends.Contains(nodes.Representative(battery.Feed))
            let test = element.When!.Tests[0]
            let variable = circuit.VariableOf(part, test.Actuator)
            where variable.Actuator.Drive != ActuatorDrive.Driven
            select $"{SheetText.Potential(battery)} with {variable} {string.Join(" or ", test.Positions)}";
        return joined.Distinct().ToImmutableArray() is [var only] ? only : "";
    }
}
