using System.Globalization;
using Hotside.Diagnostics;

namespace Hotside.Tool.Commands;

/// <summary>Prints what a code means, or the list of all codes.</summary>
internal static class DiagnosticExplainer
{
    /// <summary>Prints; a code that does not exist is wrong usage.</summary>
    public static int Run(string? code, TextWriter output, TextWriter error)
    {
        if (code is null) List(output);
        else if (DiagnosticKind.Find(code) is { } kind) Explain(kind, output);
        else
        {
            error.WriteLine($"hotside: there is no code \"{code}\". \"hotside check --explain\" lists all.");
            return ExitCode.WrongUsage;
        }
        return ExitCode.Done;
    }

    private static void List(TextWriter output)
    {
        foreach (var area in DiagnosticKind.All.GroupBy(k => k.Area))
        {
            output.WriteLine(Heading(area.Key));
            foreach (var kind in area) output.WriteLine($"  {kind.Code} {kind.Severity.ToString().ToLowerInvariant(),-7} {kind.Title}");
        }
    }

    private static void Explain(DiagnosticKind kind, TextWriter output)
    {
        output.WriteLine($"{kind.Code} {kind.Severity.ToString().ToLowerInvariant()}: {kind.Title}");
        output.WriteLine("  says:  " + string.Format(CultureInfo.InvariantCulture, kind.Message, "…", "…", "…", "…", "…", "…"));
        output.WriteLine("  means: " + kind.Meaning);
        output.WriteLine("  do:    " + kind.Remedy);
        if (kind.Source is { } source) output.WriteLine("  after: " + source);
        if (kind.Example.Length == 0) return;
        output.WriteLine("  example:");
        foreach (string line in kind.Example.Split('\n')) output.WriteLine(("    " + line).TrimEnd());
    }

    private static string Heading(DiagnosticArea area) => area switch
    {
        DiagnosticArea.Reading => "What cannot be understood in a job file or a kind",
        DiagnosticArea.Circuit => "What is wrong with a circuit",
        DiagnosticArea.Study => "What a circuit does",
        DiagnosticArea.Alteration => "What is wrong with a change",
        _ => "What cannot be written",
    };
}
