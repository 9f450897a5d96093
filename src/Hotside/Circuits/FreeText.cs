namespace Hotside.Circuits;

/// <summary>What a caller may say in words: names, places, looms.</summary>
internal static class FreeText
{
    /// <summary>The text without blanks around it; <see langword="null"/> when nothing is left.</summary>
    /// <exception cref="ArgumentException">It holds a control character, which no file could keep.</exception>
    public static string? Checked(string? text, string argument)
    {
        if (string.IsNullOrWhiteSpace(text)) return null;
        foreach (char c in text)
            if (char.IsControl(c) && c != '\n') throw new ArgumentException($"A text has no control characters, and this has U+{(int)c:X4}.", argument);
        return text.Trim();
    }
}
