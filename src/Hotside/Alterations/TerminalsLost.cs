using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Alterations;

/// <summary>Terminals of the before circuit on which something still stands that cannot stay: one report a terminal, or one a part taken out.</summary>
internal sealed class TerminalsLost
{
    public static readonly DiagnosticKind Unmapped = new("HS4030", Severity.Error, "Terminal without a counterpart",
        "the new {0} has no terminal \"{1}\", on which {2} was");

    public static readonly DiagnosticKind StillWired = new("HS4031", Severity.Error, "Taken out with wires on it", "{0} is taken out, but {1} still {2} on it");

    private readonly List<(End End, string What)> all = [];

    /// <summary>Notes what stood on a terminal and cannot stay.</summary>
    public void Add(End end, string what) => all.Add((end, what));

    /// <summary>Reports all of them, in the order in which they were found.</summary>
    public void Report(EditRoster roster, PartsAfter parts, EditProblems problems)
    {
        foreach (var group in all.GroupBy(a => roster.IsTakenOut(a.End.Part!) ? End.At(a.End.Part!, "") : a.End))
        {
            string id = group.Key.Part!;
            string[] things = [.. group.Select(g => g.What).Distinct(StringComparer.Ordinal)];
            string list = List(things);
            if (roster.IsTakenOut(id))
                Add(StillWired.Of([id, .. things], id, list, things.Length == 1 ? "ends" : "end") with { Hint = $"take {list} out as well, or move what ends there" });
            else if (parts.Find(id) is { } part)
                Add(Unmapped.Of([id, .. things], id, group.Key.Terminal, list) with
                {
                    Hint = $"say where it goes, as in \"{group.Key.Terminal} = …\"; {part.Kind.TerminalHint(group.Key.Terminal)}",
                });

            void Add(Diagnostic diagnostic)
            {
                if (!problems.IsBroken(id)) problems.Add(roster.SpotOf(id), diagnostic);
            }
        }
    }

    private static string List(string[] things) => things.Length == 1 ? things[0] : string.Join(", ", things[..^1]) + " and " + things[^1];
}
