namespace Hotside.Circuits;

/// <summary>An end whose part and terminal are parted otherwise than by a dot: <c>H1-2</c>, <c>H1:2</c>.</summary>
internal static class DottedEnd
{
    /// <summary>What to say where a part and one of its terminals were meant, and the end as it is written; <see langword="null"/> where they were not.</summary>
    /// <param name="text">What stands in the place of an end.</param>
    /// <param name="kindOf">The kind of a part; <see langword="null"/> where there is no such part.</param>
    public static string? Advice(string text, Func<string, PartKind?> kindOf)
    {
        for (int at = 1; at < text.Length - 1; at++)
        {
            string part = text[..at], terminal = text[(at + 1)..];
            if (!char.IsLetterOrDigit(text[at]) && kindOf(part)?.TerminalNamed(terminal) is not null) return Sentence(part, terminal);
        }
        return null;
    }

    /// <summary>The same of a part that is not known yet: no id and no terminal holds such a sign.</summary>
    public static string? Advice(string text) =>
        text.IndexOfAny([':', '/', '#']) is > 0 and var at && ItemId.IsWellFormed(text[..at]) && ItemId.IsWellFormed(text[(at + 1)..]) ? Sentence(text[..at], text[(at + 1)..]) : null;

    private static string Sentence(string part, string terminal) => $"a part and its terminal are written {part}.{terminal}";
}
