using System.Collections.Immutable;

namespace Hotside.Layouts.Passes;

/// <summary>A conductor that ends at a chassis sign of its own right below its pin: part of its stand, and no net.</summary>
/// <param name="Line">The conductor.</param>
/// <param name="Terminal">Its pin.</param>
/// <param name="Column">The column of the sign, from the stand's left edge.</param>
/// <param name="Drop">How far below the row's centre line the sign stands.</param>
/// <param name="Depth">How far below it all of the sign reaches.</param>
/// <param name="Side">How far left and right.</param>
internal readonly record struct HungLead(int Line, int Terminal, int Column, int Drop, int Depth, double Side)
{
    // Below a pin without a label; above and below a label; the sign, and its name below it.
    private const int Bare = 2, AirOfLabel = 1, Sign = 1, Name = 1;

    // Half a sign with its slanted strokes.
    private const double HalfSign = 1.4;

    /// <summary>How they hang: the signs of a row stand on one line.</summary>
    /// <param name="netlist">The nets.</param>
    /// <param name="rows">What stands in which row.</param>
    /// <param name="sides">The columns of pins.</param>
    /// <param name="input">What is laid out.</param>
    /// <param name="longer">By conductor: by how much more, so that its label finds room.</param>
    public static ImmutableArray<HungLead> Of(Netlist netlist, RowPlan rows, SidePins sides, LayoutInput input, IReadOnlyDictionary<int, int> longer)
    {
        if (netlist.Signs.IsEmpty) return [];
        var drops = netlist.Signs.Order().Select(l => (Line: l, Pin: netlist.Terminals[PinOf(netlist.Lines[l])!.Value]))
            .Select(l => (l.Line, l.Pin, Row: rows.RowOf[l.Pin.Stand], Drop: l.Pin.Y - (netlist.Stands[l.Pin.Stand].Height / 2) + Length(l.Line))).ToArray();
        var lines = drops.GroupBy(d => d.Row).ToDictionary(g => g.Key, g => g.Max(d => d.Drop));
        return [.. drops.Select(d => new HungLead(d.Line, d.Pin.Id, sides.ColumnOf[d.Pin.Id], lines[d.Row], lines[d.Row] + Sign + (input.Wires[d.Line].NamesSign ? Name : 0),
            input.Wires[d.Line].NamesSign ? Math.Max(HalfSign, input.Wires[d.Line].LabelWidth / 2) : HalfSign))];

        int Length(int line) => (input.Wires[line] is { HasLabel: true, NamesSign: false } wire ? (int)Math.Ceiling(wire.LabelHeight) + AirOfLabel : Bare) + longer.GetValueOrDefault(line);
    }

    /// <summary>The one pin of a conductor to the chassis.</summary>
    public static int? PinOf(Line line) =>
        line.From.OnTerminal && line.To.Kind == EndKind.Chassis ? line.From.Terminal : line.To.OnTerminal && line.From.Kind == EndKind.Chassis ? line.To.Terminal : null;

    /// <summary>Its points, from the conductor's first end to its last; in the last row the signs stand on one line with all others.</summary>
    public ImmutableArray<(int X, int Y)> Points(Netlist netlist, RowPlan rows, Levels levels, (int X, int Y) stand)
    {
        var terminal = netlist.Terminals[Terminal];
        int row = rows.RowOf[terminal.Stand];
        (int X, int Y) pin = (stand.X + terminal.X, stand.Y + terminal.Y), end = (stand.X + Column, row == rows.Rows ? levels.Bottom : levels.RowCentre[row] + Drop);
        ImmutableArray<(int X, int Y)> points = end.X == pin.X ? [pin, end] : [pin, (end.X, pin.Y), end];
        return netlist.Lines[Line].From.OnTerminal ? points : [.. points.Reverse()];
    }
}
