using Hotside.Diagnostics;

namespace Hotside.Tool;

/// <summary>Colours the severity of a diagnostic, on a terminal only and not where the reader has said NO_COLOR (no-color.org).</summary>
internal static class Colouring
{
    public static string Of(string printed, Severity severity, TextWriter writer)
    {
        string word = severity.ToString().ToLowerInvariant();
        int at = printed.IndexOf(word + " HS", StringComparison.Ordinal);
        return at < 0 || !IsWanted(writer) ? printed : $"{printed[..at]}\u001b[1;{Code(severity)}m{word}\u001b[0m{printed[(at + word.Length)..]}";
    }

    private static string Code(Severity severity) => severity switch
    {
        Severity.Stop => "35",
        Severity.Error => "31",
        Severity.Warning => "33",
        _ => "36",
    };

    private static bool IsWanted(TextWriter writer) =>
        string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR")) && Environment.GetEnvironmentVariable("TERM") != "dumb"
        && (writer == Console.Out ? !Console.IsOutputRedirected : writer == Console.Error && !Console.IsErrorRedirected);
}
