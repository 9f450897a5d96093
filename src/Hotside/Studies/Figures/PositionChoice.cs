using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Studies.Figures;

/// <summary>Chooses positions of a circuit's actuators.</summary>
internal sealed class PositionChoice(Circuit circuit)
{
    // What the kinds' data call the position of a key in which an engine runs.
    private const string Run = "run";

    /// <summary>The positions of a combination, the first of each that serves.</summary>
    public static ImmutableArray<SetPosition> Of(Combination combination) => [.. combination.All.Select(s => Put(s.Variable, s.Positions[0]))];

    /// <summary>The conditions in which every source gives what it can.</summary>
    public ImmutableArray<SetPosition> SourcesRunning =>
    [
        .. circuit.Sources.Where(s => s.Element.When is not null)
            .SelectMany(s => s.Element.When!.Tests.Select(t => Put(circuit.VariableOf(s.Part, t.Actuator), t.Positions[0]))).DistinctBy(p => (p.Part, p.Actuator)),
    ];

    /// <summary>The same with each key that is left alone turned to where an engine runs.</summary>
    public ImmutableArray<SetPosition> WithKeyOn(ImmutableArray<SetPosition> positions) =>
    [
        .. circuit.Variables.Where(v => v.Actuator.Drive == ActuatorDrive.Key && v.Actuator.Positions.Contains(Run)).Select(v => Put(v, Run)).Where(k => !Has(positions, k)),
        .. positions,
    ];

    /// <summary>Whether positions say something of the same actuator.</summary>
    public static bool Has(ImmutableArray<SetPosition> positions, SetPosition one) => positions.Any(p => p.Part == one.Part && p.Actuator == one.Actuator);

    /// <summary>A variable put somewhere.</summary>
    public static SetPosition Put(Variable variable, string position) => new(variable.Part, variable.Actuator.Name, position);
}
