using System.Collections.Immutable;
using Hotside.Symbols;

namespace Hotside.Layouts.Passes;

/// <summary>
/// Looks at a finished layout with other eyes than made it: reads only what was asked for and what came out, and says in words what no drawing may do.
/// </summary>
internal sealed class Check
{
    private const double Slack = 0.01;

    private readonly LayoutInput input;
    private readonly Layout layout;
    private readonly List<string> faults = [];

    private Check(LayoutInput input, Layout layout) => (this.input, this.layout) = (input, layout);

    /// <summary>What is wrong, view by view; empty when nothing is.</summary>
    public static IReadOnlyList<string> Of(LayoutInput input, Layout layout)
    {
        var check = new Check(input, layout);
        check.Shapes();
        foreach (var view in Extents.Views)
        {
            check.Boxes(view);
            check.Bodies(view);
            check.Nets(view);
            check.Labels(view);
        }
        return check.faults;
    }

    private IEnumerable<(LayoutWire Wire, ImmutableArray<(int X, int Y)> Points)> Lines(SeenIn view) =>
        input.Wires.Zip(layout.Wires).Where(p => (p.First.Seen & view) != 0).Select(p => (p.First, p.Second.Points));

    private IEnumerable<(LayoutBox Box, PlacedBox Placed)> Bodies(SeenIn view, bool points) =>
        input.Boxes.Zip(layout.Boxes).Where(p => (p.First.Seen & view) != 0 && (points || !p.First.IsPoint || p.First.Width > 0));

    // Every line is drawn along the axes and ends where it should.
    private void Shapes()
    {
        foreach (var (wire, line) in input.Wires.Zip(layout.Wires))
        {
            if (line.Points.Length < 2) faults.Add($"{wire.Id} has no line");
            for (int i = 1; i < line.Points.Length; i++)
                if (line.Points[i].X != line.Points[i - 1].X && line.Points[i].Y != line.Points[i - 1].Y) faults.Add($"{wire.Id} runs aslant");
            EndsAt(wire, wire.From, line.Points[0]);
            EndsAt(wire, wire.To, line.Points[^1]);
        }
        foreach (var missing in input.Wires.Where(w => w.HasLabel && layout.Labels.All(l => l.Wire != w.Id))) faults.Add($"the label of {missing.Id} is lost");
    }

    private void EndsAt(LayoutWire wire, LayoutEnd end, (int X, int Y) at)
    {
        if (end.Kind == EndKind.Feed && at.Y != Layout.FeedY) faults.Add($"{wire.Id} does not reach the feed");
        if (end.Kind == EndKind.Chassis && at.Y != layout.ChassisY && !layout.Signs.Contains(wire.Id)) faults.Add($"{wire.Id} does not reach chassis");
        if (end.Kind != EndKind.Pin) return;
        int index = Enumerable.Range(0, input.Boxes.Length).First(i => input.Boxes[i].Id == end.Box);
        var (box, placed) = (input.Boxes[index], layout.Boxes[index]);
        var place = box.IsPoint && box.Width == 0 ? (placed.X, placed.Y) : placed.PinPlace(box, box.Pins.First(p => p.Name == end.Pin));
        if (place != at) faults.Add($"{wire.Id} misses {end.Box}.{end.Pin}");
    }

    private void Boxes(SeenIn view)
    {
        var boxes = Bodies(view, points: false).ToArray();
        for (int i = 0; i < boxes.Length; i++)
            for (int j = i + 1; j < boxes.Length; j++)
            {
                var (a, b) = (boxes[i], boxes[j]);
                if (a.Placed.X < b.Placed.X + b.Box.Width && b.Placed.X < a.Placed.X + a.Box.Width && a.Placed.Y < b.Placed.Y + b.Box.Height && b.Placed.Y < a.Placed.Y + a.Box.Height)
                    faults.Add($"{view}: {a.Box.Id} and {b.Box.Id} overlap");
            }
    }

    // No line runs through a body, its own or another's.
    private void Bodies(SeenIn view)
    {
        foreach (var (wire, points) in Lines(view))
            foreach (var (box, placed) in Bodies(view, points: false))
                for (int i = 1; i < points.Length; i++)
                {
                    var (a, b) = (points[i - 1], points[i]);
                    if (Math.Min(a.X, b.X) < placed.X + box.Width && placed.X < Math.Max(a.X, b.X) && a.Y == b.Y && placed.Y < a.Y && a.Y < placed.Y + box.Height
                        || Math.Min(a.Y, b.Y) < placed.Y + box.Height && placed.Y < Math.Max(a.Y, b.Y) && a.X == b.X && placed.X < a.X && a.X < placed.X + box.Width)
                        faults.Add($"{view}: {wire.Id} runs through {box.Id}");
                }
    }

    // Strange nets neither share a step nor touch at a corner or end; one net never has four arms, but on a rail.
    private void Nets(SeenIn view)
    {
        var net = NetsOf(view);
        var steps = new Dictionary<(int X, int Y, bool Down), int>();
        var arms = new Dictionary<(int X, int Y), List<(int Net, int Dx, int Dy)>>();
        foreach (var (wire, points) in Lines(view))
            for (int i = 1; i < points.Length; i++)
                foreach (var (from, dx, dy) in Walk(points[i - 1], points[i]))
                {
                    var key = dx + dy > 0 ? (from.X, from.Y, dy != 0) : (from.X + dx, from.Y + dy, dy != 0);
                    if (steps.TryGetValue(key, out int other) && other != net[wire.Id]) faults.Add($"{view}: {wire.Id} lies on another conductor");
                    steps[key] = net[wire.Id];
                    Arm(from, dx, dy, net[wire.Id]);
                    Arm((from.X + dx, from.Y + dy), -dx, -dy, net[wire.Id]);
                }
        foreach (var (at, here) in arms)
        {
            foreach (var group in here.Distinct().GroupBy(a => a.Net))
                if (group.Count() == 4 && !OnRail(at, view)) faults.Add($"{view}: four arms meet at {at.X},{at.Y}");
            var nets = here.Distinct().GroupBy(a => a.Net).ToArray();
            // Two nets may cross straight, and in no other way.
            if (nets.Length > 1 && nets.Any(n => n.Count() != 2 || n.Sum(a => a.Dx) != 0 || n.Sum(a => a.Dy) != 0)) faults.Add($"{view}: strange conductors touch at {at.X},{at.Y}");
        }

        void Arm((int X, int Y) at, int dx, int dy, int number)
        {
            if (!arms.TryGetValue(at, out var list)) arms[at] = list = [];
            list.Add((number, dx, dy));
        }
    }

    // On a rail, which is drawn as a bar, conductors may meet from both sides: no reader takes that for a crossing.
    private bool OnRail((int X, int Y) at, SeenIn view) =>
        layout.Rails.Any(r => (r.Seen & view) != 0 && r.Y == at.Y && r.X1 <= at.X && at.X <= r.X2);

    private static IEnumerable<((int X, int Y) From, int Dx, int Dy)> Walk((int X, int Y) a, (int X, int Y) b)
    {
        int dx = Math.Sign(b.X - a.X), dy = Math.Sign(b.Y - a.Y);
        for (var at = a; at != b; at = (at.X + dx, at.Y + dy)) yield return (at, dx, dy);
    }

    // Conductors that share a pin or a joint in the view are one net; the rails join nothing.
    private Dictionary<string, int> NetsOf(SeenIn view)
    {
        var lines = Lines(view).Select(l => l.Wire).ToArray();
        var sets = new DisjointSets(lines.Length);
        var first = new Dictionary<(string, string), int>();
        for (int i = 0; i < lines.Length; i++)
            foreach (var end in new[] { lines[i].From, lines[i].To }.Where(e => e.Kind == EndKind.Pin))
            {
                var box = input.Boxes.First(b => b.Id == end.Box);
                var key = (end.Box, box.IsPoint ? "" : end.Pin);
                if (first.TryGetValue(key, out int other)) sets.Join(other, i);
                else first[key] = i;
            }
        return Enumerable.Range(0, lines.Length).ToDictionary(i => lines[i].Id, sets.Find, StringComparer.Ordinal);
    }

    private void Labels(SeenIn view)
    {
        var texts = new List<(string Of, double Left, double Top, double Right, double Bottom)>();
        foreach (var (box, placed) in Bodies(view, points: true).Where(b => b.Box.HasText))
        {
            var (left, right) = placed.TextIn(view, box);
            texts.Add((box.Id, left, placed.TextY, right, placed.TextY + box.TextHeight));
        }
        foreach (var label in layout.Labels.Where(l => (input.Wires.First(w => w.Id == l.Wire).Seen & view) != 0))
            texts.Add((label.Wire, label.X, label.Y, label.X + label.Width, label.Y + label.Height));
        for (int i = 0; i < texts.Count; i++)
        {
            var t = texts[i];
            for (int j = i + 1; j < texts.Count; j++)
                if (Overlap(t, texts[j].Left, texts[j].Top, texts[j].Right, texts[j].Bottom)) faults.Add($"{view}: the texts of {t.Of} and {texts[j].Of} overlap");
            foreach (var (box, placed) in Bodies(view, points: false))
                if (Overlap(t, placed.X, placed.Y, placed.X + box.Width - placed.FreeOnRight(view, box), placed.Y + box.Height)) faults.Add($"{view}: the text of {t.Of} lies on {box.Id}");
            foreach (var (wire, points) in Lines(view))
                for (int k = 1; k < points.Length; k++)
                    if (Overlap(t, Math.Min(points[k].X, points[k - 1].X), Math.Min(points[k].Y, points[k - 1].Y), Math.Max(points[k].X, points[k - 1].X), Math.Max(points[k].Y, points[k - 1].Y)))
                        faults.Add($"{view}: the text of {t.Of} lies on the conductor {wire.Id}");
        }
    }

    private static bool Overlap((string Of, double Left, double Top, double Right, double Bottom) t, double left, double top, double right, double bottom) =>
        t.Left < right - Slack && left < t.Right - Slack && t.Top < bottom - Slack && top < t.Bottom - Slack
        || (left == right && t.Left < left - Slack && left < t.Right - Slack && t.Top < bottom && top < t.Bottom)
        || (top == bottom && t.Top < top - Slack && top < t.Bottom - Slack && t.Left < right && left < t.Right);
}
