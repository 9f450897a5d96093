using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Alterations;

/// <summary>Looks up the ends that a change line names.</summary>
internal static class EndNames
{
    public static readonly DiagnosticKind UnknownPart = new("HS4010", Severity.Error, "Unknown part at an end", "there is no part {0} to end on");

    public static readonly DiagnosticKind UnknownTerminal = new("HS4011", Severity.Error, "Unknown terminal", "{0} has no terminal \"{1}\"");

    public static readonly DiagnosticKind TerminalNotSaid = new("HS4012", Severity.Error, "Terminal not said", "{0} has several terminals");

    public static readonly DiagnosticKind WrittenOtherwise = new("HS2011", Severity.Note, "Terminal written in two ways", "{0} and {1} are one terminal");

    /// <summary>What to do about a terminal that is written in two ways.</summary>
    public static string OneMark(string part, string first) => $"drawings and lists have {part}.{first} for both; write what is stamped on the part";

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
        if (find(id) is not { } part) return UnknownPart.Of([id], id) with { Word = WordOf(written), Hint = DottedEnd.Advice(id, p => find(p)?.Kind) ?? EditProblems.DidYouMean(id, known) ?? "fit it too, or name a part that is there" };
        if (part.Kind.TerminalMeant(written.Terminal) is { } terminal)
        {
            end = End.At(id, terminal);
            return null;
        }
        var fault = written.Terminal.Length == 0 ? TerminalNotSaid.Of([id], id) : UnknownTerminal.Of([id], id, written.Terminal);
        return fault with { Word = WordOf(written), Hint = part.Kind.TerminalHint(written.Terminal) };
    }

    private static string WordOf(End end) => end.Terminal.Length == 0 ? end.Part! : $"{end.Part}.{end.Terminal}";
}
