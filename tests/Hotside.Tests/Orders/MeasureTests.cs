using System.Diagnostics;
using Hotside.Orders;
using Hotside.Orders.Harms;
using Hotside.Tests.Support;

namespace Hotside.Tests.Orders;

public class MeasureTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData("gauges")]
    [InlineData("signals")]
    [InlineData("headlamps")]
    [InlineData("van")]
    public void Dump(string name)
    {
        var job = Job.ReadFile(Repository.Path("tests", "Hotside.Tests", "Reading", "jobs", name + ".yaml")).OrThrow();
        WorkPlan plan = new(job.Alteration);
        HarmSearch search = new(plan, job.Study);
        output.WriteLine($"== {name}: settings {search.SettingCount}");
        bool[] done = new bool[plan.Count];
        var watch = Stopwatch.StartNew();
        foreach (int i in plan.Order.Prepend(-1))
        {
            if (i >= 0 && (i >= plan.Count || !plan.Acts[i].ChangesCircuit)) continue;
            if (i >= 0) done[i] = true;
            string Told(Battery b) => string.Join("; ", search.Of(done, b).Where(h => h.Harm.IsUnsafe).Take(3).Select(h => h.Harm.What + " (" + h.Setting + ")"));
            output.WriteLine($"{(i < 0 ? "start" : plan.Acts[i].Type + " " + plan.Acts[i].Item + " " + plan.Acts[i].At)}\n     NEW {Told(Battery.New)}\n     OLD {Told(Battery.Old)}");
        }
        output.WriteLine($"{watch.ElapsedMilliseconds} ms, {search.Solved} solved");
    }

    [Fact]
    public void Measure()
    {
        var files = Directory.GetDirectories(Repository.Path("gallery")).Select(d => Path.Combine(d, "job.yaml")).Where(File.Exists)
            .Concat(Directory.GetFiles(Repository.Path("tests", "Hotside.Tests", "Reading", "jobs"), "*.yaml")).Order(StringComparer.Ordinal);
        foreach (string file in files)
        {
            var job = Job.ReadFile(file).OrThrow();
            var study = job.Study;
            var watch = Stopwatch.StartNew();
            WorkPlan plan = new(job.Alteration);
            long planned = watch.ElapsedMilliseconds;
            Verdicts verdicts = new(plan, study);
            output.WriteLine($"{Path.GetRelativePath(Repository.Path(), file)}: acts {plan.Acts.Take(plan.Count).Count(a => a.ChangesCircuit)}, steps {plan.Steps.Length}, new {verdicts.HarmfulStates(Battery.New)} old {verdicts.HarmfulStates(Battery.Old)}, new from {verdicts.NewBatteryFrom} old until {verdicts.OldBatteryUntil}, solved {verdicts.Solved}, {planned} + {watch.ElapsedMilliseconds - planned} ms");
            foreach (var problem in plan.Problems.Concat(verdicts.Problems())) output.WriteLine("    " + problem);
        }
    }
}

public class TimeTests(ITestOutputHelper output)
{
    [Fact]
    public void Time()
    {
        var job = Job.ReadFile(Repository.Path("tests", "Hotside.Tests", "Reading", "jobs", "van.yaml")).OrThrow();
        var settings = HarmSettings.Of(job.Study);
        for (int round = 0; round < 3; round++)
        {
            var c = new Hotside.Circuits.Circuit(job.Alteration.After.System, job.Alteration.After.Parts, job.Alteration.After.Conductors, []);
            var watch = Stopwatch.StartNew();
            StateGraph graph = new(c, _ => "");
            output.WriteLine($"graph {watch.Elapsed.TotalMilliseconds}"); watch.Restart();
            foreach (var s in settings) graph.KeyOf(s);
            output.WriteLine($"{settings.Length} keys {watch.Elapsed.TotalMilliseconds}"); watch.Restart();
            var model = new Hotside.Solving.CircuitModel(c);
            output.WriteLine($"model {watch.Elapsed.TotalMilliseconds}"); watch.Restart();
            var solver = new Hotside.Solving.StateSolver(model);
            output.WriteLine($"solver {watch.Elapsed.TotalMilliseconds}"); watch.Restart();
            double[]? near = null;
            foreach (var s in settings) { var p = solver.Solve(solver.StateOf(s.Positions), s.Values); near = p.Point.Volts; output.WriteLine($"{s.Name} {watch.Elapsed.TotalMilliseconds}"); }
            watch.Restart();
            StateContext context = new(job.Alteration) { Notes = true };
            StateJudge judge = new(graph, [], context);
            foreach (var s in settings) { judge.In(s);  }
            output.WriteLine($"judged {watch.Elapsed.TotalMilliseconds}");
        }
    }
}
