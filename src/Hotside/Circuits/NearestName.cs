namespace Hotside.Circuits;

/// <summary>Finds the name that somebody most likely meant.</summary>
internal static class NearestName
{
    /// <summary>The one candidate that differs least; <see langword="null"/> when none is near enough, or several are as near, to be worth suggesting.</summary>
    public static string? Of(string name, IEnumerable<string> candidates)
    {
        string? best = null;
        int least = int.MaxValue;
        bool isTied = false;
        foreach (string candidate in candidates)
        {
            int distance = Distance(name.ToLowerInvariant(), candidate.ToLowerInvariant());
            if (distance < least) (best, least, isTied) = (candidate, distance, false);
            else if (distance == least && candidate != best) isTied = true;
        }
        if (best is null || isTied) return null;
        int longer = Math.Max(name.Length, best.Length);
        return least < longer && least <= Math.Max(1, longer / 3) ? best : null;
    }

    /// <summary>How a sentence ends that suggests the nearest name: <c>; did you mean "K1"?</c>, or a full stop.</summary>
    public static string Suggestion(string name, IEnumerable<string> candidates) =>
        Of(name, candidates) is { } near && near != name ? $"; did you mean \"{near}\"?" : ".";

    // Damerau–Levenshtein, optimal string alignment: a slip of two neighbouring letters counts once.
    private static int Distance(string a, string b)
    {
        if (Math.Abs(a.Length - b.Length) > 8) return int.MaxValue;
        int[,] d = new int[a.Length + 1, b.Length + 1];
        for (int i = 0; i <= a.Length; i++) d[i, 0] = i;
        for (int j = 0; j <= b.Length; j++) d[0, j] = j;
        for (int i = 1; i <= a.Length; i++)
        for (int j = 1; j <= b.Length; j++)
        {
            int cost = a[i - 1] == b[j - 1] ? 0 : 1;
            d[i, j] = Math.Min(Math.Min(d[i - 1, j] + 1, d[i, j - 1] + 1), d[i - 1, j - 1] + cost);
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) d[i, j] = Math.Min(d[i, j], d[i - 2, j - 2] + 1);
        }
        return d[a.Length, b.Length];
    }
}
