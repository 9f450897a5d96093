namespace Hotside.Layouts.Passes;

/// <summary>The SplitMix64 generator (Steele, Lea, Flood 2014), so that a search takes the same turns on every machine.</summary>
internal sealed class SplitMix(ulong seed)
{
    private ulong state = seed;

    /// <summary>A whole number from 0 up to, not including, <paramref name="bound"/>.</summary>
    public int Below(int bound)
    {
        state += 0x9E3779B97F4A7C15;
        ulong z = state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return (int)((z ^ (z >> 31)) % (ulong)Math.Max(1, bound));
    }
}
