namespace Hotside.Studies.Switching;

/// <summary>Results of an operation on two numbers. A newer result takes the place of an older one that meets it: what is forgotten is worked out again.</summary>
internal sealed class OperationCache
{
    private const int Most = 1 << 18;

    private ulong[] keys = new ulong[1 << 10];
    private int[] results = new int[1 << 10];
    private int filled;

    public bool TryGet(int first, int second, out int result)
    {
        ulong key = KeyOf(first, second);
        int place = PlaceOf(key);
        result = results[place];
        return keys[place] == key;
    }

    public void Put(int first, int second, int result)
    {
        if (filled > keys.Length / 2 && keys.Length < Most) Grow();
        Put(KeyOf(first, second), result);
    }

    private void Put(ulong key, int result)
    {
        int place = PlaceOf(key);
        if (keys[place] == 0) filled++;
        (keys[place], results[place]) = (key, result);
    }

    private void Grow()
    {
        var (oldKeys, oldResults) = (keys, results);
        keys = new ulong[2 * oldKeys.Length];
        results = new int[keys.Length];
        filled = 0;
        for (int i = 0; i < oldKeys.Length; i++)
            if (oldKeys[i] != 0)
                Put(oldKeys[i], oldResults[i]);
    }

    // 0 is a free place: the first number of a pair is the node of a diagram's inside, and never 0.
    private static ulong KeyOf(int first, int second) => ((ulong)(uint)first << 32) | (uint)second;

    private int PlaceOf(ulong key) => (int)((key * 0x9E3779B97F4A7C15) >> 40) & (keys.Length - 1);
}
