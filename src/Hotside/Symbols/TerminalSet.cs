using System.Collections.Immutable;

namespace Hotside.Symbols;

/// <summary>The terminals that a symbol has not placed yet. A symbol takes them by their marks, then by side, then in order.</summary>
internal sealed class TerminalSet(IReadOnlyList<SymbolTerminal> terminals)
{
    private readonly List<SymbolTerminal> _left = [.. terminals];

    /// <summary>How many are not placed.</summary>
    public int Count => _left.Count;

    /// <summary>Those not placed, in order.</summary>
    public ImmutableArray<SymbolTerminal> Left => [.. _left];

    /// <summary>Takes the first that bears one of the marks, an earlier mark first.</summary>
    public SymbolTerminal? Take(params string[] marks)
    {
        foreach (string mark in marks)
        {
            if (_left.Find(t => t.Is(mark)) is { } found)
                return Taken(found);
        }

        return null;
    }

    /// <summary>Takes the first on a side.</summary>
    public SymbolTerminal? TakeAt(SymbolSide side) => Taken(_left.Find(t => t.Side == side));

    /// <summary>Takes the next in order.</summary>
    public SymbolTerminal? TakeNext() => Taken(_left.FirstOrDefault());

    /// <summary>
    /// Takes the two ends of a part with two: the upper is the hot one, or the one whose kind puts it on top; the lower may be missing
    /// where the part's case is its other end.
    /// </summary>
    public (SymbolTerminal? Upper, SymbolTerminal? Lower) TakeEnds(SymbolOptions options)
    {
        SymbolTerminal? upper = (options.HotTerminal is { } hot ? Take(hot) : null) ?? TakeAt(SymbolSide.Top);
        SymbolTerminal? lower = TakeAt(SymbolSide.Bottom) ?? TakeNext();
        return upper is null ? (lower, TakeNext()) : (upper, lower);
    }

    private SymbolTerminal? Taken(SymbolTerminal? terminal)
    {
        if (terminal is not null)
            _left.Remove(terminal);
        return terminal;
    }
}
