using Hotside.Circuits;
using Hotside.Solving;

namespace Hotside.Tests.Solving;

/// <summary>What a setting, parts and wires say of temperatures, charge, speeds and joints, looked up anew for the deck.</summary>
internal sealed class SpiceAround(Surroundings around, Setting setting)
{
    public double WindingCelsius => Said("windings", Unit.Celsius) ?? around.WindingCelsius;

    public double ConductorCelsius(Conductor conductor)
    {
        bool isAtEngine = (conductor.Wire.Place ?? "").Contains("engine", StringComparison.Ordinal);
        return Said(conductor.Id, Unit.Celsius) ?? conductor.Wire.TemperatureInCelsius ?? (isAtEngine ? Said("engine bay", Unit.Celsius) : null) ?? Said("wires", Unit.Celsius) ?? around.ConductorCelsius;
    }

    public double JointOhms(Conductor conductor) =>
        around.BadJoints.Where(j => j.Conductor == conductor.Id).Sum(j => j.Ohms) + new[] { conductor.Wire.JointAtFromInOhms, conductor.Wire.JointAtToInOhms }.Sum(j => j ?? 0);

    public double Charge(Part part, Element element) => Said(part.Id, Unit.Percent) / 100
        ?? Stated(part, element) / 100
        ?? Said("charge", Unit.Percent) / 100 ?? around.Charge;

    /// <summary>Turns a minute of a machine that is driven so much faster than its engine.</summary>
    public double? Turns(Part part, double ratio) => Said(part.Id, Unit.TurnsPerMinute) ?? (Said("engine", Unit.TurnsPerMinute) * ratio);

    public double? AlternatorTurns(Part part) => Turns(part, 15.0 / 7) ?? around.AlternatorSpeed;

    // One figure for all cells, or one for the upper and one for the lower half.
    private static double? Stated(Part part, Element element) =>
        part.Ratings.FirstOrDefault(r => r.Name == "charge %")?.Quantity.Values is { } stated ? stated[element.Name == "lower" ? stated.Length - 1 : 0] : null;

    private double? Said(string of, Unit unit) => setting.Values.FirstOrDefault(v => v.Part == of && v.Quantity.Unit == unit)?.Quantity.Value;
}
