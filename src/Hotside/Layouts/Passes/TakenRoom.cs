using System.Collections.Immutable;
using Hotside.Symbols;

namespace Hotside.Layouts.Passes;

/// <summary>What already stands on the drawing, view by view, so that a text finds a free place.</summary>
internal sealed class TakenRoom
{
    private const double Clear = 0.12, BesideText = 0.5, BesideLine = 0.3, BesideBox = 0.2, BesideSlant = 0.95, BeyondFreeEnd = 4, NameOfFeed = 2.4;

    private readonly List<(double Left, double Top, double Right, double Bottom, SeenIn Seen)> taken = [];
    private readonly List<(double Left, double Top, double Right, double Bottom, SeenIn Seen, int Of)> lines = [];
    private readonly double height;

    /// <param name="input">What is laid out.</param>
    /// <param name="boxes">Where its boxes stand.</param>
    /// <param name="wires">Where its conductors run.</param>
    /// <param name="rails">Where its rails lie.</param>
    /// <param name="slants">Where its lines slant.</param>
    /// <param name="bottom">The chassis line.</param>
    public TakenRoom(LayoutInput input, ImmutableArray<PlacedBox> boxes, ImmutableArray<PlacedWire> wires, IEnumerable<PlacedRail> rails, IEnumerable<(SeenIn View, JointSlants Slants)> slants, int bottom)
    {
        height = bottom;
        foreach (var (box, placed) in input.Boxes.Zip(boxes).Where(b => !b.First.IsPoint))
        {
            taken.Add((placed.X - BesideBox, placed.Y - BesideBox, placed.X + box.Width + BesideBox, placed.Y + box.Height + BesideBox, box.Seen));
            if (box.IsFreeEnd) taken.Add(Beyond(box, placed));
            foreach (var view in Extents.Views.Where(v => (v & box.Seen) != 0 && box.TextWidths.In(v) > 0))
            {
                var (left, right) = placed.TextIn(view, box);
                // A label that touched the text of a part would be read with it.
                taken.Add((left - BesideText, placed.TextY - BesideText, right + BesideText, placed.TextY + box.TextHeight + BesideText, view));
            }
        }
        foreach (var (number, (wire, line)) in input.Wires.Zip(wires).Index())
        {
            for (int i = 1; i < line.Points.Length; i++)
            {
                var (a, b) = (line.Points[i - 1], line.Points[i]);
                lines.Add((Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Max(a.X, b.X), Math.Max(a.Y, b.Y), wire.Seen, number));
                taken.Add((Math.Min(a.X, b.X) - BesideLine, Math.Min(a.Y, b.Y) - BesideLine, Math.Max(a.X, b.X) + BesideLine, Math.Max(a.Y, b.Y) + BesideLine, wire.Seen));
            }
            foreach (var (end, point) in new[] { (wire.From, line.Points[0]), (wire.To, line.Points[^1]) })
                if (end.Kind == EndKind.Chassis) taken.Add((point.X - 1.2, point.Y - 0.1, point.X + 1.2, point.Y + 1.2, wire.Seen));
        }
        foreach (var (view, of) in slants)
            foreach (var (corner, from, to) in of.All)
            {
                double across = (from.X + to.X - (2 * corner.X)) * BesideSlant, down = (from.Y + to.Y - (2 * corner.Y)) * BesideSlant;
                taken.Add((Math.Min(corner.X, corner.X + across), Math.Min(corner.Y, corner.Y + down), Math.Max(corner.X, corner.X + across), Math.Max(corner.Y, corner.Y + down), view));
            }
        // The name of the feed rail stands above its left end; inner ones find a place of their own.
        foreach (var rail in rails) taken.Add((rail.X1 - 1, rail.Y - (rail.Box is null ? NameOfFeed : 0.3), rail.X2 + 1, rail.Y + 0.3, rail.Seen));
    }

    // Where the conductor would go on.
    private static (double Left, double Top, double Right, double Bottom, SeenIn Seen) Beyond(LayoutBox box, PlacedBox placed) =>
        box.Pins[0].Side == Side.Top != placed.Turned ? (placed.X, placed.Y, placed.X + box.Width, placed.Y + box.Height + BeyondFreeEnd, box.Seen) : (placed.X, placed.Y - BeyondFreeEnd, placed.X + box.Width, placed.Y + box.Height, box.Seen);

    /// <summary>Whether a text finds room here in all views that show it, and within the drawing.</summary>
    public bool IsFree(double x, double y, double width, double textHeight, SeenIn seen) =>
        y > -3 && y + textHeight < height + 3 && taken.TrueForAll(t => (t.Seen & seen) == 0 || t.Left >= x + width || t.Right <= x || t.Top >= y + textHeight || t.Bottom <= y);

    /// <summary>Whether a line runs here in a view that shows both, other than that of a conductor.</summary>
    public bool HasLine(double x, double y, double width, double height, SeenIn seen, int otherThan) =>
        lines.Exists(l => l.Of != otherThan && (l.Seen & seen) != 0 && l.Left < x + width && l.Right > x && l.Top < y + height && l.Bottom > y);

    /// <summary>From now on a text stands here.</summary>
    public void Take(double x, double y, double width, double textHeight, SeenIn seen) => taken.Add((x - Clear, y - Clear, x + width + Clear, y + textHeight + Clear, seen));
}
