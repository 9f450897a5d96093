using System.Collections.Immutable;
using Hotside.Symbols;

namespace Hotside.Layouts.Passes;

/// <summary>
/// What is bolted to a rail hangs close below it, as the fuses of a block do, and its conductor gets the length that is left: a long lead would be read as a wire.
/// All on one rail come up alike.
/// </summary>
internal static class RailMounts
{
    // From a rail to the symbol below: its text block rises almost two modules above the symbol.
    private const int BelowRail = 3;

    private const double Air = 0.5;

    public static Layout Of(LayoutInput input, Layout layout)
    {
        var mounted = input.Boxes.Zip(layout.Boxes, (box, placed) => (Box: box, Placed: placed, Rail: RailOf(input, layout, box, placed))).ToArray();
        var rise = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var place in mounted.GroupBy(m => m.Box.ReplacedIn ?? m.Box.Id))
        {
            if (place.Any(m => m.Rail is null) || place.Select(m => m.Rail).Distinct().Count() > 1) continue;
            int least = place.Min(m => m.Placed.Y) - (place.First().Rail!.Value + BelowRail);
            if (least <= 0 || place.Any(m => IsCrossed(input, layout, m.Box, m.Placed, m.Rail!.Value))) continue;
            foreach (var (box, _, _) in place) rise[box.Id] = least;
        }
        // What would come upon a neighbour stays where it is.
        var boxes = mounted.Where(m => !m.Box.IsPoint).Select(m => (m.Box, m.Placed)).ToArray();
        while (boxes.FirstOrDefault(b => rise.ContainsKey(b.Box.Id) && boxes.Any(o => o.Box != b.Box && AreClose(b, o))) is { Box: { } close })
            foreach (var (box, _) in boxes.Where(b => (b.Box.ReplacedIn ?? b.Box.Id) == (close.ReplacedIn ?? close.Id))) rise.Remove(box.Id);
        // Alike parts of a row on one rail stay on one line.
        foreach (var alike in mounted.Where(m => m.Rail is not null).GroupBy(m => (m.Rail, m.Placed.Y, m.Box.Shape)).Where(g => g.Any(m => !rise.ContainsKey(m.Box.Id))))
            foreach (var (box, _, _) in alike) rise.Remove(box.Id);
        return rise.Count == 0 ? layout : layout with
        {
            Boxes = [.. layout.Boxes.Select(b => rise.TryGetValue(b.Id, out int up) ? b with { Y = b.Y - up, TextY = b.TextY - up } : b)],
            Wires = [.. input.Wires.Zip(layout.Wires, (wire, placed) => placed with { Points = Led(placed.Points, rise.GetValueOrDefault(wire.From.Box), rise.GetValueOrDefault(wire.To.Box)) })],
        };

        bool AreClose((LayoutBox Box, PlacedBox Placed) one, (LayoutBox Box, PlacedBox Placed) other) =>
            Extents.Views.Any(v => (v & one.Box.Seen & other.Box.Seen) != 0 && Rectangles(one, v).Any(a => Rectangles(other, v).Any(b => a.Left < b.Right + Air && b.Left < a.Right + Air && a.Top < b.Bottom + Air && b.Top < a.Bottom + Air)));

        IEnumerable<(double Left, double Top, double Right, double Bottom)> Rectangles((LayoutBox Box, PlacedBox Placed) of, SeenIn view)
        {
            int up = rise.GetValueOrDefault(of.Box.Id);
            yield return (of.Placed.X, of.Placed.Y - up, of.Placed.X + of.Box.Width, of.Placed.Y + of.Box.Height - up);
            if (of.Box.TextWidths.In(view) > 0 && of.Placed.TextIn(view, of.Box) is var (left, right)) yield return (left, of.Placed.TextY - up, right, of.Placed.TextY + of.Box.TextHeight - up);
        }
    }

    // The height of the rail that all upper pins are bolted to, straight below it.
    private static int? RailOf(LayoutInput input, Layout layout, LayoutBox box, PlacedBox placed)
    {
        if (box.IsPoint || box.Pins.Any(p => p.Side is not (Side.Top or Side.Bottom))) return null;
        int? rail = null;
        bool isMounted = false;
        foreach (var (wire, line) in input.Wires.Zip(layout.Wires))
            foreach (var (end, other, points) in new[] { (wire.From, wire.To, line.Points), (wire.To, wire.From, line.Points.Reverse().ToImmutableArray()) })
            {
                if (end.Kind != EndKind.Pin || end.Box != box.Id || placed.PinPlace(box, box.Pins.First(p => p.Name == end.Pin)).Y != placed.Y) continue;
                int? height = other.Kind == EndKind.Feed ? Layout.FeedY : layout.Rails.FirstOrDefault(r => r.Box is not null && r.Box == other.Box)?.Y;
                if (!wire.Short || height is not { } found || (rail is { } known && known != found) || points.Skip(1).Any(p => p.Y != found) || points[0].X != points[1].X) return null;
                (rail, isMounted) = (found, true);
            }
        return isMounted ? rail : null;
    }

    // Whether between the rail and the symbol a line passes above or below it, or beside it where its text will stand.
    private static bool IsCrossed(LayoutInput input, Layout layout, LayoutBox box, PlacedBox placed, int rail)
    {
        double left = Math.Min(placed.X, box.HasText ? placed.TextX : placed.X) - 1, right = Math.Max(placed.X + box.Width, box.HasText ? placed.TextX + box.TextWidth : 0) + 1;
        double bottom = placed.Y + box.Height;
        return input.Wires.Zip(layout.Wires).Where(w => (w.First.Seen & box.Seen) != 0 && w.First.From.Box != box.Id && w.First.To.Box != box.Id)
            .SelectMany(w => w.Second.Points.Zip(w.Second.Points.Skip(1)))
            .Any(s => Math.Max(s.First.X, s.Second.X) > left && Math.Min(s.First.X, s.Second.X) < right && Math.Max(s.First.Y, s.Second.Y) > rail && Math.Min(s.First.Y, s.Second.Y) < bottom);
    }

    private static ImmutableArray<(int X, int Y)> Led(ImmutableArray<(int X, int Y)> points, int from, int to)
    {
        if (from == 0 && to == 0) return points;
        var led = points.ToBuilder();
        if (from != 0) led[0] = (led[0].X, led[0].Y - from);
        if (to != 0) led[^1] = (led[^1].X, led[^1].Y - to);
        return led.ToImmutable();
    }
}
