using System.Diagnostics;

namespace Hotside.Benchmarks;

/// <summary>How long something takes: after a warm-up, several times, told by the median and the worst.</summary>
/// <param name="Median">Milliseconds.</param>
/// <param name="Worst">Milliseconds.</param>
/// <param name="Processor">Milliseconds of this process's processor time, the median: what a machine takes that does nothing else.</param>
internal sealed record Timing(double Median, double Worst, double Processor)
{
    public static Timing Of(Action work, int warmUps = 3, int runs = 11)
    {
        for (int i = 0; i < warmUps; i++) work();
        double[] times = new double[runs], processor = new double[runs];
        for (int i = 0; i < runs; i++)
        {
            GC.Collect();
            var used = Environment.CpuUsage.TotalTime;
            long start = Stopwatch.GetTimestamp();
            work();
            times[i] = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
            processor[i] = (Environment.CpuUsage.TotalTime - used).TotalMilliseconds;
        }
        Array.Sort(times);
        Array.Sort(processor);
        return new(times[runs / 2], times[^1], processor[runs / 2]);
    }
}
