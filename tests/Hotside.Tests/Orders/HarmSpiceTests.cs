using System.Globalization;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Orders;
using Hotside.Orders.Harms;
using Hotside.Solving;
using Hotside.Tests.Solving;
using Hotside.Tests.Support;

namespace Hotside.Tests.Orders;

/// <summary>Free ends, dead and bridged, against ngspice, an independent program, on circuits with laws that are written down anew.</summary>
public class HarmSpiceTests
{
    [Theory]
    [InlineData("gauges", "N1, F1, w14 laid, w4 off", "w4", "S1 run")]
    [InlineData("headlamps", "1-6, w5 off", "w5", "S2 on, S3 high")]
    [InlineData("headlamps", "1-6, 18, w1 cut", "w1", "")]
    public void A_live_free_end_has_the_volts_and_draws_the_amperes_that_ngspice_finds(string name, string done, string wire, string positions)
    {
        OutsideProgram.Needed("ngspice");
        var job = OrderJobs.OfFile(name);
        WorkPlan plan = new(job.Alteration);
        List<Diagnostic> wrong = [];
        bool[] marks = Progress.Read(done, [.. plan.Acts.Take(plan.Count)], wrong);
        Assert.Empty(wrong);
        Setting setting = new("as said", [.. positions.Split(", ", StringSplitOptions.RemoveEmptyEntries).Select(p => SetPosition.Named(job.Alteration.Before.Parts, p.Split(' ')[0], p.Split(' ')[1]))], []);
        var harm = Assert.Single(new HarmSearch(plan, job.Study, [setting]).Of(marks, Battery.Old), h => h.Harm.Kind == HarmKind.LiveFreeEnd && h.Harm.Item == wire).Harm;

        End hanging = End.Free;
        var circuit = plan.States.Of(marks, job.Alteration.Before.System, (id, side) => id == wire ? hanging = End.At(id, side == 0 ? "first" : "second") : End.Free);
        circuit = new(circuit.System, circuit.Parts, [.. circuit.Conductors.Where(c => c.Ends.All(e => !e.IsFree))], []);
        double volts = Math.Abs(Compared(circuit, setting).VoltsAt(hanging.ToString())!.Value);
        Assert.Contains($"free end of {wire}: {volts.ToString("0.#", CultureInfo.InvariantCulture)} V", harm.What, StringComparison.Ordinal);

        var bridged = new Circuit(circuit.System, circuit.Parts, [.. circuit.Conductors, new("bridge", hanging, End.Chassis, new() { ResistanceInOhms = 0.05 })], []);
        Assert.True(Math.Abs(Compared(bridged, setting).Conductor("bridge").Amperes) > 3);
    }

    // What the solver finds, once ngspice has found the same.
    private static Solution Compared(Circuit circuit, Setting setting)
    {
        var solution = new CircuitSolver(circuit).SolveFromRest(setting);
        SpicePoint point = new(circuit, solution);
        Assert.True(SpiceRun.Find(point) is not null, "ngspice finds no point");
        var values = SpiceRun.Find(point)!.Value.Values;
        Assert.NotEmpty(point.Figures);
        Assert.All(point.Figures, f => Assert.True(Math.Abs((f.Name.Length == 0 ? 0 : values[f.Name]) - f.Ours) <= f.Tolerance, f.What));
        return solution;
    }
}
