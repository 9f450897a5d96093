using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Alterations;

/// <summary>Looks up the ends that a change line names.</summary>
internal static class EndNames
{
    public static readonly DiagnosticKind UnknownPart = new("HS4010", Severity.Error, "Unknown part at an end",
        "There is no part {0} to end on");

    public static readonly DiagnosticKind UnknownTerminal = new("HS4011", Severity.Error, "Unknown terminal",
        "{0} has no terminal \"{1}\"");

    public static readonly DiagnosticKind TerminalNotSaid = new("HS4012", Severity.Error, "Terminal not said", "{0} has several terminals");

    /// <summary>Resolves an end by terminal name or alias.</summary>
    /// <param name="written">The end as written.</param>
    /// <param name="find">The part of an id.</param>
    /// <param name="known">The ids of all parts, for the nearest name.</param>
    /// <param name="end">The end with the terminal's own name.</param>
    /// <returns>What is wrong with it, or <see langword="null"/>.</returns>
    public static Diagnostic? Resolve(End written, Func<string, Part?> find, IEnumerable<string> known, out End end)
    {
        end = written;
        if (written.Part is not { } id) return null;
        if (find(id) is not { } part) return UnknownPart.Of([id], id) with { Hint = EditProblems.DidYouMean(id, known) };
        if (TerminalOf(part.Kind, written.Terminal) is { } terminal)
        {
            end = End.At(id, terminal);
            return null;
        }
        return written.Terminal.Length == 0 ? TerminalNotSaid.Of([id], id) with { Hint = TerminalsOf(part.Kind) }
            : NoTerminal(id, id, part.Kind, written.Terminal);
    }

    /// <summary>What is wrong with a terminal that a kind does not have.</summary>
    public static Diagnostic NoTerminal(string id, string called, PartKind kind, string terminal) =>
        UnknownTerminal.Of([id], called, terminal) with { Hint = TerminalsOf(kind, terminal) };

    /// <summary>The terminal's own name; an empty name means the only one.</summary>
    public static string? TerminalOf(PartKind kind, string name) => name.Length == 0 ? kind.OnlyTerminal : kind.TerminalNamed(name);

    /// <summary>What terminals a kind has, and which was most likely meant.</summary>
    public static string TerminalsOf(PartKind kind, string meant = "")
    {
        bool hasOwnCase = kind.HasCaseTerminal && !kind.Terminals.Any(t => t.IsCase);
        string[] names = [.. kind.Terminals.Select(t => t.Name), .. hasOwnCase ? ["case"] : Array.Empty<string>()];
        string list = $"{kind.Id}: {string.Join(", ", names)}";
        return NearestName.Of(meant, names) is { } near && near != meant ? $"{list}; did you mean {near}?" : list;
    }
}
