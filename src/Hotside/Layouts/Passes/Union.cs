using System.Collections.Immutable;
using Hotside.Symbols;

namespace Hotside.Layouts.Passes;

/// <summary>Both circuits as one: stands, their terminals, joints and lines, each with the views that show it.</summary>
internal sealed record Union(
    ImmutableArray<Stand> Stands, ImmutableArray<Terminal> Terminals, ImmutableArray<LayoutBox> Joints, ImmutableArray<Line> Lines)
{
    /// <summary>The ways of the current inside the stands; points past the terminals are places inside.</summary>
    public ImmutableArray<Tie> Ties { get; private init; } = [];

    /// <summary>The terminals whose height a source holds.</summary>
    public ImmutableArray<(int Terminal, bool IsHot)> Poles { get; private init; } = [];

    public static Union Of(LayoutInput input)
    {
        List<Stand> stands = [];
        List<Terminal> terminals = [];
        List<LayoutBox> joints = [];
        Dictionary<(string Box, string Pin), LineEnd> ends = [];
        HashSet<string> wired = [.. input.Wires.SelectMany(w => new[] { w.From.Box, w.To.Box })];
        foreach (LayoutBox box in input.Boxes)
        {
            if (IsReplacement(box, input.Boxes, out _)) continue;
            if (box.IsPoint && wired.Contains(box.Id))
            {
                foreach (LayoutPin pin in box.Pins) ends[(box.Id, pin.Name)] = new(EndKind.Pin, -1, joints.Count);
                joints.Add(box);
                continue;
            }
            LayoutBox? successor = input.Boxes.FirstOrDefault(b => IsReplacement(b, input.Boxes, out LayoutBox? old) && old == box);
            stands.Add(StandOf(stands.Count, box, successor));
            AddTerminals(stands[^1], terminals, ends);
        }
        IEnumerable<Line> lines = input.Wires.Select((w, i) => new Line(i, w.Id, w.Seen, EndOf(w.From), EndOf(w.To)));
        return new([.. stands], [.. terminals], [.. joints], [.. lines]) { Ties = Inside(stands, terminals.Count, ends), Poles = Held(stands, ends) };

        LineEnd EndOf(LayoutEnd end) => end.Kind != EndKind.Pin ? new(end.Kind, -1, -1)
            : ends.TryGetValue((end.Box, end.Pin), out LineEnd found) ? found
            : throw new ArgumentException($"No box has the pin {end.Box}.{end.Pin}.", nameof(input));
    }

    private static ImmutableArray<Tie> Inside(List<Stand> stands, int terminals, Dictionary<(string Box, string Pin), LineEnd> ends)
    {
        Dictionary<(string, string), int> places = [];
        return [.. from stand in stands from standing in stand.Boxes from path in standing.Box.Paths select new Tie(stand.Id, Point(standing.Box.Id, path.From), Point(standing.Box.Id, path.To), path.Conductance)];

        int Point(string box, string name)
        {
            if (ends.TryGetValue((box, name), out var end)) return end.Terminal;
            if (!places.TryGetValue((box, name), out int place)) places[(box, name)] = place = terminals + places.Count;
            return place;
        }
    }

    private static ImmutableArray<(int, bool)> Held(List<Stand> stands, Dictionary<(string Box, string Pin), LineEnd> ends) =>
        [.. from stand in stands from standing in stand.Boxes from pole in standing.Box.Poles where ends.ContainsKey((standing.Box.Id, pole.Pin)) select (ends[(standing.Box.Id, pole.Pin)].Terminal, pole.IsHot)];

    /// <summary>Only the first after-only box named for a before-only one takes its place, and only with a body.</summary>
    private static bool IsReplacement(LayoutBox box, ImmutableArray<LayoutBox> boxes, out LayoutBox? replaced)
    {
        replaced = box.ReplacedIn is null || box.Seen != SeenIn.After || box.IsPoint ? null
            : boxes.FirstOrDefault(b => b.Id == box.ReplacedIn && b.Seen == SeenIn.Before && !b.IsPoint);
        return replaced is not null && boxes.First(b => b.ReplacedIn == box.ReplacedIn && b.Seen == SeenIn.After && !b.IsPoint) == box;
    }

    private static Stand StandOf(int id, LayoutBox box, LayoutBox? successor)
    {
        if (successor is null) return new(id, box.Seen, [new(box, 0, 0)], box.Width, box.Height, false);
        int shift = Shift(box, successor);
        int left = Math.Min(0, shift), height = Math.Max(box.Height, successor.Height);
        int width = Math.Max(box.Width, shift + successor.Width) - left;
        return new(id, SeenIn.Both,
            [new(box, -left, (height - box.Height) / 2), new(successor, shift - left, (height - successor.Height) / 2)],
            width, height, false);
    }

    /// <summary>How far right of the old box the new one stands so that as many like-named pins as may be keep their columns.</summary>
    private static int Shift(LayoutBox old, LayoutBox successor)
    {
        IEnumerable<int> shifts =
            from a in old.Pins
            from b in successor.Pins
            where a.Side == b.Side && a.Side is Side.Top or Side.Bottom
            orderby a.Name == b.Name ? 0 : 1
            select a.X - b.X;
        return shifts.GroupBy(s => s).OrderByDescending(g => g.Count()).Select(g => (int?)g.Key).FirstOrDefault()
            ?? (old.Width - successor.Width) / 2;
    }

    /// <summary>Pins of the old and the new box at one place are one terminal: the kept conductor hangs on the same point.</summary>
    private static void AddTerminals(Stand stand, List<Terminal> terminals, Dictionary<(string Box, string Pin), LineEnd> ends)
    {
        Dictionary<(Side, int, int, int), int> known = [];
        foreach (StandingBox standing in stand.Boxes)
        {
            Dictionary<(Side, int, int), int> copies = [];
            foreach (LayoutPin pin in standing.Box.Pins)
            {
                (Side side, int x, int y) = (SideOf(pin, standing.Box), standing.X + pin.X, standing.Y + pin.Y);
                copies[(side, x, y)] = copies.GetValueOrDefault((side, x, y)) + 1;
                (Side, int, int, int) key = (side, x, y, copies[(side, x, y)]);
                if (known.TryGetValue(key, out int id)) terminals[id] = terminals[id] with { Seen = terminals[id].Seen | standing.Box.Seen };
                else
                {
                    known[key] = id = terminals.Count;
                    terminals.Add(new(id, stand.Id, side, x, y, standing.Box.Seen));
                }
                ends[(standing.Box.Id, pin.Name)] = new(EndKind.Pin, id, -1);
            }
        }
    }

    /// <summary>A pin in the middle of a body is reached over the nearer of top and bottom.</summary>
    private static Side SideOf(LayoutPin pin, LayoutBox box) =>
        pin.Side != Side.Centre ? pin.Side : 2 * pin.Y <= box.Height ? Side.Top : Side.Bottom;
}
