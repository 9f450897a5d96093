using System.Collections.Immutable;
using Hotside.Checks;
using Hotside.Circuits;
using Hotside.Proposals.Rules;

namespace Hotside.Proposals.Steps;

/// <summary>Machines that charge, with their regulators and cut-outs and the wires between.</summary>
/// <param name="Machines">Generators and alternators.</param>
/// <param name="Regulators">Regulators and cut-outs that are wired to them.</param>
internal sealed record ChargingSet(ImmutableArray<Part> Machines, ImmutableArray<Part> Regulators)
{
    /// <summary>The ids of both.</summary>
    public HashSet<string> Ids => [.. Machines.Concat(Regulators).Select(p => p.Id)];

    /// <summary>The set of a circuit; empty where nothing charges.</summary>
    public static ChargingSet Of(Circuit circuit)
    {
        ImmutableArray<Part> machines = [.. circuit.Parts.Where(p => p.Kind.Elements.Any(Trade.IsMachine))];
        HashSet<string> ids = [.. machines.Select(m => m.Id)];
        bool IsWired(Part part) => circuit.Conductors.Any(c => c.Ends.Any(e => e.Part == part.Id) && c.Ends.Any(e => e.Part is { } other && ids.Contains(other)));
        return new(machines, [.. circuit.Parts.Where(p => DecisionTable.Standard.Kinds["regulators"].Contains(p.Kind.Id)).Where(IsWired)]);
    }

    /// <summary>The terminal from which a set feeds the vehicle: the regulator's beyond its cut-out, else the machine's own.</summary>
    public ImmutableArray<End> Outputs
    {
        get
        {
            ImmutableArray<End> ofRegulators =
            [
                .. Regulators.SelectMany(r => r.Kind.Elements.Where(e => e is { Type: ElementType.Contact, When: not null } && e.From != "case" && e.To != "case").Select(e => End.At(r.Id, r.Kind.TerminalNamed(e.To) ?? e.To))),
            ];
            return ofRegulators.IsEmpty ? [.. Machines.SelectMany(m => m.Kind.Elements.Where(e => e.IsSource).Take(1).Select(e => End.At(m.Id, m.Kind.TerminalNamed(e.From) ?? e.From)))] : ofRegulators;
        }
    }
}
