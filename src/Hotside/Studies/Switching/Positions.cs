using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Studies.Switching;

/// <summary>
/// The variables of a circuit as variables of a decision diagram: first what hands and conditions move, then what windings move. What cycles, or is no control, rests.
/// </summary>
internal sealed class Positions
{
    private readonly Circuit circuit;
    private readonly Dictionary<Variable, int> numbers = [];
    private readonly int candour;
    private Condition? disconnectsOn;

    public Positions(Circuit circuit, CancellationToken cancel = default)
    {
        this.circuit = circuit;
        Cancel = cancel;
        var moved = circuit.Variables.Where(v => !v.Actuator.Cycles && !v.Actuator.IsNoControl).ToArray();
        Free = [.. moved.Where(v => v.Actuator.Drive != ActuatorDrive.Driven)];
        Driven = [.. moved.Where(v => v.Actuator.Drive == ActuatorDrive.Driven)];
        foreach (var variable in Free.Concat(Driven)) numbers.Add(variable, numbers.Count);
        candour = numbers.Count;
        Space = new([.. Free.Concat(Driven).Select(v => v.Actuator.Positions.Length), 2], cancel: cancel);
    }

    /// <summary>Ends whatever is worked out from these variables.</summary>
    public CancellationToken Cancel { get; }

    /// <summary>The diagram.</summary>
    public DecisionSpace Space { get; }

    /// <summary>What hands, feet, keys and conditions move; the diagram's first variables.</summary>
    public ImmutableArray<Variable> Free { get; }

    /// <summary>What windings move; the diagram's variables behind the free ones.</summary>
    public ImmutableArray<Variable> Driven { get; }

    /// <summary>The last variable: 0 takes interrupters as closed, 1 takes them as they stand.</summary>
    public int Candour => candour;

    /// <summary>
    /// The choices of positions in which every battery disconnect is on: each in a position in which one of its contacts closes. The side of a load is told of these,
    /// where another switch is in its way.
    /// </summary>
    public Condition DisconnectsOn => disconnectsOn ??= circuit.Parts.Where(p => p.Kind.IsDisconnect).SelectMany(p => p.Kind.Actuators.Where(a => a.Drive != ActuatorDrive.Driven).Select(a => (Part: p, Actuator: a)))
        .Aggregate(Space.AlwaysHolds, (on, d) => NumberOf(circuit.VariableOf(d.Part, d.Actuator.Name)) is { } number && Closing(d.Part, d.Actuator) is { Length: > 0 } closing ? on & Space.Where(number, closing) : on);

    /// <summary>The battery disconnects on which some states depend; ids.</summary>
    public ImmutableArray<string> DisconnectsIn(Condition states)
    {
        var among = Space.SupportOf(states).Where(n => n < Free.Length).Select(n => Free[n].Part).ToHashSet();
        return [.. circuit.Parts.Where(p => p.Kind.IsDisconnect && among.Contains(p.Id)).Select(p => p.Id)];
    }

    private static int[] Closing(Part part, Actuator actuator) =>
        [.. part.Kind.Elements.Where(e => e.Type == ElementType.Contact).SelectMany(e => e.When?.Tests ?? []).Where(t => t.Actuator == actuator.Name)
            .SelectMany(t => t.Positions).Select(p => actuator.Positions.IndexOf(p)).Where(p => p >= 0).Distinct()];

    /// <summary>The variable of a number; the interrupters' own has none.</summary>
    public Variable VariableAt(int number) => number < Free.Length ? Free[number] : Driven[number - Free.Length];

    /// <summary>The number of a variable; <see langword="null"/> when it always rests.</summary>
    public int? NumberOf(Variable variable) => numbers.TryGetValue(variable, out int number) ? number : null;

    /// <summary>When an element conducts or gives.</summary>
    public Condition WhenOf(Part part, Element element)
    {
        if (element.When is not { } when) return Space.AlwaysHolds;
        if (!element.IsNoControl) return When(part, when);
        bool movesItself = when.Tests.Any(t => circuit.VariableOf(part, t.Actuator).Actuator.Drive == ActuatorDrive.Driven);
        return movesItself ? Space.Where(candour, 0) | When(part, when) : Space.AlwaysHolds;
    }

    private Condition When(Part part, ElementCondition when)
    {
        var result = Space.AlwaysHolds;
        foreach (var test in when.Tests)
        {
            var variable = circuit.VariableOf(part, test.Actuator);
            var positions = variable.Actuator.Positions;
            if (NumberOf(variable) is { } number)
                result &= Space.Where(number, test.Positions.Select(p => positions.IndexOf(p)).Where(p => p >= 0));
            else if (!test.Positions.Contains(variable.Actuator.Rest))
                return Space.NeverHolds;
        }
        return result;
    }
}
