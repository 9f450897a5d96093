namespace Hotside.Benchmarks;

/// <summary>Numbers from a seed, the same everywhere: a linear congruential generator (Knuth's MMIX constants).</summary>
internal sealed class SeededNumbers(int seed)
{
    private ulong state = ((ulong)seed * 0x9E3779B97F4A7C15) + 0x1234567;

    /// <summary>The next number from 0 to below a limit.</summary>
    public int Below(int limit)
    {
        state = (state * 6364136223846793005) + 1442695040888963407;
        return (int)((state >> 33) % (ulong)limit);
    }
}
