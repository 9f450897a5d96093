using System.Globalization;
using Hotside.Circuits;
using Hotside.Faults;
using Hotside.Sizing;
using Hotside.Studies;

namespace Hotside.Benchmarks;

/// <summary>How long all single faults of a whole vehicle take in one setting with as much on as goes, and how long sizing it takes.</summary>
internal static class FaultBenchmark
{
    private const double Limit = 100;

    public static int Run(string[] arguments, TextWriter output)
    {
        int count = arguments is [var word] && int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out int asked) ? asked : 5;
        output.WriteLine("All single faults of a vehicle in one setting: each conductor open, badly joined, shorted at both ends");
        output.WriteLine("  seed  conductors  faults  with effect   median ms  worst ms  processor ms   sizing ms");
        double slowest = 0;
        for (int seed = 1; seed <= count; seed++)
        {
            var study = Job.Read(GeneratedVehicle.Of(seed)).OrThrow().Study;
            var sizes = SizeStudy.Of(study).After;
            var setting = EverythingOn(sizes.Circuit);
            var faults = CircuitFaults.Of(sizes, setting).Faults;
            var timing = Timing.Of(() => CircuitFaults.Of(sizes, setting));
            var sizing = Timing.Of(() => Sized(study), warmUps: 1, runs: 3);
            slowest = Math.Max(slowest, timing.Processor);
            output.WriteLine(FormattableString.Invariant(
                $"  {seed,4}  {sizes.Circuit.Conductors.Length,10}  {faults.Length,6}  {faults.Count(f => !f.IsWithoutEffect),11}  {timing.Median,10:0.0}  {timing.Worst,8:0.0}  {timing.Processor,12:0.0}  {sizing.Median,10:0.0}"));
        }
        output.WriteLine(FormattableString.Invariant($"Slowest {slowest:0.0} ms of processor time; all faults in one setting may take {Limit:0} ms: {(slowest <= Limit ? "kept" : "NOT KEPT")}."));
        return slowest <= Limit ? 0 : 1;
    }

    // Each circuit is sized when it is asked for.
    private static void Sized(Study study) => _ = SizeStudy.Of(study) is { Before: not null, After: not null };

    // Every switch in its last position: most of a vehicle is live.
    private static Setting EverythingOn(Circuit circuit) => new("everything on",
        [.. circuit.Variables.Where(v => v.Actuator.Drive != ActuatorDrive.Driven).Select(v => new SetPosition(v.Part, v.Actuator.Name, v.Actuator.Positions[^1]))], []);
}
