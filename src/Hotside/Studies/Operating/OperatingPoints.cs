using System.Collections.Immutable;
using Hotside.Studies.Switching;

namespace Hotside.Studies.Operating;

/// <summary>The operating points of a circuit that were worked out: states in which the same conducts have the same.</summary>
internal sealed class OperatingPoints(ImmutableArray<Condition> conditions)
{
    // Where more are asked for, all are forgotten: a bound to memory.
    private const int Most = 2_000;

    private readonly ImmutableArray<Condition> distinct = [.. conditions.Where(c => c.IsOpen).Distinct()];
    private readonly Dictionary<string, OperatingPoint> known = new(StringComparer.Ordinal);

    /// <summary>The operating point of a state, from what is known or made anew.</summary>
    /// <param name="state">A value for each variable.</param>
    /// <param name="except">A branch taken out.</param>
    /// <param name="make">Works it out.</param>
    public OperatingPoint Of(int[] state, Branch? except, Func<OperatingPoint> make)
    {
        string key = KeyOf(state, except);
        if (known.TryGetValue(key, out var point)) return point;
        if (known.Count >= Most) known.Clear();
        return known[key] = make();
    }

    // A character for sixteen conditions, and one for the branch.
    private string KeyOf(int[] state, Branch? except)
    {
        Span<char> key = stackalloc char[(distinct.Length / 16) + 2];
        key.Clear();
        for (int i = 0; i < distinct.Length; i++)
            if (distinct[i].HoldsIn(state))
                key[i / 16] |= (char)(1 << (i % 16));
        key[^1] = except is null ? '\0' : (char)(1 + except.Number);
        return new(key);
    }
}
