using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Alterations;

/// <summary>Where the conductors and joints of a part's terminals go when the part is replaced or turned round.</summary>
internal sealed class TerminalMap
{
    private readonly PartKind before;
    private readonly PartKind after;
    private readonly ImmutableArray<(string Old, string New)> said;
    private readonly bool reversed;

    /// <summary>The map from one kind to another.</summary>
    /// <param name="before">The old part's kind.</param>
    /// <param name="after">The new part's kind.</param>
    /// <param name="said">Pairs of terminals by their own names; they win over equal names.</param>
    /// <param name="reversed">Whether what was on one of two terminals then goes to the other.</param>
    public TerminalMap(PartKind before, PartKind after, ImmutableArray<(string Old, string New)> said, bool reversed)
    {
        this.before = before;
        this.after = after;
        this.said = said;
        this.reversed = reversed;
    }

    /// <summary>The new terminal for an old one; <see langword="null"/> when there is none.</summary>
    public string? this[string old]
    {
        get
        {
            string? found = said.Where(pair => pair.Old == old).Select(pair => pair.New).FirstOrDefault() 
                ?? Counterpart(before, after, old);
            if (!reversed || found is null || after.Terminals.Length != 2) return found;
            string first = after.Terminals[0].Name, second = after.Terminals[1].Name;
            return found == first ? second : found == second ? first : found;
        }
    }

    /// <summary>The terminal of a kind that has the name or an alias of another kind's terminal; <see langword="null"/> when none
    /// has.</summary>
    public static string? Counterpart(PartKind before, PartKind after, string old)
    {
        if (after.TerminalNamed(old) is { } same) return same;
        var aliases = before.Terminals.FirstOrDefault(t => t.Name == old)?.Aliases ?? [];
        return aliases.Select(after.TerminalNamed).FirstOrDefault(name => name is not null);
    }
}
