using Hotside.Layouts;
using Hotside.Tests.Layouts;

namespace Hotside.Benchmarks;

/// <summary><c>layout CASES OUT</c>: lays out each circuit of a folder by the library's own passes and writes its drawing, for any ruler to measure.</summary>
internal static class LayoutBenchmark
{
    private const int WarmUps = 2, Runs = 5;

    public static int Run(string[] arguments, TextWriter output)
    {
        if (arguments is not [var cases, var target] || !Directory.Exists(cases)) return 64;
        Directory.CreateDirectory(target);
        foreach (string file in Directory.EnumerateFiles(cases, "*.json").Order(StringComparer.Ordinal))
        {
            var bench = BenchCase.Read(file);
            var layout = Layout.Of(bench.Input, new());
            var time = Timing.Of(() => Layout.Of(bench.Input, new()), WarmUps, Runs);
            File.WriteAllText(Path.Combine(target, bench.Name + ".json"), BenchDrawing.Of(bench, layout, time.Median));
            output.WriteLine(FormattableString.Invariant($"{bench.Name,-16} {bench.Size,-2} {bench.Conductors,4} conductors {time.Median,8:0.0} ms, worst {time.Worst:0.0} ms, processor {time.Processor:0.0} ms"));
        }
        return 0;
    }
}
