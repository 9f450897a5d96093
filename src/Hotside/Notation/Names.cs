using Hotside.Circuits;

namespace Hotside.Notation;

/// <summary>What may be a terminal's name, and how a wrong one is answered.</summary>
internal static class Names
{
    public static bool IsTerminal(string text) =>
        text.Length is > 0 and <= 60 && text.Replace("(n)", "", StringComparison.Ordinal).All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' or '+');

    /// <summary>A hint that suggests the nearest name, else lists what there is; <see langword="null"/> when there is nothing to say.</summary>
    public static string? Meant(string name, IEnumerable<string> candidates)
    {
        string[] all = [.. candidates];
        if (NearestName.Of(name, all) is { } near && near != name) return $"did you mean \"{near}\"?";
        return all.Length is > 0 and <= 16 ? "one of: " + string.Join(", ", all) : null;
    }
}
