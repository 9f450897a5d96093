using System.Collections.Immutable;

namespace Hotside.Layouts.Passes;

/// <summary>
/// Finds the leads that had better end at a chassis sign of their own, by rows alone, before any order is sought: one beside what else hangs below its part would have to
/// run round that down to the chassis row, and cases that share a body would be joined by a line across the sheet. What hangs below its part alone runs straight down.
/// </summary>
internal static class OwnSigns
{
    // Half a sign with air beside it; and as many cases stand on a body drawn below them: more would be joined by a line like a cable.
    private const int Pitch = 2, FewOnBody = 1, Rounds = 4;

    /// <summary>Those leads, by name.</summary>
    public static ImmutableHashSet<string> Of(LayoutInput input)
    {
        if (input.Wires.All(w => w.To.Kind != EndKind.Chassis && w.From.Kind != EndKind.Chassis)) return [];
        var union = Union.Of(input);
        union = Turning.Of(union, Heights.Of(union), null);
        var heights = Heights.Of(union);
        HashSet<int> hung = [];
        // What has a sign of its own no longer pulls its part down: others may stand far from their body then.
        for (int round = 0, known = -1; round < Rounds && hung.Count > known; round++)
        {
            known = hung.Count;
            var netlist = Nets.Of(union, heights, ImmutableHashSet<int>.Empty, [.. hung]);
            var rows = Rows.Of(netlist, Directions.Of(netlist, heights, null), null, hangsHigh: false);
            hung.UnionWith(OnBodies(input, union, rows));
            hung.UnionWith(BesideOthers(union, netlist, rows, input.IsOverlaid));
        }
        return [.. hung.Select(l => union.Lines[l].Name)];
    }

    // A lead alone in its net, from a part above the last row on which something else hangs; alike parts alike.
    private static int[] BesideOthers(Union union, Netlist netlist, RowPlan rows, bool isOverlaid)
    {
        int[] able = [.. netlist.Nets.Where(n => n.Lines.Length == 1).Select(n => n.Lines[0])
            .Where(l => HungLead.PinOf(union.Lines[l]) is { } pin && (LooksUp(pin) || rows.RowOf[union.Terminals[pin].Stand] < rows.Rows) && MayHang(union, union.Lines[l], pin, isOverlaid))];
        var chosen = able.Where(IsBesideOthers).Select(PinOfShape).ToHashSet();
        return [.. able.Where(l => IsBesideOthers(l) || (PinOfShape(l).Shape.Length > 0 && chosen.Contains(PinOfShape(l))))];

        bool IsBesideOthers(int line)
        {
            int pin = HungLead.PinOf(union.Lines[line])!.Value, stand = union.Terminals[pin].Stand;
            return LooksUp(pin) || netlist.Taps.Any(t => t.OnTerminal && t.Terminal != pin && netlist.StandOf(t) == stand && rows.Above[t.Id] && (t.Seen & union.Lines[line].Seen) != 0
                && netlist.Nets[t.Net] is var net && (!net.Joints.IsEmpty || net.Taps.Any(o => netlist.StandOf(netlist.Taps[o]) is var s && s >= 0 && s != stand)));
        }

        // It would have to run round its part.
        bool LooksUp(int pin) => union.Terminals[pin].Side == Side.Top;

        (string Shape, Side Side, int X) PinOfShape(int line) =>
            union.Terminals[HungLead.PinOf(union.Lines[line])!.Value] is var pin ? (union.Stands[pin.Stand].Shape, pin.Side, pin.X) : default;
    }

    /// <summary>
    /// Those that hang, by number: as chosen, or, where loads stand right below what feeds them, all that can. As the two circuits lie over each other another
    /// conductor may be in the way.
    /// </summary>
    public static ImmutableHashSet<int> Hung(Union union, LayoutInput input) =>
        [.. union.Lines.Where(l => (input.Wires[l.Id].HasOwnSign || (input is { HangsHigh: true, HasSigns: true })) && HungLead.PinOf(l) is { } pin && MayHang(union, l, pin, input.IsOverlaid)).Select(l => l.Id)];

    // Cases right above their body stand on it, unless there are more than fit; all others have signs. The body has something else that tells where it is joined.
    private static IEnumerable<int> OnBodies(LayoutInput input, Union union, RowPlan rows)
    {
        foreach (var body in input.Boxes.Where(b => b.IsBody))
        {
            var leads = input.Wires.Select((w, i) => (Wire: w, Line: union.Lines[i])).Where(l => l.Wire.Short && l.Wire.To.Box == body.Id && l.Line.From.OnTerminal).ToArray();
            if (leads.Length == 0 || input.Wires.Where(w => !w.Short).All(w => w.From.Box != body.Id && w.To.Box != body.Id)) continue;
            bool isFew = Extents.Views.All(v => leads.Where(l => (l.Line.Seen & v) != 0).Select(l => union.Terminals[l.Line.From.Terminal].Stand).Distinct().Count() <= FewOnBody);
            foreach (var (_, line) in leads)
                if (!(isFew && IsRightAbove(line)) && MayHang(union, line, line.From.Terminal, input.IsOverlaid)) yield return line.Id;
        }

        bool IsRightAbove(Line line) =>
            union.Terminals[line.From.Terminal] is { Side: Side.Bottom } pin && rows.RowOf[pin.Stand] + 1 == rows.RowOf[union.Terminals[line.To.Terminal].Stand];
    }

    // Above a part there is room for one sign with its label: of two side by side nobody would know whose label is whose.
    private static bool MayRise(Union union, Line line, Terminal pin) =>
        HungLead.AsideOf(pin, union.Stands[pin.Stand], union.Terminals, union.Lines) is not null
        && !union.Lines.Any(l => l.Id != line.Id && (l.Seen & line.Seen) != 0 && HungLead.PinOf(l) is { } other && union.Terminals[other] is { Side: Side.Top } beside && beside.Stand == pin.Stand);

    // There is room below a pin that looks down, has nothing else on it, and stands alone; above a part with pins far apart; and beside a part with one pin on that side.
    private static bool MayHang(Union union, Line line, int pin, bool isOverlaid)
    {
        var terminal = union.Terminals[pin];
        var stand = union.Stands[terminal.Stand];
        if (stand.IsPoint || (terminal.Side == Side.Top && !MayRise(union, line, terminal)) || (!terminal.IsSideways && (terminal.X < 1 || terminal.X > stand.Width - 1))) return false;
        return union.Lines.Where(l => l.Id != line.Id && (isOverlaid || (l.Seen & line.Seen) != 0)).SelectMany(l => new[] { l.From, l.To }).Where(e => e.OnTerminal).Select(e => union.Terminals[e.Terminal])
            .All(t => t.Stand != terminal.Stand || t.Side != terminal.Side || (!t.IsSideways && Math.Abs(t.X - terminal.X) >= Pitch));
    }
}
