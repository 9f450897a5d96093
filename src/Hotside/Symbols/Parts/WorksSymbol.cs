using System.Collections.Immutable;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Symbols.Parts;

/// <summary>
/// A part drawn from what is inside: each terminal above feeds a tree of things that hangs down to the terminals below or to the case.
/// What is no such tree gets a box.
/// </summary>
internal sealed class WorksSymbol
{
    private const int First = 3, Row = 4, Start = 2;

    private readonly ImmutableArray<SymbolTerminal> all;
    private readonly SymbolOptions options;
    private readonly List<Placed> placed = [];
    private readonly List<(SymbolTerminal Terminal, int Column)> roots = [];
    private readonly HashSet<string> nodes = [];
    private int columns;

    private WorksSymbol(ImmutableArray<SymbolTerminal> all, SymbolOptions options) => (this.all, this.options) = (all, options);

    /// <summary>The symbols of this family.</summary>
    public static readonly (string, Func<TerminalSet, SymbolOptions, Symbol?>)[] All = [("works", Draw)];

    private static Symbol? Draw(TerminalSet terminals, SymbolOptions options)
    {
        ImmutableArray<SymbolTerminal> all = terminals.Left;
        Symbol? symbol = options.Elements.IsEmpty ? (all.IsEmpty ? null : BoxFrame.Draw("works", all, options, 0, 0, null)) : new WorksSymbol(all, options).Symbol();
        while (symbol is not null && terminals.Count > 0)
            terminals.TakeNext();
        return symbol;
    }

    private Symbol? Symbol()
    {
        foreach (SymbolTerminal terminal in all.Where(t => t.Side is not (SymbolSide.Bottom or SymbolSide.Right)))
        {
            roots.Add((terminal, columns));
            if (!Hang(terminal.Name, columns, 0))
                return null;
        }

        bool whole = placed.Count == options.Elements.Length && all.All(t => roots.Any(r => r.Terminal == t) || placed.Any(p => p.Element.To == t.Name));
        return whole ? Sketch() : null;
    }

    // Hangs everything that begins at a node below it: the first straight down, the others in columns to the right.
    private bool Hang(string node, int column, int row)
    {
        if (!nodes.Add(node))
            return false;
        bool first = true;
        foreach (SymbolElement element in options.Elements.Where(e => e.From == node))
        {
            int at = first ? column : columns;
            columns = Math.Max(columns, at + 1);
            first = false;
            placed.Add(new(element, at, row, column));
            if (IsInner(element.To) && !Hang(element.To, at, row + 1))
                return false;
        }

        return !first;
    }

    private bool IsInner(string node) => node != "case" && !all.Any(t => t.Name == node && t.Side is not SymbolSide.Right) && options.Elements.Any(e => e.From == node);

    private Symbol Sketch()
    {
        var ends = all.Where(t => t.Side is SymbolSide.Bottom && !roots.Any(r => r.Terminal == t)).ToList();
        double marks = TextMeasure.Widest(all.Select(t => t.Label), options.Lettering.Small) / Symbols.Symbol.Module;
        double closed = TextMeasure.Widest(placed.Select(p => p.Element.ClosedIn), options.Lettering.SmallBold) / Symbols.Symbol.Module;
        int pitch = Math.Max(4, (int)Math.Ceiling(Math.Max(marks + 0.9, closed > 0 ? closed + 2 : 0)));
        int lowest = Start + (Row * (placed.Max(p => p.Row) + 1)), buses = ends.Count(t => Ends(t).Length > 1);
        int height = lowest + buses + 2, width = First + ((columns - 1) * pitch) + Math.Max(3, (int)Math.Ceiling(Math.Max(marks, closed) + 1.3));
        var s = new SymbolSketch(width, height, options.Lettering);
        s.Enclosure(0, 0, width, height);
        int X(int column) => First + (column * pitch);
        foreach (var (terminal, column) in roots)
        {
            s.Line(Pen.Medium, X(column), 0, X(column), Start);
            s.Stud(terminal, X(column), 0, SymbolSide.Top);
        }

        foreach (Placed p in placed)
            Column(s, p, X);
        int level = 0;
        foreach (SymbolTerminal end in ends)
            Bus(s, end, X, Ends(end).Length > 1 ? ++level : 0, lowest, height);
        foreach (SymbolTerminal side in all.Where(t => t.Side == SymbolSide.Right))
            Side(s, side, X);
        return s.Done("works");
    }

    private Placed[] Ends(SymbolTerminal terminal) => [.. placed.Where(p => p.Element.To == terminal.Name)];

    private void Column(SymbolSketch s, Placed p, Func<int, int> x)
    {
        double top = Start + (Row * p.Row), middle = top + 2;
        WorksGlyph.Draw(s, p.Element.Glyph, x(p.Column), middle);
        if (p.Element.ClosedIn.Length > 0)
            s.Letter(p.Element.ClosedIn, x(p.Column) + 0.6, middle + 1.2, options.Lettering.SmallBold, Anchor.Start);
        if (p.Parent != p.Column)
        {
            s.Line(Pen.Medium, x(p.Parent), top, x(p.Column), top);
            s.Dot(x(p.Parent), top);
        }

        if (p.Element.To == "case" && all.All(t => t.Name != "case"))
            s.CaseGround(x(p.Column), middle + 2);
    }

    private void Bus(SymbolSketch s, SymbolTerminal end, Func<int, int> x, int level, int lowest, int height)
    {
        Placed[] ends = Ends(end);
        int first = ends.Min(p => p.Column);
        double y = lowest + level - 0.5;
        foreach (Placed p in ends)
        {
            double from = Start + (Row * (p.Row + 1));
            s.Line(Pen.Medium, x(p.Column), from, x(p.Column), p.Column == first ? height : y);
            if (p.Column != first)
                s.Line(Pen.Medium, x(first), y, x(p.Column), y);
        }

        if (ends.Length > 1)
            s.Dot(x(first), y);
        s.Stud(end, x(first), height, SymbolSide.Bottom);
    }

    // A tap leaves to the right, at the height of its node.
    private void Side(SymbolSketch s, SymbolTerminal terminal, Func<int, int> x)
    {
        Placed above = placed.First(p => p.Element.To == terminal.Name);
        int y = Start + (Row * (above.Row + 1));
        s.Line(Pen.Medium, x(above.Column), y, s.Width, y);
        s.Dot(x(above.Column), y);
        s.Stud(terminal, s.Width, y, SymbolSide.Right);
    }

    /// <summary>An element with its column, its row, and the column of the node that it hangs on.</summary>
    private sealed record Placed(SymbolElement Element, int Column, int Row, int Parent);
}
