using Hotside.CheckSheets;

namespace Hotside.Tool;

/// <summary>Readings from a file: a line each, or the filled column of a check sheet.</summary>
internal static class ReadingFile
{
    /// <summary>The readings; none without a file. <see langword="null"/>, and a line that says why, where it cannot be read.</summary>
    public static IReadOnlyList<string>? Of(string? path, TextWriter error)
    {
        if (path is null) return [];
        try
        {
            string text = File.ReadAllText(path);
            return path.EndsWith(".csv", StringComparison.OrdinalIgnoreCase) ? FilledSheet.Readings(text)
                : [.. text.ReplaceLineEndings("\n").Split('\n').Select(l => l.Trim()).Where(l => l.Length > 0 && l[0] != '#')];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            error.WriteLine($"hotside: {path} cannot be read: {e.Message}");
            return null;
        }
    }
}
