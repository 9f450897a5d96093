using Hotside.Layouts;
using Hotside.Tests.Layouts;

namespace Hotside.Benchmarks;

/// <summary>
/// <c>kept CASES [OUT]</c>: takes a conductor out of each circuit of a folder, a dozen times, lays out what is left without and with the previous layout
/// and tells how much stayed in its place; the drawings are written for any ruler to measure.
/// </summary>
internal static class KeptBenchmark
{
    public static int Run(string[] arguments, TextWriter output)
    {
        if (arguments is not [var cases, ..] || !Directory.Exists(cases)) return 64;
        string? target = arguments.Length > 1 ? arguments[1] : null;
        if (target is not null) Directory.CreateDirectory(target);
        var classes = new SortedDictionary<string, List<(double Alone, double Following)>>(StringComparer.Ordinal);
        foreach (string file in Directory.EnumerateFiles(cases, "*.json").Order(StringComparer.Ordinal))
        {
            var bench = BenchCase.Read(file);
            var layout = Layout.Of(bench.Input, new());
            double alone = Measured(bench, layout, false, target), following = Measured(bench, layout, true, target);
            if (!classes.TryGetValue(bench.Size, out var list)) classes[bench.Size] = list = [];
            list.Add((alone, following));
            output.WriteLine(FormattableString.Invariant($"{bench.Name,-16} {bench.Size,-2} kept {alone,5:0.0} %, with the previous layout {following,5:0.0} %"));
        }
        foreach (var (size, list) in classes)
            output.WriteLine(FormattableString.Invariant($"{size,-2} kept {list.Average(k => k.Alone),5:0.0} %, with the previous layout {list.Average(k => k.Following),5:0.0} %"));
        return 0;
    }

    private static double Measured(BenchCase bench, Layout layout, bool withPrevious, string? target)
    {
        var kept = BenchKept.Of(bench.Input, layout, withPrevious);
        foreach (var result in kept.Where(_ => target is not null))
            File.WriteAllText(Path.Combine(target!, $"{bench.Name}.{result.Without}.{(withPrevious ? "following" : "alone")}.json"), BenchDrawing.Of(bench with { Input = result.Input }, result.Layout, 0));
        return kept.Average(k => k.Percent);
    }
}
