namespace Hotside.Wording;

/// <summary>Joins words into a sentence's parts.</summary>
internal static class Listing
{
    /// <summary><c>a</c>, <c>a and b</c>, <c>a, b and c</c>.</summary>
    public static string And(params IReadOnlyList<string> items) => Joined(items, "and");

    /// <summary><c>a</c>, <c>a or b</c>, <c>a, b or c</c>.</summary>
    public static string Or(params IReadOnlyList<string> items) => Joined(items, "or");

    /// <summary>What is not empty, with commas between.</summary>
    public static string Commas(params IEnumerable<string?> items) => string.Join(", ", items.Where(i => !string.IsNullOrEmpty(i)));

    /// <summary>With a capital letter.</summary>
    public static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>The plural of an English noun, or of the last word of several.</summary>
    public static string Plural(string noun) =>
        noun.Length > 1 && noun[^1] == 'y' && !"aeiou".Contains(noun[^2], StringComparison.Ordinal) ? noun[..^1] + "ies"
        : noun[^1] is 's' or 'x' || noun.EndsWith("ch", StringComparison.Ordinal) || noun.EndsWith("sh", StringComparison.Ordinal)
        ? noun + "es" : noun + "s";

    private static string Joined(IReadOnlyList<string> items, string word) =>
        items.Count < 2 ? string.Concat(items) : $"{string.Join(", ", items.Take(items.Count - 1))} {word} {items[^1]}";
}
