using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Alterations;

/// <summary>How the terminals of a part in the before circuit become those of the part that stands in its place.</summary>
/// <param name="Old">The old part.</param>
/// <param name="New">The new part.</param>
/// <param name="Reversed">Whether the two terminals trade what is on them.</param>
/// <param name="Map">Terminals that the user mapped, old to new.</param>
internal sealed record Replacement(Part Old, Part New, bool Reversed, ImmutableArray<(string Old, string New)> Map)
{
    /// <summary>The terminal of the new part where what was on a terminal of the old one goes; <see langword="null"/> when there is none.</summary>
    public string? TerminalFor(string old)
    {
        string? kept = Mapped(old) ?? New.Kind.TerminalNamed(old) ?? ByAlias(old);
        return kept is null || !Reversed ? kept : Other(kept);
    }

    /// <summary>Whether the new part has just two terminals, so that their wires can trade ends.</summary>
    public bool CanTurn => New.Kind.Terminals.Length == 2;

    private string? Mapped(string old)
    {
        foreach (var (from, to) in Map)
            if (Old.Kind.TerminalNamed(from) == old)
                return New.Kind.TerminalNamed(to);
        return null;
    }

    private string? ByAlias(string old) =>
        Old.Kind.Terminals.FirstOrDefault(t => t.Name == old)?.Aliases.Select(New.Kind.TerminalNamed).FirstOrDefault(t => t is not null);

    private string Other(string terminal) =>
        New.Kind.Terminals[0].Name == terminal ? New.Kind.Terminals[1].Name : New.Kind.Terminals[1].Name == terminal ? New.Kind.Terminals[0].Name : terminal;
}
