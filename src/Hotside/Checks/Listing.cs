namespace Hotside.Checks;

/// <summary>Names as a sentence has them.</summary>
internal static class Listing
{
    private const int Most = 5;

    /// <summary><c>E1, E2 and E3</c>; of many the first and how many more.</summary>
    public static string Of(IEnumerable<string> names, string word = "and")
    {
        string[] all = [.. names.Distinct(StringComparer.Ordinal)];
        if (all.Length > Most + 1) all = [.. all.Take(Most), $"{Circuits.Numbers.Whole(all.Length - Most)} more"];
        return all.Length switch
        {
            0 => "",
            1 => all[0],
            _ => string.Join(", ", all[..^1]) + " " + word + " " + all[^1],
        };
    }
}
