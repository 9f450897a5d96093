using Hotside.Orders;

namespace Hotside.Tests.Orders;

/// <summary>The planned order beside all others.</summary>
public class BestOrderTests
{
    [Theory]
    [InlineData("fuel-pump", 60)]
    [InlineData("gauges-each", 25)]
    [InlineData("headlamps", 25)]
    public void Probe(string name, int width)
    {
        var job = OrderJobs.OfGallery(name);
        Verdicts verdicts = new(job.Plan, job.Study);
        var best0 = new BestOrders(job, name is "fuel-pump" or "courtesy" or "gauges" or "horn" ? 60000 : 1).Pairs();
        BestOrders best = new(job, 0);
        var beam = best.Beam(width);
        File.WriteAllText($"/tmp/o/beam-{name}.txt", $"planned {verdicts.HarmfulStates(Battery.New)} {verdicts.HarmfulStates(Battery.Old)}; beam {beam.New} {beam.Old} best {string.Join(" ", best0)}\nPLANNED\n{string.Join("\n", best.Planned())}\nBEAM\n{string.Join("\n", beam.Path)}\n");
    }
}
