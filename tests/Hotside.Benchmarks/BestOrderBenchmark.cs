using System.Diagnostics;
using Hotside.Circuits;
using Hotside.Orders;
using Hotside.Tests.Orders;

namespace Hotside.Benchmarks;

/// <summary>All orders that the hard rules allow, beside the planned one: whether any harms in fewer states. Minutes for twenty acts.</summary>
internal static class BestOrderBenchmark
{
    private const int MostSets = 3_000_000;

    public static int Run(string[] arguments, TextWriter output)
    {
        if (arguments.Length == 0)
        {
            output.WriteLine("Name job files.");
            return 64;
        }
        bool isBest = true;
        foreach (string file in arguments)
        {
            if (Job.ReadFile(file).Job is not { } job || job.Alteration.Changes.IsEmpty) continue;
            Verdicts planned = new(job.Plan, job.Study);
            var watch = Stopwatch.StartNew();
            BestOrders search = new(job, MostSets);
            var best = search.Pairs();
            (int New, int Old) own = (planned.HarmfulStates(Battery.New), planned.HarmfulStates(Battery.Old));
            // An order that harms the old battery in as few states and the new one in no more.
            var better = best.Where(p => p != own && p.New <= own.New && p.Old <= own.Old).ToArray();
            isBest &= best.Count > 0 && better.Length == 0;
            string found = best.Count == 0 ? "too many sets of acts" : string.Join("  ", best.Select(p => $"{Numbers.Whole(p.New)}/{Numbers.Whole(p.Old)}"));
            output.WriteLine($"{file}: planned {Numbers.Whole(own.New)}/{Numbers.Whole(own.Old)}{(better.Length > 0 ? " IS BEATEN" : "")}; best of all orders, new/old: {found} ({Numbers.Whole(search.Seen)} sets, {Numbers.Plain(watch.Elapsed.TotalSeconds, 0)} s)");
        }
        return isBest ? 0 : 1;
    }
}
