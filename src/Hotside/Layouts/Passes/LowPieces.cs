namespace Hotside.Layouts.Passes;

/// <summary>
/// The horizontals that lie low in their channel: those whose conductors share a pin below it and none above. Branches are seen to meet at a pin when they meet close to it. What lies below
/// such a one goes down with it, if it does not meet at a pin above.
/// </summary>
internal static class LowPieces
{
    // Ends closer to each other than this would be read as one line.
    private const int Air = 1;

    /// <summary>All of them.</summary>
    public static IReadOnlySet<Piece> Of(Netlist netlist, RowPlan rows, PlannedBlock[] blocks)
    {
        var shared = netlist.Taps.Where(t => t.OnTerminal).GroupBy(t => t.Terminal).Where(g => g.Sum(t => t.Ends.Length) > 1).Select(g => g.Key).ToHashSet();
        var low = new HashSet<Piece>(ReferenceEqualityComparer.Instance);
        foreach (var channel in blocks.SelectMany(b => b.Lattice.Pieces.Where(p => p.Channel > 0 && p.Spans(b.X)).Select(p => new Lying(p, b.X, b.Columns.Levels[p.Id]))).GroupBy(p => p.Piece.Channel))
            foreach (var lying in channel.Where(p => p.Piece.IsTrunk && Hubs(p.Piece.Net) is { Below: true, Above: false }))
            {
                var under = Under(lying, [.. channel]);
                if (!under.Any(p => Hubs(p.Piece.Net).Above)) low.UnionWith(under.Select(p => p.Piece).Append(lying.Piece));
            }
        return low;

        (bool Above, bool Below) Hubs(Net net)
        {
            Tap[] hubs = net.Joints.IsEmpty ? [.. net.Taps.Select(t => netlist.Taps[t]).Where(t => shared.Contains(t.Terminal))] : [];
            return (hubs.Any(t => rows.Above[t.Id]), hubs.Any(t => !rows.Above[t.Id]));
        }
    }

    // What lies below a horizontal, and below that.
    private static List<Lying> Under(Lying one, Lying[] channel)
    {
        List<Lying> under = [one];
        for (int i = 0; i < under.Count; i++)
            under.AddRange(channel.Where(p => p.Level > under[i].Level && !under.Contains(p) && Overlap(under[i].Piece, under[i].X, p.Piece, p.X)));
        return under[1..];
    }

    private static bool Overlap(Piece one, int[] x, Piece other, int[] otherX) => Extents.Views.Any(v => (one.Seen & other.Seen & v) != 0
        && one.Low(x, v) - Air <= other.High(otherX, v) && other.Low(otherX, v) <= one.High(x, v) + Air);

    /// <summary>A horizontal on its track.</summary>
    private sealed record Lying(Piece Piece, int[] X, int Level);
}
