using System.Diagnostics;
using Hotside.Circuits;
using Hotside.Orders;

namespace Hotside.Benchmarks;

/// <summary>How many states between the acts a battery would harm, in the order in which the list is written and as it is planned, and how long it takes to find them.</summary>
internal static class OrderBenchmark
{
    private const double MostSeconds = 10;

    public static int Run(string[] arguments, TextWriter output)
    {
        if (arguments is not [var folder])
        {
            output.WriteLine("Name a folder of job files, or of folders with a job.yaml.");
            return 64;
        }
        double slowest = 0;
        output.WriteLine("job                       acts steps  as written: new old  planned: new old  new from  old until  battery  solved  ms");
        foreach (string file in Directory.EnumerateFiles(folder, "*.yaml", SearchOption.AllDirectories).Order(StringComparer.Ordinal))
        {
            if (Job.ReadFile(file).Job is not { } job || job.Alteration.Changes.IsEmpty) continue;
            var study = job.Study;
            WorkPlan plan = new(job.Alteration);
            var watch = Stopwatch.StartNew();
            Verdicts planned = new(plan, study);
            slowest = Math.Max(slowest, watch.Elapsed.TotalSeconds);
            string took = Numbers.Plain(watch.Elapsed.TotalMilliseconds, 0);
            Verdicts written = new(plan, study, [.. Enumerable.Range(0, plan.Count)]);
            string name = Path.GetFileName(file) == "job.yaml" ? Path.GetFileName(Path.GetDirectoryName(file))! : Path.GetFileNameWithoutExtension(file);
            string[] cells =
            [
                Whole(plan.Acts.Take(plan.Count).Count(a => a.ChangesCircuit), 4), Whole(plan.Steps.Length, 5), Whole(written.HarmfulStates(Battery.New), 16), Whole(written.HarmfulStates(Battery.Old), 3),
                Whole(planned.HarmfulStates(Battery.New), 14), Whole(planned.HarmfulStates(Battery.Old), 3), Whole(planned.NewBatteryFrom, 9), Whole(planned.OldBatteryUntil, 10),
                Whole(planned.BatteryStep, 8), Whole(planned.Solved, 7), took.PadLeft(5),
            ];
            output.WriteLine(name.PadRight(25) + " " + string.Join(' ', cells));
        }
        output.WriteLine($"slowest {Numbers.Plain(slowest, 1)} s, may take {Numbers.Plain(MostSeconds)} s");
        return slowest > MostSeconds ? 1 : 0;
    }

    private static string Whole(int? number, int width) => (number is { } value ? Numbers.Whole(value) : "-").PadLeft(width);
}
