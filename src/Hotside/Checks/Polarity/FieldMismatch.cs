using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Polarity;

/// <summary>Row 25: a generator's field and its regulator both end on ground, or both on the armature, so that none or all of the field flows.</summary>
internal static class FieldMismatch
{
    public static readonly DiagnosticKind Kind = new("HS3325", Severity.Stop, "Regulator does not fit the generator's field",
        "the field of {0} ends {1}, and {2} joins it there too: {3}")
    {
        Source = "TM 5-3810-300-24&P-3; manuals differ in the letters A and B for the two sorts, so the wiring is what is compared",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit)
    {
        var nodes = Nodes.Of(circuit.Circuit, throughLinks: false);
        foreach (var machine in circuit.Circuit.Parts.Where(Trade.IsGenerator))
        {
            var armature = machine.Kind.Elements.First(Trade.IsMachine);
            if (machine.Kind.Elements.FirstOrDefault(e => e.Name == "field" && e.Type == ElementType.Coil) is not { } field) continue;
            // The end that a terminal of its own brings out; a third-brush machine has none.
            string? outer = new[] { field.From, field.To }.FirstOrDefault(t => t != "case" && t != armature.From);
            if (outer is null) continue;
            string inner = outer == field.From ? field.To : field.From;
            bool isInside = inner == "case";
            foreach (var (regulator, contact) in Regulating(circuit.Circuit, nodes, Nodes.NodeOf(machine, outer), machine))
            {
                string other = nodes.AreOne(Nodes.NodeOf(regulator, contact.From), Nodes.NodeOf(machine, outer)) ? contact.To : contact.From;
                bool toGround = nodes.AreOne(Nodes.NodeOf(regulator, other), circuit.Circuit.System.ReturnNode) || other == "case";
                if (toGround != isInside) continue;
                yield return Kind.Of([machine.Id, regulator.Id], machine.Id, isInside ? "on ground inside" : "on the armature inside", regulator.Id, "no field current flows, and it gives nothing or what its magnetism leaves") with
                {
                    Hint = isInside ? "take a regulator that feeds the field (regulator-field-fed)" : "take a regulator that grounds the field (regulator)",
                };
            }
        }
    }

    private static IEnumerable<(Part Regulator, Element Contact)> Regulating(Circuit circuit, Nodes nodes, End field, Part machine) =>
        from part in circuit.Parts
        where part != machine && part.Kind.Id.StartsWith("regulator", StringComparison.Ordinal)
        from contact in part.Kind.Elements
        where contact is { Type: ElementType.Contact, When: null } && (nodes.AreOne(Nodes.NodeOf(part, contact.From), field) || nodes.AreOne(Nodes.NodeOf(part, contact.To), field))
        select (part, contact);
}
