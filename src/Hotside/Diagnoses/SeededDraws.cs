namespace Hotside.Diagnoses;

/// <summary>Random numbers by SplitMix64 (Steele, Lea, Flood 2014), so that the same circuit has the same dictionary on every machine.</summary>
internal sealed class SeededDraws(ulong seed)
{
    private ulong state = seed;

    /// <summary>A number from 0 up to, not including, 1.</summary>
    public double Share()
    {
        state += 0x9E3779B97F4A7C15;
        ulong z = state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return ((z ^ (z >> 31)) >> 11) / (double)(1UL << 53);
    }

    /// <summary>A factor within a tolerance: 1 less it to 1 more it, all as likely.</summary>
    public double Within(double tolerance) => 1 + (tolerance * ((2 * Share()) - 1));

    /// <summary>A number of the standard normal distribution (Box and Muller).</summary>
    public double Normal() => Math.Sqrt(-2 * Math.Log(1 - Share())) * Math.Cos(2 * Math.PI * Share());
}
