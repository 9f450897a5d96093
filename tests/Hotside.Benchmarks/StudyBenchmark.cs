using System.Globalization;
using Hotside.Checks;
using Hotside.Circuits;
using Hotside.Sizing;
using Hotside.Studies;
using Hotside.Tests.Studies;

namespace Hotside.Benchmarks;

/// <summary>
/// How long a study takes: whole vehicles, both circuits, against a limit; and small circuits beside the definition of a side walked state by state, on the same work
/// in the same run.
/// </summary>
internal static class StudyBenchmark
{
    private const double Limit = 100;

    public static int Run(string[] arguments, TextWriter output)
    {
        int count = arguments is [var word] && int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out int asked) ? asked : 10;
        double slowest = Vehicles(count, output);
        Checked(output);
        Explosion(output);
        Peer(output);
        Line(output, $"Slowest median {slowest:0.0} ms; a whole vehicle, both circuits, may take {Limit:0} ms: {(slowest <= Limit ? "kept" : "NOT KEPT")}.");
        return slowest <= Limit ? 0 : 1;
    }

    private static double Vehicles(int count, TextWriter output)
    {
        output.WriteLine("Whole vehicles, before and after");
        output.WriteLine("  seed  conductors  switches  relays  loads   states   median ms  worst ms  processor ms  approximate");
        double slowest = 0;
        for (int seed = 1; seed <= count; seed++)
        {
            var alteration = Job.Read(GeneratedVehicle.Of(seed)).OrThrow().Alteration;
            var study = Study.Of(alteration);
            var timing = Timing.Of(() => Study.Of(alteration));
            slowest = Math.Max(slowest, timing.Median);
            var circuit = alteration.After;
            int relays = circuit.Variables.Count(v => v.Actuator.Drive == ActuatorDrive.Driven);
            double states = circuit.Variables.Where(v => v.Actuator.Drive != ActuatorDrive.Driven).Sum(v => Math.Log10(v.Actuator.Positions.Length));
            int loads = study.Before.Loads.Length + study.After.Loads.Length, approximate = study.Before.Loads.Concat(study.After.Loads).Count(l => l.IsApproximate);
            Line(output, $"  {seed,4}  {circuit.Conductors.Length,10}  {circuit.Variables.Length - relays,8}  {relays,6}  {loads,5}  10^{states,4:0.0}  {timing.Median,10:0.0}  {timing.Worst,8:0.0}  {timing.Processor,12:0.0}  {approximate,11}");
        }
        return slowest;
    }

    // What the checks of the trade take beyond the study: the vehicle of the gallery, where it is at hand, and generated ones.
    private static void Checked(TextWriter output)
    {
        output.WriteLine("All checks beyond the study, altered circuits");
        string van = Path.Combine("gallery", "van", "job.yaml");
        var texts = Enumerable.Range(1, 3).Select(seed => ($"vehicle {seed}", GeneratedVehicle.Of(seed)));
        foreach (var (name, text) in File.Exists(van) ? texts.Prepend(("gallery/van", File.ReadAllText(van))) : texts)
        {
            var study = Study.Of(Job.Read(text).OrThrow().Alteration);
            int found = CheckList.Run(study, new(() => SizeStudy.Of(study))).Length;
            var timing = Timing.Of(() => CheckList.Run(study, new(() => SizeStudy.Of(study))), warmUps: 1, runs: 5);
            Line(output, $"  {name}: median {timing.Median:0.0} ms, processor {timing.Processor:0.0} ms, {study.After.Circuit.Conductors.Length} conductors, {found} findings");
        }
    }

    // 40 crossover switches in a chain have 5e11 minimal combinations; 24 doors and 24 gates in two rows have 576.
    private static void Explosion(TextWriter output)
    {
        output.WriteLine("Circuits whose minimal combinations explode");
        foreach (var (name, text) in new[] { ("40 crossover switches in a chain", Crossovers(40)), ("24 switches beside each other, then 24 more", Gates(24)) })
        {
            var circuit = TestCircuit.Read(text);
            var timing = Timing.Of(() => CircuitStudy.Of(circuit));
            Line(output, $"  {name}: median {timing.Median:0.0} ms, worst {timing.Worst:0.0} ms");
        }
    }

    private static void Peer(TextWriter output)
    {
        var circuits = Enumerable.Range(0, 60).Select(seed => TestCircuit.Read(GeneratedCircuit.Of(seed))).ToArray();
        double states = circuits.Sum(c => new BruteForce(c).States.Count);
        var study = Timing.Of(() => Array.ForEach(circuits, c => CircuitStudy.Of(c)));
        var peer = Timing.Of(() => Array.ForEach(circuits, Walk), warmUps: 1, runs: 5);
        output.WriteLine("60 small circuits: the study, and the definition walked state by state");
        Line(output, $"  study       median {study.Median,8:0.0} ms, worst {study.Worst,8:0.0} ms: {study.Median / circuits.Length:0.00} ms a circuit, with controls, chains, paths, findings");
        Line(output, $"  definition  median {peer.Median,8:0.0} ms, worst {peer.Worst,8:0.0} ms: {peer.Median / circuits.Length:0.00} ms a circuit, {states / peer.Median * 1000:0} states a second, whether fed alone");
        Line(output, $"  the study is {peer.Median / study.Median:0.0} times as fast");
    }

    private static void Walk(Circuit circuit)
    {
        BruteForce truth = new(circuit);
        foreach (var settled in truth.States.Select(truth.Settle))
        foreach (var net in settled.Counted)
        foreach (var load in truth.Loads)
            if (!net.Fed(load)) net.InSeries(load);
    }

    private static string Crossovers(int count) => string.Join('\n',
    [
        "12 V, negative", "G1 battery 12V", "E1 lamp 12V 21W 2=chassis",
        .. Numbers(1, count).Select(i => $"S{i} crossover"),
        "- G1.neg to chassis", "- G1.pos to S1.a1", Invariant($"- S{count}.b1 to E1.1"),
        .. Enumerable.Range(1, count - 1).SelectMany(i => new[] { Invariant($"- S{i}.b1 to S{i + 1}.a1"), Invariant($"- S{i}.b2 to S{i + 1}.a2") }),
    ]);

    private static string Gates(int count) => string.Join('\n',
    [
        "12 V, negative", "G1 battery 12V", "E1 lamp 12V 21W 2=chassis", "X1 rail", "X2 rail",
        .. Numbers(1, 2 * count).Select(i => $"S{i} switch"),
        "- G1.neg to chassis", "- G1.pos to X1.1",
        .. Numbers(1, count).SelectMany(i => new[] { $"- X1.1 to S{i}.1", $"- S{i}.2 to X2.1" }),
        .. Numbers(count + 1, count).SelectMany(i => new[] { $"- X2.1 to S{i}.1", $"- S{i}.2 to E1.1" }),
    ]);

    private static IEnumerable<string> Numbers(int first, int count) => Enumerable.Range(first, count).Select(i => i.ToString(CultureInfo.InvariantCulture));

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);

    private static void Line(TextWriter output, FormattableString text) => output.WriteLine(Invariant(text));
}
