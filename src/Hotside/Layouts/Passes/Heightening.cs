using System.Collections.Immutable;
using Hotside.Symbols;

namespace Hotside.Layouts.Passes;

/// <summary>The vertical measures: where each row's centre line and each channel lies.</summary>
/// <param name="RowCentre">By row.</param>
/// <param name="Above">By row: how far its bodies reach above its centre line.</param>
/// <param name="Below">By row: how far below.</param>
/// <param name="ChannelTop">By channel.</param>
/// <param name="ChannelHeight">By channel.</param>
/// <param name="FirstTrack">By channel: how far below its top the first horizontal lies.</param>
/// <param name="Bottom">The chassis line.</param>
internal sealed record Levels(ImmutableArray<int> RowCentre, ImmutableArray<int> Above, ImmutableArray<int> Below, ImmutableArray<int> ChannelTop, ImmutableArray<int> ChannelHeight, ImmutableArray<int> FirstTrack, int Bottom)
{
    /// <summary>The horizontals that lie low, close to the pin below that their conductors share.</summary>
    public required IReadOnlySet<Piece> Low { get; init; }

    /// <summary>By channel: how far low ones lie below their tracks.</summary>
    public required ImmutableArray<int> Lower { get; init; }

    /// <summary>Whether any may lie low.</summary>
    public required bool AtPins { get; init; }
}

/// <summary>What a channel grows by so that labels find room: above its first horizontal and below.</summary>
internal readonly record struct Growth(int Above, int Below);

/// <summary>
/// Heights of rows and channels from what stands in them. Horizontals keep clear of text blocks that hang into their channel; where the drawing
/// may fill more of the sheet, all channels grow evenly.
/// </summary>
internal sealed class Heightening
{
    // Free strip above the first and below the last track of a channel: room for labels at terminals.
    private const int Strip = 2;

    // The name of a rail stands over it, with the number of its change: three modules and air.
    private const int RailName = 4;

    // What a channel grows by at most to fill a sheet, in modules: beyond that a drawing looks torn apart, small parts at the ends of long bare lines, and white around it is calmer.
    private const int MostStretch = 5;

    private readonly RowPlan rows;
    private readonly Netlist netlist;
    private readonly PlannedBlock[] blocks;
    private readonly LayoutOptions options;
    private readonly Levels? before;
    private readonly bool atPins;
    private readonly ImmutableArray<HungLead> leads;

    private Heightening(RowPlan rows, Netlist netlist, PlannedBlock[] blocks, ImmutableArray<HungLead> leads, LayoutOptions options, bool atPins, Recollection? known)
    {
        this.atPins = atPins;
        (this.rows, this.netlist, this.blocks, this.leads, this.options) = (rows, netlist, blocks, leads, options);
        before = known?.Levels is { } then && known.Rows == rows.Rows ? then : null;
    }

    /// <param name="rows">What stands in which row.</param>
    /// <param name="netlist">The nets.</param>
    /// <param name="blocks">The blocks with their columns.</param>
    /// <param name="leads">The leads that hang below pins with chassis signs of their own.</param>
    /// <param name="options">The spacing.</param>
    /// <param name="extra">What channels grow by.</param>
    /// <param name="atPins">Whether branches meet close to the pin that they share, if it lies below.</param>
    /// <param name="known">What an earlier layout remembers.</param>
    public static Levels Of(RowPlan rows, Netlist netlist, PlannedBlock[] blocks, ImmutableArray<HungLead> leads, LayoutOptions options, ImmutableArray<Growth> extra, bool atPins, Recollection? known) =>
        new Heightening(rows, netlist, blocks, leads, options, atPins, known).Levels(extra);

    /// <summary>How far above its symbol's centre a text block begins: it stands about the centre, but rises little above the symbol.</summary>
    public static double TextRise(double textHeight, int boxHeight) => Math.Min(textHeight / 2, (boxHeight / 2.0) + 1.8);

    /// <summary>The height of a piece's horizontal, or of the joint on one that has none.</summary>
    public static int Y(Piece piece, int[] x, ColumnPlan columns, Levels levels, LayoutOptions options, bool anySpan)
    {
        int top = levels.ChannelTop[piece.Channel], first = top + levels.FirstTrack[piece.Channel];
        if (piece.Spans(x)) return first + (options.Track * columns.Levels[piece.Id]) + (levels.Low.Contains(piece) ? levels.Lower[piece.Channel] : 0);
        // A joint on a straight line must not lie at the height of another net's horizontal: it would be read as theirs.
        return anySpan && !piece.Net.Joints.IsEmpty ? first + 1 : top + (levels.ChannelHeight[piece.Channel] / 2);
    }

    private Levels Levels(ImmutableArray<Growth> extra)
    {
        int[] above = before is null ? new int[rows.Rows + 2] : [.. before.Above], below = before is null ? new int[rows.Rows + 2] : [.. before.Below];
        foreach (var stand in netlist.Stands)
        {
            int row = rows.RowOf[stand.Id];
            above[row] = Math.Max(above[row], stand.Height / 2);
            below[row] = Math.Max(below[row], stand.Height - (stand.Height / 2));
        }
        int[] channels = [.. Enumerable.Range(0, rows.Rows + 1)];
        int[] tracks = [.. channels.Select(Tracks)], hang = [.. channels.Select(c => Clearance(c, c, below, hangs: true) + extra[c].Above)], rise = [.. channels.Select(c => Clearance(c, c + 1, above, hangs: false))];
        int[] height = [.. channels.Select(c => Math.Max(Least(c, tracks[c], hang[c], rise[c]), TextUnderText(c, above, below)) + extra[c].Below)];
        int[] natural = [.. height];
        for (int c = 0; before is not null && c < height.Length; c++) height[c] = Math.Max(height[c], before.ChannelHeight[c]);
        if (options.FillHeight is { } fill && before is null) Stretch(height, fill - height.Sum() - above.Sum() - below.Sum());
        // In a stretched channel the tracks stay near the upper row, with the longer drops below them.
        int[] first = [.. channels.Select(c => hang[c] + FromRow(c))];
        // Horizontals lie where they lay, as long as what hangs into the channel allows.
        for (int c = 0; before is not null && c < height.Length; c++)
            if (before.FirstTrack[c] >= first[c] && height[c] >= Least(c, tracks[c], before.FirstTrack[c], rise[c])) first[c] = before.FirstTrack[c];
        int[] lower = [.. channels.Select(c => atPins && tracks[c] > 0 ? Math.Max(0, height[c] - first[c] - rise[c] - (options.Track * (tracks[c] - 1)) - FromRow(c)) / 2 * 2 : 0)];
        return Stacked(above, below, height, first, lower);

        int FromRow(int channel) => channel == 0 ? 0 : Math.Min(2, (height[channel] - natural[channel]) / 4);
    }

    private Levels Stacked(int[] above, int[] below, int[] height, int[] first, int[] lower)
    {
        var centre = new int[above.Length];
        var top = new int[height.Length];
        int y = 0;
        for (int channel = 0; channel < height.Length; channel++)
        {
            top[channel] = y;
            y += height[channel];
            if (channel == height.Length - 1) break;
            centre[channel + 1] = y + above[channel + 1];
            y += above[channel + 1] + below[channel + 1];
        }
        return new([.. centre], [.. above], [.. below], [.. top], [.. height], [.. first], y) { Low = atPins ? LowPieces.Of(netlist, rows, blocks) : new HashSet<Piece>(), Lower = [.. lower], AtPins = atPins };
    }

    private int Tracks(int channel) =>
        blocks.SelectMany(b => b.Lattice.Pieces.Where(p => p.Channel == channel && p.Spans(b.X)).Select(p => b.Columns.Levels[p.Id] + p.Splits(b.X).Length + 1)).DefaultIfEmpty(0).Max();

    private int Least(int channel, int tracks, int hang, int rise) => tracks == 0 ? options.Channel
        : Math.Max(hang + rise + (options.Track * (tracks - 1)), options.Channel) + (channel == 0 && HasRail() ? 1 : 0);

    private bool HasRail() => netlist.Taps.Any(t => t.Kind == EndKind.Feed);

    // The text blocks of a row that lie over or under a horizontal of the channel keep it away.
    private int Clearance(int channel, int row, int[] half, bool hangs)
    {
        // Where things stood a name that finds no room asks for it by itself.
        double needed = hangs && before is null && blocks.Any(b => b.Lattice.Pieces.Any(p => p.Channel == channel && p.IsRail)) ? RailName : Strip;
        foreach (var (stand, left, right) in TextsOf(row))
        {
            bool crossed = blocks.Any(b => b.Lattice.Pieces.Any(p => p.Channel == channel && p.Spans(b.X) && (p.Seen & netlist.Stands[stand].Seen) != 0
                && Extents.Views.Any(v => (p.Seen & v) != 0 && p.Low(b.X, v) < right && left < p.High(b.X, v))));
            if (crossed) needed = Math.Max(needed, Reach(stand, half[row], hangs) + 0.6);
        }
        foreach (var (lead, left, right) in LeadsOf(row, rise: !hangs))
            if (blocks.Any(b => b.Lattice.Pieces.Any(p => p.Channel == channel && p.Spans(b.X) && (p.Seen & netlist.Lines[lead.Line].Seen) != 0 && p.Low(b.X, SeenIn.Both) < right && left < p.High(b.X, SeenIn.Both))))
                needed = Math.Max(needed, lead.Depth - half[row] + 0.6);
        return (int)Math.Ceiling(needed);
    }

    // How far a stand's text reaches beyond its row's bodies; the middle of a box may lie half a module beside the row's.
    private double Reach(int number, int half, bool hangs)
    {
        var stand = netlist.Stands[number];
        return stand.Boxes.Where(b => b.Box.HasText).Select(b =>
        {
            double rise = TextRise(b.Box.TextHeight, b.Box.Height);
            double middle = (stand.Turned ? stand.Height - b.Y - b.Box.Height : b.Y) + (b.Box.Height / 2.0) - (stand.Height / 2);
            return (hangs ? middle + b.Box.TextHeight - rise : rise - middle) - half;
        }).DefaultIfEmpty(0).Max();
    }

    // Two text blocks one below the other keep a module between them.
    private int TextUnderText(int channel, int[] above, int[] below)
    {
        double needed = 0;
        foreach (var (upper, left, right) in TextsOf(channel))
            foreach (var (lower, otherLeft, otherRight) in TextsOf(channel + 1))
                if ((netlist.Stands[upper].Seen & netlist.Stands[lower].Seen) != 0 && left < otherRight && otherLeft < right)
                    needed = Math.Max(needed, Reach(upper, below[channel], hangs: true) + Reach(lower, above[channel + 1], hangs: false) + 1);
        foreach (var (lead, left, right) in LeadsOf(channel, rise: false))
        {
            int reach = lead.Depth - below[channel] + 1;
            needed = Math.Max(needed, reach);
            foreach (var (lower, otherLeft, otherRight) in TextsOf(channel + 1))
                if ((netlist.Lines[lead.Line].Seen & netlist.Stands[lower].Seen) != 0 && left < otherRight && otherLeft < right)
                    needed = Math.Max(needed, reach + Reach(lower, above[channel + 1], hangs: false));
        }
        foreach (var (lead, left, right) in LeadsOf(channel + 1, rise: true))
        {
            int reach = lead.Depth - above[channel + 1] + 1;
            needed = Math.Max(needed, reach);
            foreach (var (upper, otherLeft, otherRight) in TextsOf(channel))
                if ((netlist.Lines[lead.Line].Seen & netlist.Stands[upper].Seen) != 0 && left < otherRight && otherLeft < right)
                    needed = Math.Max(needed, reach + Reach(upper, below[channel], hangs: true));
            foreach (var (hung, otherLeft, otherRight) in LeadsOf(channel, rise: false))
                if (left < otherRight && otherLeft < right) needed = Math.Max(needed, reach + hung.Depth - below[channel]);
        }
        foreach (var (upper, _, _) in TextsOf(channel)) needed = Math.Max(needed, Reach(upper, below[channel], hangs: true) + 1);
        return (int)Math.Ceiling(needed);
    }

    // The leads with signs of their own that hang below a row, or rise above it; those that hang below the last row end on the chassis line.
    private IEnumerable<(HungLead Lead, double Left, double Right)> LeadsOf(int row, bool rise) =>
        from lead in leads
        let stand = netlist.Terminals[lead.Terminal].Stand
        where lead.Rises == rise && rows.RowOf[stand] == row && (rise || row < rows.Rows)
        from block in blocks
        from seat in block.Lattice.Seats
        where seat.Stand == stand
        let x = block.X[seat.Id] + lead.Column
        select (lead, x - lead.Reach, x + lead.Reach);

    private IEnumerable<(int Stand, double Left, double Right)> TextsOf(int row) =>
        from block in blocks
        from seat in block.Lattice.Seats
        where seat.IsStand && seat.Row == row && netlist.Stands[seat.Stand].TextModules(SeenIn.Both) > 0
        let stand = netlist.Stands[seat.Stand]
        let x = block.X[seat.Id]
        let text = (double)stand.TextModules(SeenIn.Both)
        select block.Columns.TextLeft.Contains(seat.Stand) ? (seat.Stand, x - text, (double)x) : (seat.Stand, x + (double)stand.Width, x + stand.Width + text + 1);

    // All channels alike.
    private static void Stretch(int[] height, int more)
    {
        for (int round = 0; round < MostStretch; round++)
            for (int channel = 0; channel < height.Length && more > 0; channel++, more--) height[channel]++;
    }
}
