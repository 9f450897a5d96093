using System.Collections.Immutable;

namespace Hotside.Layouts.Passes;

/// <summary>All that has been decided of rows and order.</summary>
/// <param name="Netlist">The nets, with the stands as they face.</param>
/// <param name="Rows">What stands in which row.</param>
/// <param name="Text">Room for the text blocks.</param>
/// <param name="Ordered">The blocks with their order.</param>
internal sealed record Arranged(Netlist Netlist, RowPlan Rows, ImmutableArray<TextRoom> Text, ImmutableArray<(Block Block, Lattice Lattice, SeatOrder Order)> Ordered)
{
    /// <summary>The conductors that run beside the nets they belong to.</summary>
    public ImmutableHashSet<int> Apart { get; init; } = [];

    /// <summary>The blocks with the order that they had before any part was turned.</summary>
    public ImmutableArray<(Block Block, Lattice Lattice, SeatOrder Order)> Found { get; private init; } = [];

    /// <summary>From nets to rows and order; from what an earlier layout remembers, whatever need not change.</summary>
    /// <param name="union">Both circuits.</param>
    /// <param name="heights">Which end of a conductor is up.</param>
    /// <param name="memory">What an earlier layout remembers.</param>
    /// <param name="input">What is laid out.</param>
    /// <param name="like">The same circuits arranged otherwise: where their rows are the same, so is what was found for them.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <param name="kept">Old places that stay on the trunks they belong to, by number.</param>
    public static Arranged Of(Union union, Heights heights, LayoutMemory? memory, LayoutInput input, Arranged? like, CancellationToken cancel, ImmutableHashSet<int>? kept = null)
    {
        ImmutableHashSet<int> apart = memory is null ? Passers.OfRails(union).Union(OldPlaces.Of(input).Except(kept ?? [])) : [.. union.Lines.Where(l => memory.Apart.Contains(l.Name)).Select(l => l.Id)];
        var netlist = Nets.Of(union, heights, apart, OwnSigns.Hung(union, input));
        // Which conductors are one net is told by each circuit; what must keep clear of each other, by what is shown together.
        if (input.IsOverlaid) netlist = netlist.Overlaid();
        if (memory is not null) netlist = Facings.AsBefore(netlist, memory);
        var known = memory is null ? null : new Recollection(memory, netlist);
        var rows = Passes.Rows.Of(netlist, Directions.Of(netlist, heights, known), known, input.HangsHigh);
        if (like is not null && !rows.IsAs(like.Rows)) like = null;
        if (like is not null && (!like.IsTurned || netlist.Stands.Any(Facings.IsAble))) return like;
        var text = Texts(netlist, rows);
        var pins = SidePins.Of(netlist, rows);
        // Blocks that were set side by side once stay so: all columns are solved together then.
        var blocks = known is null ? Blocks.Of(netlist) : Blocks.Undivided(netlist);
        ImmutableArray<(Block Block, Lattice Lattice, SeatOrder Order)> found = like is not null ? like.Found : [.. blocks.Select(b => Ordering(b, Layering.Of(netlist, rows, pins, b)))];
        var faced = netlist;
        var ordered = found;
        for (int i = 0; i < found.Length && known is null; i++)
        {
            var (block, lattice, order) = found[i];
            if (Facings.Of(netlist, text, block, lattice, order) is not { Facing.Count: > 0 } turned) continue;
            foreach (var (stand, facing) in turned.Facing) faced = Facings.Faced(faced, stand, facing);
            ordered = ordered.SetItem(i, (block, Layering.Of(faced, rows, SidePins.Of(faced, rows), block), turned.Order));
        }
        return new(faced, rows, text, ordered) { Apart = apart, Found = found };

        (Block, Lattice, SeatOrder) Ordering(Block block, Lattice lattice)
        {
            cancel.ThrowIfCancellationRequested();
            return (block, lattice, known is null ? Tracks.Of(lattice, netlist, text) : Tracks.AsBefore(lattice, known));
        }
    }

    private bool IsTurned => Netlist.Stands.Any(s => s.Facing != Facing.AsGiven);

    // Alike parts that hang on one net in one row get one width of text, so that they stand at one pitch.
    private static ImmutableArray<TextRoom> Texts(Netlist netlist, RowPlan rows)
    {
        TextRoom[] text = [.. netlist.Stands.Select(s => new TextRoom(s.TextModules(Symbols.SeenIn.Before), s.TextModules(Symbols.SeenIn.After)))];
        foreach (var net in netlist.Nets)
            foreach (var twins in net.Taps.Select(t => netlist.StandOf(netlist.Taps[t])).Where(s => s >= 0 && netlist.Stands[s].Shape.Length > 0).Distinct()
                .GroupBy(s => (netlist.Stands[s].Shape, rows.RowOf[s])).Where(g => g.Count() > 1))
            {
                var widest = new TextRoom(twins.Max(s => text[s].Before), twins.Max(s => text[s].After));
                foreach (int stand in twins) text[stand] = widest;
            }
        return [.. text];
    }
}
