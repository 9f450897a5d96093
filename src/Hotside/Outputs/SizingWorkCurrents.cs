using Hotside.Sizing;
using Hotside.Sizing.Currents;
using Hotside.Solving.Laws;

namespace Hotside.Outputs;

/// <summary>Writes how the greatest current of a conductor comes about.</summary>
internal static class SizingWorkCurrents
{
    private const string SetPoint = "set-point of the charging regulator: 14.3 V at 12 V, TM 5-3820-233-35/1; 7.2 V at 6 V, from memory";

    /// <summary>Writes the lines.</summary>
    /// <param name="sizes">The circuit.</param>
    /// <param name="sizing">The conductor.</param>
    /// <param name="line">Writes a line and its source.</param>
    public static void Write(CircuitSizes sizes, ConductorSizing sizing, Action<string, string> line)
    {
        var worst = sizing.Worst;
        string when = worst.Positions.IsEmpty ? "" : ", when " + string.Join(" and ", worst.Positions.Select(sizes.Circuit.TextOf));
        string amperes = $"I = {SizingWork.Figure(worst.Amperes)} A";
        if (worst.How != CurrentBasis.Bound)
        {
            line($"it lies on a ring or between sources: {(worst.How == CurrentBasis.Enumerated ? "every combination of the switches that matter" : "combinations of many switches")} computed at {SizingWork.Figure(sizes.HighestVolts)} V", SetPoint);
            line(amperes + when + (worst.How == CurrentBasis.Searched ? "; searched, it may be a little low" : ""), "Kirchhoff's laws");
        }
        else if (worst.Machine is { } machine) line($"{amperes}: what {machine} gives at most; the loads behind take less", "its rating");
        else if (worst.Loads.IsEmpty) line("no steady load takes current through it: I = 0", "");
        else
        {
            line($"loads behind it that can be on together, at {SizingWork.Figure(sizes.HighestVolts)} V", SetPoint);
            foreach (var load in worst.Loads) Write(sizes, load, line);
            line((worst.Loads.Length > 1 ? $"I = {string.Join(" + ", worst.Loads.Select(l => SizingWork.Figure(l.Amperes)))} = {SizingWork.Figure(worst.Amperes)} A" : amperes) + when, "Kirchhoff's first law");
        }
    }

    private static void Write(CircuitSizes sizes, LoadCurrent load, Action<string, string> line)
    {
        var laws = Enumerable.Range(load.Element.FirstEdge, load.Element.EdgeCount).Select(e => sizes.Model.Edges[e].Closed).OfType<Law>().ToArray();
        string volts = SizingWork.Figure(sizes.HighestVolts), amperes = SizingWork.Figure(load.Amperes), name = $"  {load.Load.Name,-6} ";
        if (load.IsComputed) line($"{name}{amperes} A, computed: something in its way takes volts (3 % more for what else is on)", "Kirchhoff's laws");
        else if (load.Amperes < load.Most) line($"{name}{amperes} A, computed: through other loads, while it is off", "Kirchhoff's laws");
        else if (laws is [LampLaw lamp])
            line($"{name}{SizingWork.Figure(lamp.Amperes)} × ({volts} / {SizingWork.Figure(lamp.Volts)})^{SizingWork.Figure(lamp.Exponent)} = {amperes} A", "filament: Fink and Beaty, 11th ed., page 22-8");
        else if (laws is [ClampLaw { IsLine: true, Emf: 0 } resistance]) line($"{name}{volts} / {SizingWork.Figure(1 / resistance.Siemens)} = {amperes} A", "Ohm's law");
        else if (laws is [ClampLaw]) line($"{name}{amperes} A, whatever the volts: its torque asks for it", "current goes with torque");
        else if (laws is [FanLaw or SeriesFanLaw]) line($"{name}{amperes} A at {volts} V: a fan's load grows with the square of its speed", "current goes with torque");
        else line($"{name}{amperes} A at {volts} V", "");
    }
}
