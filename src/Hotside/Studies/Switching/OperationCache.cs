namespace Hotside.Studies.Switching;

/// <summary>Results of an operation on two numbers. A newer result takes the place of an older one that meets it: what is forgotten is worked out again.</summary>
/// <remarks>All three numbers stand in one word, so that looking one up touches memory once.</remarks>
internal sealed class OperationCache
{
    /// <summary>The numbers lie below this.</summary>
    public const int Bound = 1 << Bits;

    private const int Bits = 21, Most = 1 << 18;

    private ulong[] entries = new ulong[1 << 10];
    private int filled;

    public bool TryGet(int first, int second, out int result)
    {
        ulong key = KeyOf(first, second), entry = entries[PlaceOf(key)];
        result = (int)(entry & (Bound - 1));
        return entry >> Bits == key;
    }

    public void Put(int first, int second, int result)
    {
        if (filled > entries.Length / 2 && entries.Length < Most) Grow();
        Put((KeyOf(first, second) << Bits) | (uint)result);
    }

    private void Put(ulong entry)
    {
        ref ulong at = ref entries[PlaceOf(entry >> Bits)];
        if (at == 0) filled++;
        at = entry;
    }

    private void Grow()
    {
        var old = entries;
        entries = new ulong[2 * old.Length];
        filled = 0;
        foreach (ulong entry in old)
            if (entry != 0)
                Put(entry);
    }

    // 0 is a free place: the first number of a pair is a node of a diagram's inside, and never 0.
    private static ulong KeyOf(int first, int second) => ((ulong)(uint)first << Bits) | (uint)second;

    private int PlaceOf(ulong key) => (int)((key * 0x9E3779B97F4A7C15) >> 40) & (entries.Length - 1);
}
