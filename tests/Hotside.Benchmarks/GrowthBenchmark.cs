using Hotside.Layouts;
using Hotside.Tests.Layouts;

namespace Hotside.Benchmarks;

/// <summary>
/// <c>growth CASES</c>: lays out more and more circuits of a folder on one pair of rails and tells how the time grows: the power of the number of
/// conductors. Returns 1 where it is 1.5 or more.
/// </summary>
internal static class GrowthBenchmark
{
    private const double MostPower = 1.5;
    private static readonly int[] Sizes = [300, 750, 1500, 3000];

    public static int Run(string[] arguments, TextWriter output)
    {
        if (arguments is not [var cases] || !Directory.Exists(cases)) return 64;
        BenchCase[] circuits = [.. Directory.EnumerateFiles(cases, "*.json").Order(StringComparer.Ordinal).Select(BenchCase.Read).Where(b => b.Size is "M" or "L")];
        Layout.Of(Joined(circuits, Sizes[0]).Input, new());
        var times = new List<(int Conductors, double Milliseconds)>();
        foreach (int size in Sizes)
        {
            var (input, conductors) = Joined(circuits, size);
            var time = Timing.Of(() => Layout.Of(input, new()), 0, 3);
            times.Add((conductors, time.Processor));
            output.WriteLine(FormattableString.Invariant($"{conductors,5} conductors {time.Median,8:0} ms, processor {time.Processor:0} ms"));
        }
        double power = Math.Log(times[^1].Milliseconds / times[0].Milliseconds) / Math.Log((double)times[^1].Conductors / times[0].Conductors);
        output.WriteLine(FormattableString.Invariant($"grows as the {power:0.00}th power of the conductors (less than {MostPower})"));
        return power < MostPower ? 0 : 1;
    }

    // Circuits one after the other, again from the first when all are used, until there are as many conductors.
    private static (LayoutInput Input, int Conductors) Joined(BenchCase[] circuits, int size)
    {
        var boxes = new List<LayoutBox>();
        var wires = new List<LayoutWire>();
        int conductors = 0;
        for (int copy = 0; conductors < size; copy++)
        {
            var circuit = circuits[copy % circuits.Length];
            boxes.AddRange(circuit.Input.Boxes.Select(b => b with { Id = $"{copy}/{b.Id}", ReplacedIn = b.ReplacedIn is null ? null : $"{copy}/{b.ReplacedIn}" }));
            wires.AddRange(circuit.Input.Wires.Select(w => w with { Id = $"{copy}/{w.Id}", Conductor = $"{copy}/{w.Conductor}", From = End(w.From, copy), To = End(w.To, copy) }));
            conductors += circuit.Conductors;
        }
        return (new([.. boxes], [.. wires]), conductors);
    }

    private static LayoutEnd End(LayoutEnd end, int copy) => end.Kind == EndKind.Pin ? end with { Box = $"{copy}/{end.Box}" } : end;
}
