using System.Diagnostics;
using Hotside.Orders;
using Hotside.Tests.Support;

namespace Hotside.Tests.Orders;

public class MeasureTests(ITestOutputHelper output)
{
    [Fact]
    public void Measure()
    {
        foreach (var (name, job) in OrderJobs.Gallery.Select(g => ("gallery/" + g, OrderJobs.OfGallery(g))).Concat(new[] { "horn", "starter", "gauges", "signals", "headlamps", "van" }.Select(f => ("jobs/" + f, OrderJobs.OfFile(f)))))
        {
            var study = job.Study;
            WorkPlan plan = new(job.Alteration);
            var watch = Stopwatch.StartNew();
            Verdicts verdicts = new(plan, study);
            long took = watch.ElapsedMilliseconds;
            Verdicts filed = new(plan, study, [.. Enumerable.Range(0, plan.Count)]);
            output.WriteLine($"{name}: acts {plan.Acts.Take(plan.Count).Count(a => a.ChangesCircuit)}, steps {plan.Steps.Length}, filed {filed.HarmfulStates(Battery.New)}/{filed.HarmfulStates(Battery.Old)} planned {verdicts.HarmfulStates(Battery.New)}/{verdicts.HarmfulStates(Battery.Old)}, new from {verdicts.NewBatteryFrom} old until {verdicts.OldBatteryUntil} of {verdicts.BatteryStep}, solved {verdicts.Solved}, {took} ms");
        }
    }
}
