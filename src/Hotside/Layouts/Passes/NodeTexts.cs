using System.Collections.Immutable;

namespace Hotside.Layouts.Passes;

/// <summary>
/// Places the names of splices, studs and rails: a splice's below right of its dot, else in another corner or a little further off; a rail's above its
/// left end, else further along or below. Names come before the labels of conductors, which have more places to choose from.
/// </summary>
internal static class NodeTexts
{
    private const double BesideDot = 0.7, UnderDot = 0.6, OverRail = 0.6, Step = 0.5, Air = 0.5, Near = 2, Furthest = 6;

    /// <param name="input">What is laid out.</param>
    /// <param name="boxes">Where its boxes stand.</param>
    /// <param name="rails">Where its rails lie.</param>
    /// <param name="room">What stands there already.</param>
    /// <param name="near">Whether a name stands close to its dot or nowhere.</param>
    /// <returns>The boxes with their names in place, and for each that found none the height at which more room would help.</returns>
    public static (ImmutableArray<PlacedBox> Boxes, ImmutableArray<int> Failed) Of(LayoutInput input, ImmutableArray<PlacedBox> boxes, ImmutableArray<PlacedRail> rails, TakenRoom room, bool near)
    {
        var placed = boxes.ToBuilder();
        var failed = ImmutableArray.CreateBuilder<int>();
        for (int i = 0; i < boxes.Length; i++)
        {
            var box = input.Boxes[i];
            if (!box.IsPoint || !box.HasText) continue;
            var places = box.IsRail ? Along(box, boxes[i], rails) : Around(box, boxes[i], near ? Near : Furthest);
            // With air beside it wherever there is room.
            var free = new[] { Air, 0 }.Select(air => places.Where(p => room.IsFree(p.X - air, p.Y, box.TextWidth + (2 * air), box.TextHeight, box.Seen)).Take(1).ToArray()).FirstOrDefault(f => f.Length > 0, []);
            var (x, y) = free.Length > 0 ? free[0] : places.First();
            if (free.Length == 0) failed.Add(boxes[i].Y);
            placed[i] = boxes[i] with { TextX = x, TextY = y };
            room.Take(x, y, box.TextWidth, box.TextHeight, box.Seen);
        }
        return (placed.ToImmutable(), failed.ToImmutable());
    }

    private static IEnumerable<(double X, double Y)> Around(LayoutBox box, PlacedBox at, double furthest)
    {
        for (double off = 0; off <= furthest; off += Step)
            foreach (double y in new[] { at.Y + UnderDot + off, at.Y - UnderDot - off - box.TextHeight })
                foreach (double x in new[] { at.X + BesideDot, at.X - BesideDot - box.TextWidth })
                    yield return (x, y);
        for (double off = Step; off <= furthest; off += Step)
            foreach (double y in new[] { at.Y + UnderDot, at.Y - UnderDot - box.TextHeight })
                foreach (double x in new[] { at.X + BesideDot + off, at.X - BesideDot - off - box.TextWidth })
                    yield return (x, y);
    }

    private static IEnumerable<(double X, double Y)> Along(LayoutBox box, PlacedBox at, ImmutableArray<PlacedRail> rails)
    {
        var own = rails.Where(r => r.Box == box.Id).DefaultIfEmpty(new(box.Id, box.Seen, at.Y, at.X - 1, at.X + 1)).ToArray();
        double left = own.Max(r => r.X1), right = own.Min(r => r.X2), y = own[0].Y;
        foreach (double top in new[] { y - OverRail - box.TextHeight, y + OverRail })
            for (double x = left; x <= Math.Max(left, right - box.TextWidth); x += Step) yield return (x, top);
        // Beyond one end, where a short rail has no room; begun or ended over it, so that it is read with it.
        foreach (double top in new[] { y - OverRail - box.TextHeight, y + OverRail })
        {
            for (double x = left + Step; x < right; x += Step) yield return (x, top);
            for (double x = right - Step; x > left; x -= Step) yield return (x - box.TextWidth, top);
        }
        foreach (double top in new[] { y - OverRail - box.TextHeight, y + OverRail })
            foreach (double x in new[] { right - BesideDot, left - box.TextWidth + BesideDot }) yield return (x, top);
        yield return (right + BesideDot, y - (box.TextHeight / 2));
        yield return (left - BesideDot - box.TextWidth, y - (box.TextHeight / 2));
        for (double off = Step; off <= Furthest; off += Step)
            foreach (double top in new[] { y - OverRail - box.TextHeight - off, y + OverRail + off })
                for (double x = left - box.TextWidth; x <= right; x += Step) yield return (x, top);
    }
}
