using Hotside.Circuits;
using Hotside.Solving;
using Hotside.Solving.Laws;

namespace Hotside.Tests.Solving;

/// <summary>
/// What an element draws by what its part states, and where that is silent by what a solution tells that it took: every figure of a solution is one of the two.
/// </summary>
internal sealed class StatedElement(Circuit circuit, Solution solution, Part part, Element element, SpiceAround around)
{
    public Part Part => part;

    public Element Element => element;

    public SpiceAround Around => around;

    public string Name => part.Id + "." + element.Name;

    public double Volts => part.Rated(element.Name, Unit.Volt) ?? circuit.System.Volts[0];

    public double Amperes => Rated(Unit.Ampere) ?? (Rated(Unit.Watt) / Volts) ?? (Rated(Unit.Ohm) is > 0 and var ohms ? Volts / ohms : (double?)null)
        ?? Taken(AssumedFigure.Current) ?? (Taken(AssumedFigure.Power) / Volts) ?? throw Silent();

    public double Watts => Rated(Unit.Watt) ?? (Volts * Amperes);

    public double Ohms => Rated(Unit.Ohm) ?? (Volts / Rated(Unit.Ampere)) ?? (Volts * Volts / Rated(Unit.Watt))
        ?? Taken(AssumedFigure.Resistance) ?? (Volts / Taken(AssumedFigure.Current)) ?? (Volts * Volts / Taken(AssumedFigure.Power)) ?? throw Silent();

    /// <summary>Whether it conducts, or gives, where the switches and relays of the solution stand.</summary>
    public bool IsOn => element.When is not { } when || when.Tests.All(t => t.Positions.Contains(PositionOf(t.Actuator)));

    public bool Has(ElementTraits trait) => element.Traits.HasFlag(trait);

    /// <summary>What the part states, a range at its middle.</summary>
    public double? Rated(Unit unit) => part.RatedMiddle(element.Name, unit);

    /// <summary>What the solution says it took.</summary>
    public double? Taken(AssumedFigure what) => solution.Assumptions.FirstOrDefault(a => a.Of == Name && a.What == what)?.Value;

    private string PositionOf(string actuator)
    {
        var variable = circuit.VariableOf(part, actuator);
        return solution.Positions.First(p => p.Part == variable.Part && p.Actuator == variable.Actuator.Name).Position;
    }

    private InvalidOperationException Silent() => new($"{Name}: neither stated nor told as taken");
}
