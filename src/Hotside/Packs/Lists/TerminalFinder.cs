using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Packs.Lists;

/// <summary>What goes on the end of a wire, as far as the part that it ends on tells: data of the room.</summary>
internal static class TerminalFinder
{
    private static readonly Lazy<ImmutableArray<(string Kind, string[] Terminals, string Says)>> Rules = new(Read);

    /// <summary>What goes on an end; empty where the part alone does not tell.</summary>
    public static string Of(End end, Circuit circuit)
    {
        if (end.IsFree) return "cap";
        if (end.IsChassis) return "ring, screw";
        if (end.Part is not { } id || circuit.FindPart(id) is not { } part) return "";
        if (end.Terminal == "case") return "ring, screw";
        foreach (var (kind, terminals, says) in Rules.Value)
            if (Matches(part.Kind.Id, kind) && (terminals.Length == 0 || terminals.Any(t => part.Kind.TerminalNamed(t) == end.Terminal))) return says;
        return "";
    }

    private static bool Matches(string kind, string rule) => rule.EndsWith('*') ? kind.StartsWith(rule[..^1], StringComparison.Ordinal) : kind == rule;

    private static ImmutableArray<(string, string[], string)> Read()
    {
        using var stream = typeof(TerminalFinder).Assembly.GetManifestResourceStream("packs/terminals.txt") ?? throw new InvalidOperationException("The assembly lacks its list of terminals.");
        using StreamReader reader = new(stream);
        return
        [
            .. reader.ReadToEnd().ReplaceLineEndings("\n").Split('\n').Where(l => l.Length > 0 && l[0] != '#').Select(l => l.Split(": ", 2)).Select(l =>
            {
                string[] head = l[0].Split(' ', StringSplitOptions.RemoveEmptyEntries);
                return (head[0], head[1..], l[1]);
            }),
        ];
    }
}
