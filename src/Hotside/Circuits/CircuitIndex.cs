using System.Collections.Immutable;

namespace Hotside.Circuits;

/// <summary>What can be looked up in a circuit; made once, when first asked for.</summary>
internal sealed class CircuitIndex
{
    private readonly Dictionary<(string? Part, string Actuator), Variable> variables = [];

    public CircuitIndex(Circuit circuit)
    {
        foreach (var part in circuit.Parts) Parts.TryAdd(part.Id, part);
        foreach (var conductor in circuit.Conductors) Conductors.TryAdd(conductor.Id, conductor);
        Variables = [.. FindVariables(circuit)];
        Sources = SourcePoles.Of(circuit);
    }

    public Dictionary<string, Part> Parts { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, Conductor> Conductors { get; } = new(StringComparer.Ordinal);

    public ImmutableArray<Variable> Variables { get; }

    public ImmutableArray<SourcePoles> Sources { get; }

    public Variable VariableOf(Part part, string actuator) =>
        variables.TryGetValue((part.Id, actuator), out var own) ? own
        : variables.TryGetValue((null, actuator), out var shared) ? shared
        : throw new ArgumentException($"{part.Id} has no actuator \"{actuator}\".", nameof(actuator));

    private IEnumerable<Variable> FindVariables(Circuit circuit)
    {
        foreach (var part in circuit.Parts)
        foreach (var actuator in part.Kind.Actuators)
        {
            string? owner = actuator.IsShared ? null : part.Id;
            if (variables.ContainsKey((owner, actuator.Name))) continue;
            string label = owner is null ? actuator.Name : part.Kind.Actuators.Count(a => !a.IsShared) == 1 ? owner : owner + " " + actuator.Name;
            var variable = new Variable(owner, actuator) { Label = label };
            variables.Add((owner, actuator.Name), variable);
            yield return variable;
        }
    }
}
