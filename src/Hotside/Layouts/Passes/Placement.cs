using System.Collections.Immutable;
using Hotside.Symbols;

namespace Hotside.Layouts.Passes;

/// <summary>Puts boxes, lines, rails and dots where the passes before decided.</summary>
internal static class Placement
{
    public static Layout Of(
        LayoutInput input, Netlist netlist, RowPlan rows, SidePins sides, ImmutableArray<TextRoom> text, PlannedBlock[] blocks, Levels levels, ImmutableArray<HungLead> leads, LayoutOptions options, Recollection? known)
    {
        var stands = new Dictionary<int, (int X, int Y)>();
        var textLeft = new HashSet<int>();
        foreach (var block in blocks)
            foreach (var seat in block.Lattice.Seats.Where(s => s.IsStand))
            {
                stands[seat.Stand] = (block.X[seat.Id], levels.RowCentre[seat.Row] - (netlist.Stands[seat.Stand].Height / 2));
                if (block.Columns.TextLeft.Contains(seat.Stand)) textLeft.Add(seat.Stand);
            }
        var (joints, lines) = Routes.Of(netlist, sides, levels, options, blocks, s => stands[s], known);
        var hung = leads.ToDictionary(l => l.Line, l => l.Points(netlist, rows, levels, stands[netlist.Terminals[l.Terminal].Stand]));
        ImmutableArray<PlacedWire> wires = [.. input.Wires.Select((w, i) => new PlacedWire(w.Id, hung.TryGetValue(i, out var lead) ? lead : lines[i]))];
        ImmutableArray<PlacedBox> boxes = [.. input.Boxes.Select(Placed)];
        ImmutableArray<PlacedRail> rails = [.. Rails.Of(input, netlist, wires, joints)];
        int width = boxes.Zip(input.Boxes).Select(p => p.First.TextOnLeft ? p.First.X + p.Second.Width : (int)Math.Ceiling(Math.Max(p.First.X + p.Second.Width, p.Second.HasText ? p.First.TextX + p.Second.TextWidth : 0)))
            .Concat(wires.SelectMany(w => w.Points).Select(p => p.X)).DefaultIfEmpty(0).Max();
        return new(boxes, wires, [], rails, [.. Dots.Of(input, netlist, wires)], width, levels.Bottom) { Signs = [.. leads.Select(l => input.Wires[l.Line].Id)] };

        PlacedBox Placed(LayoutBox box)
        {
            foreach (var stand in netlist.Stands)
                foreach (var standing in stand.Boxes.Where(b => b.Box == box))
                {
                    var (x, y) = stands[stand.Id];
                    bool left = textLeft.Contains(stand.Id);
                    int boxX = x + stand.LeftOf(standing), boxY = y + (stand.Turned ? stand.Height - standing.Y - box.Height : standing.Y);
                    // Of two that share a stand the narrower one has its text beside itself, unless lines run there.
                    double textX = left ? (sides.ReachLeft[stand.Id] > 0 ? x - sides.ReachLeft[stand.Id] : boxX) - Stand.TextGap - box.TextWidth
                        : (sides.ReachRight[stand.Id] > 0 ? x + stand.Width + sides.ReachRight[stand.Id] + 1 : boxX + box.Width) + Stand.TextGap;
                    double textY = boxY + (box.Height / 2.0) - Heightening.TextRise(box.TextHeight, box.Height);
                    return new(box.Id, boxX, boxY, stand.Turned, left, textX, textY) { Facing = stand.Facing };
                }
            var place = joints[Enumerable.Range(0, netlist.Joints.Length).First(j => netlist.Joints[j] == box)];
            return new(box.Id, place.X, place.Y, false, false, place.X, place.Y);
        }
    }
}

/// <summary>The extent of each rail as each view shows it.</summary>
internal static class Rails
{
    public static IEnumerable<PlacedRail> Of(LayoutInput input, Netlist netlist, ImmutableArray<PlacedWire> wires, IReadOnlyDictionary<int, (int X, int Y)> joints)
    {
        var feed = input.Wires.Zip(wires).SelectMany(p => new[] { (p.First.From, p.Second.Points[0], p.First.Seen), (p.First.To, p.Second.Points[^1], p.First.Seen) })
            .Where(e => e.Item1.Kind == EndKind.Feed).Select(e => (e.Item2.X, e.Item3)).ToArray();
        foreach (var rail in Of(null, Layout.FeedY, feed)) yield return rail;
        for (int joint = 0; joint < netlist.Joints.Length; joint++)
        {
            if (!netlist.Joints[joint].IsRail || !joints.TryGetValue(joint, out var place)) continue;
            var net = netlist.Nets.First(n => n.Joints.Contains(joint));
            var taps = net.Lines.Select(l => (Line: netlist.Lines[l], wires[l].Points)).Where(l => l.Line.From.Joint == joint || l.Line.To.Joint == joint)
                .SelectMany(l => l.Points.Where(p => p.Y == place.Y).Select(p => (p.X, l.Line.Seen))).Append((place.X, netlist.Joints[joint].Seen)).ToArray();
            foreach (var rail in Of(netlist.Joints[joint].Id, place.Y, taps)) yield return rail;
        }
    }

    private static IEnumerable<PlacedRail> Of(string? box, int y, (int X, SeenIn Seen)[] taps)
    {
        var views = Extents.Views.Select(v => (View: v, Taps: taps.Where(t => (t.Seen & v) != 0).Select(t => t.X).ToArray())).Where(v => v.Taps.Length > 0).ToArray();
        var rails = views.Select(v => new PlacedRail(box, v.View, y, v.Taps.Min() - 1, v.Taps.Max() + 1)).ToArray();
        return rails.Length == 2 && rails[0].X1 == rails[1].X1 && rails[0].X2 == rails[1].X2 ? [rails[0] with { Seen = SeenIn.Both }] : rails;
    }
}

/// <summary>The places where three arms of a net meet, view by view; pins and rails join by themselves.</summary>
internal static class Dots
{
    public static IEnumerable<PlacedDot> Of(LayoutInput input, Netlist netlist, ImmutableArray<PlacedWire> wires)
    {
        var dots = new SortedDictionary<(int Y, int X), SeenIn>();
        foreach (var view in Extents.Views)
            foreach (var joined in netlist.Nets.Where(n => n.ElectricIn(view) >= 0).GroupBy(n => n.ElectricIn(view)))
            {
                // Unit steps away from each point, so that shared runs count once.
                var arms = new Dictionary<(int X, int Y), HashSet<(int, int)>>();
                foreach (int number in joined.SelectMany(n => n.Lines).Where(l => (input.Wires[l].Seen & view) != 0))
                    for (int i = 1; i < wires[number].Points.Length; i++) Run(arms, wires[number].Points[i - 1], wires[number].Points[i]);
                foreach (var (at, directions) in arms.Where(a => a.Value.Count > 2))
                    dots[(at.Y, at.X)] = dots.GetValueOrDefault((at.Y, at.X)) | view;
            }
        return dots.Select(d => new PlacedDot(d.Key.X, d.Key.Y, d.Value));
    }

    private static void Run(Dictionary<(int X, int Y), HashSet<(int, int)>> arms, (int X, int Y) a, (int X, int Y) b)
    {
        int dx = Math.Sign(b.X - a.X), dy = Math.Sign(b.Y - a.Y);
        for (var at = a; at != b; at = (at.X + dx, at.Y + dy))
        {
            Arm(at, (dx, dy));
            Arm((at.X + dx, at.Y + dy), (-dx, -dy));
        }

        void Arm((int, int) place, (int, int) direction)
        {
            if (!arms.TryGetValue(place, out var known)) arms[place] = known = [];
            known.Add(direction);
        }
    }
}
