using System.Collections.Immutable;

namespace Hotside.Layouts.Passes;

/// <summary>
/// A conductor that ends at a chassis sign of its own right below its pin, or, where the pin looks up, beside it above the part: part of its stand, and no net.
/// </summary>
/// <param name="Line">The conductor.</param>
/// <param name="Terminal">Its pin.</param>
/// <param name="Column">The column of the sign, from the stand's left edge.</param>
/// <param name="Drop">How far below the row's centre line the sign stands, or above it.</param>
/// <param name="Depth">How far below it all of the sign reaches, or above it all of the lead.</param>
/// <param name="Reach">How far left and right.</param>
/// <param name="Rises">Whether it leaves its pin upwards.</param>
internal readonly record struct HungLead(int Line, int Terminal, int Column, int Drop, int Depth, double Reach, bool Rises)
{
    // Below a pin without a label; above and below a label; the sign, and its name below it.
    private const int Bare = 2, AirOfLabel = 1, Sign = 1, Name = 1;

    // A lead that rises: between part and sign; over the sign, as high as a label.
    private const int OverPart = 2, OverSign = 2;

    // Where its sign stands beside its pin, and how far from the next conductor: with air, else with what a sign needs.
    private static readonly (int Aside, int FromNext)[] Places = [(3, 3), (-3, 3), (2, 2), (-2, 2)];

    // From the middle of the sign of a lead that rises to its pin, with air.
    private const double Widest = 4;

    // Half a sign with its slanted strokes.
    private const double HalfSign = 1.4;

    /// <summary>How they hang: the signs of a row stand on one line, and so do those above it.</summary>
    /// <param name="netlist">The nets.</param>
    /// <param name="rows">What stands in which row.</param>
    /// <param name="sides">The columns of pins.</param>
    /// <param name="input">What is laid out.</param>
    /// <param name="longer">By conductor: by how much more, so that its label finds room.</param>
    public static ImmutableArray<HungLead> Of(Netlist netlist, RowPlan rows, SidePins sides, LayoutInput input, IReadOnlyDictionary<int, int> longer)
    {
        if (netlist.Signs.IsEmpty) return [];
        var all = netlist.Signs.Order().Select(l => (Line: l, Pin: netlist.Terminals[PinOf(netlist.Lines[l])!.Value]))
            .Select(l => (l.Line, l.Pin, Row: rows.RowOf[l.Pin.Stand], Half: netlist.Stands[l.Pin.Stand].Height / 2, Rises: l.Pin.Side == Side.Top))
            .Select(l => (l.Line, l.Pin, l.Row, l.Rises, Drop: l.Rises ? l.Half - l.Pin.Y + Rise(l.Line) : l.Pin.Y - l.Half + Length(l.Line))).ToArray();
        var lines = all.GroupBy(d => (d.Row, d.Rises)).ToDictionary(g => g.Key, g => g.Max(d => d.Drop));
        return [.. all.Select(d => d.Rises ? Risen(d.Line, d.Pin, lines[(d.Row, true)]) : Hung(d.Line, d.Pin, lines[(d.Row, false)]))];

        HungLead Hung(int line, Terminal pin, int drop) => new(line, pin.Id, sides.ColumnOf[pin.Id], drop, drop + Sign + (input.Wires[line].NamesSign ? Name : 0), HalfOf(line), Rises: false);

        HungLead Risen(int line, Terminal pin, int drop) =>
            new(line, pin.Id, pin.X + AsideOf(pin, netlist.Stands[pin.Stand], netlist.Terminals, netlist.Lines)!.Value, drop, drop + OverSign + longer.GetValueOrDefault(line), Widest, Rises: true);

        double HalfOf(int line) => input.Wires[line].NamesSign ? Math.Max(HalfSign, input.Wires[line].LabelWidth / 2) : HalfSign;

        int Length(int line) => (input.Wires[line] is { HasLabel: true, NamesSign: false } wire ? (int)Math.Ceiling(wire.LabelHeight) + AirOfLabel : Bare) + longer.GetValueOrDefault(line);

        int Rise(int line) => OverPart + (input.Wires[line].NamesSign ? Name : 0);
    }

    /// <summary>
    /// How far right of a pin that looks up its sign finds room above the part, or left if negative, so that neither what comes to the other pins nor what passes beside the part is in the
    /// way; <see langword="null"/> if nowhere.
    /// </summary>
    public static int? AsideOf(Terminal pin, Stand stand, IEnumerable<Terminal> terminals, IEnumerable<Line> lines)
    {
        int[] others = [.. terminals.Where(t => t.Stand == pin.Stand && t.Side == Side.Top && t.Id != pin.Id && lines.Any(l => l.From.Terminal == t.Id || l.To.Terminal == t.Id)).Select(t => t.X)];
        var free = Places.Where(p => pin.X + p.Aside is var column && column >= 1 && column < stand.Width && others.All(x => Math.Abs(column - x) >= p.FromNext)).ToArray();
        return free.Length == 0 ? null : free[0].Aside;
    }

    /// <summary>The one pin of a conductor to the chassis.</summary>
    public static int? PinOf(Line line) =>
        line.From.OnTerminal && line.To.Kind == EndKind.Chassis ? line.From.Terminal : line.To.OnTerminal && line.From.Kind == EndKind.Chassis ? line.To.Terminal : null;

    /// <summary>Its points, from the conductor's first end to its last; in the last row the signs stand on one line with all others.</summary>
    public ImmutableArray<(int X, int Y)> Points(Netlist netlist, RowPlan rows, Levels levels, (int X, int Y) stand)
    {
        var terminal = netlist.Terminals[Terminal];
        int row = rows.RowOf[terminal.Stand];
        (int X, int Y) pin = (stand.X + terminal.X, stand.Y + terminal.Y), end = (stand.X + Column, Rises ? levels.RowCentre[row] - Drop : row == rows.Rows ? levels.Bottom : levels.RowCentre[row] + Drop);
        int over = levels.RowCentre[row] - Depth;
        ImmutableArray<(int X, int Y)> points = Rises ? [pin, (pin.X, over), (end.X, over), end] : end.X == pin.X ? [pin, end] : [pin, (end.X, pin.Y), end];
        return netlist.Lines[Line].From.OnTerminal ? points : [.. points.Reverse()];
    }
}
