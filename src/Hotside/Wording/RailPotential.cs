using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Studies;

namespace Hotside.Wording;

/// <summary>The potential of a rail that one switch alone joins to a battery: it is live only with that switch on, and its name says so.</summary>
internal static class RailPotential
{
    /// <summary>Such as <c>+24 V with Q1 on</c>, <c>+12 V unless Q1 off</c>; empty for any other rail.</summary>
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
            group test.Positions by (Potential: SheetText.Potential(battery), Variable: variable);
        // A selector joins it to one battery, to another or to both.
        return joined.ToImmutableArray() is [var only] ? $"{only.Key.Potential} {When(only.Key.Variable, [.. only.SelectMany(p => p)])}" : "";
    }

    private static string When(Variable variable, ImmutableHashSet<string> positions)
    {
        var without = variable.Actuator.Positions.RemoveAll(positions.Contains);
        return positions.Count > 2 && without is [var only] ? $"unless {variable} {only}" : $"with {new PositionSet(variable, variable.Actuator.Positions.RemoveAll(p => !positions.Contains(p)))}";
    }
}
