using System.Collections.Immutable;

namespace Hotside.Layouts.Passes;

/// <summary>The vertical measures: where each row's centre line and each channel lies.</summary>
/// <param name="RowCentre">By row.</param>
/// <param name="ChannelTop">By channel; its first track lies two modules below.</param>
/// <param name="ChannelHeight">By channel.</param>
/// <param name="Bottom">The chassis line.</param>
internal sealed record Levels(ImmutableArray<int> RowCentre, ImmutableArray<int> ChannelTop, ImmutableArray<int> ChannelHeight, int Bottom);

/// <summary>Heights of rows and channels from what stands in them, stretched evenly where the drawing may fill more of the sheet.</summary>
internal static class Heightening
{
    /// <summary>A text block begins so far above its symbol's centre.</summary>
    public const double TextRise = 1.9;

    // Free strip above the first and below the last track of a channel: room for labels at terminals.
    private const int Strip = 2;
    private const double MostStretch = 2.2;

    public static Levels Of(RowPlan rows, Netlist netlist, IEnumerable<(Lattice Lattice, ColumnPlan Columns)> blocks, LayoutOptions options, ImmutableArray<int> extra)
    {
        int[] above = new int[rows.Rows + 2], below = new int[rows.Rows + 2], tracks = new int[rows.Rows + 1];
        foreach (var stand in netlist.Stands)
        {
            int row = rows.RowOf[stand.Id];
            above[row] = Math.Max(above[row], stand.Height / 2);
            below[row] = Math.Max(below[row], stand.Height - (stand.Height / 2));
        }
        foreach (var (lattice, columns) in blocks)
        {
            int[] x = [.. columns.X];
            foreach (var piece in lattice.Pieces.Where(p => p.Spans(x)))
                tracks[piece.Channel] = Math.Max(tracks[piece.Channel], columns.Levels[piece.Id] + piece.Splits(x).Length + 1);
        }
        int[] height = [.. tracks.Select((n, c) => (n == 0 ? options.Channel : options.Channel + 1 + (options.Track * (n - 1))) + TextRoom(c) + extra[c])];
        if (options.FillHeight is { } fill) Stretch(height, fill - height.Sum() - above.Sum() - below.Sum());
        var centre = new int[rows.Rows + 2];
        var top = new int[rows.Rows + 1];
        int y = 0;
        for (int channel = 0; channel <= rows.Rows; channel++)
        {
            top[channel] = y;
            y += height[channel];
            if (channel == rows.Rows) break;
            centre[channel + 1] = y + above[channel + 1];
            y += above[channel + 1] + below[channel + 1];
        }
        return new([.. centre], [.. top], [.. height], y);

        // A text block that hangs lower than its symbol must not meet the next row's; horizontals keep above it.
        int TextRoom(int channel)
        {
            double hang = netlist.Stands.Where(s => rows.RowOf[s.Id] == channel).Select(s => s.Boxes.Max(b => b.Box.TextHeight) - TextRise - (s.Height - (s.Height / 2))).DefaultIfEmpty(0).Max();
            return Math.Max(0, (int)Math.Ceiling(hang - options.Channel + 3));
        }
    }

    /// <summary>The height of a piece's horizontal; of its right part behind a number of splits.</summary>
    public static int Y(Piece piece, int[] x, ColumnPlan columns, Levels levels, LayoutOptions options, bool anySpan)
    {
        int top = levels.ChannelTop[piece.Channel], height = levels.ChannelHeight[piece.Channel];
        if (piece.Spans(x)) return top + FirstTrack(piece.Channel, columns, levels, options) + (options.Track * columns.Levels[piece.Id]);
        return anySpan && !piece.Net.Joints.IsEmpty ? top + FirstTrack(piece.Channel, columns, levels, options) + 1 : top + (height / 2);
    }

    // Tracks lie in the upper part of a stretched channel: near the parts they come from, with the longer drops below.
    private static int FirstTrack(int channel, ColumnPlan columns, Levels levels, LayoutOptions options)
    {
        _ = columns;
        int slack = levels.ChannelHeight[channel] - options.Channel;
        return Strip + (channel == 0 ? 0 : Math.Min(2, Math.Max(0, slack) / 4));
    }

    private static void Stretch(int[] height, int more)
    {
        int[] natural = [.. height];
        for (bool grew = true; more > 0 && grew;)
        {
            grew = false;
            for (int channel = 0; channel < height.Length && more > 0; channel++)
            {
                if (height[channel] >= natural[channel] * MostStretch) continue;
                height[channel]++;
                more--;
                grew = true;
            }
        }
    }
}
