using System.Collections.Immutable;

namespace Hotside.Layouts.Passes;

/// <summary>
/// Alike tracks that hang on one net stand in the order of the file, so that the left lamp stands left of the right one. They change places with all
/// that belongs to each of them, if that costs no crossing and hardly any length.
/// </summary>
internal sealed class Twins
{
    private const double Longer = 16;

    private readonly StrandOrder order;
    private readonly TrunkLengths lengths;
    private readonly Strand[][] partsOf;
    private readonly int[] inFile;
    private readonly HashSet<int>[] near;
    private readonly (int First, int Second)[] pairs;

    private Twins(Lattice lattice, StrandOrder order, TrunkLengths lengths, ImmutableArray<Strand> tracks, Func<Seat, string> shapeOf)
    {
        (this.order, this.lengths) = (order, lengths);
        partsOf = [.. tracks.Select(t => t.Parts.Select(p => order.Strands[p]).OrderBy(Looks, StringComparer.Ordinal).ThenBy(s => s.Id).ToArray())];
        inFile = [.. tracks.Select(t => t.Seats.Select(s => lattice.Seats[s].Stand).Where(s => s >= 0).DefaultIfEmpty(int.MaxValue).Min())];
        int[] trackOf = new int[order.Length];
        foreach (var track in tracks)
            foreach (int part in track.Parts) trackOf[part] = track.Id;
        near = [.. tracks.Select(_ => new HashSet<int>())];
        foreach (int[] along in order.StrandsOfPiece.Select(s => s.Select(p => trackOf[p]).Distinct().ToArray()))
            foreach (int track in along) near[track].UnionWith(along);
        pairs =
        [
            .. from alike in tracks.Where(t => inFile[t.Id] < int.MaxValue).GroupBy(t => string.Join(';', partsOf[t.Id].Select(Looks)), StringComparer.Ordinal)
               from first in alike
               from second in alike
               where inFile[first.Id] < inFile[second.Id] && near[first.Id].Contains(second.Id)
               orderby inFile[first.Id], inFile[second.Id]
               select (first.Id, second.Id),
        ];

        string Looks(Strand strand) => string.Join(',', strand.Seats.Select(s => lattice.Seats[s]).OrderBy(s => s.Row).Select(s => $"{s.Row}{(s.IsStand ? shapeOf(s) : "")}{s.Seen}"));
    }

    /// <summary>Puts them into the order of the file where that costs nothing.</summary>
    public static void InFileOrder(Lattice lattice, StrandOrder order, TrunkLengths lengths, ImmutableArray<Strand> tracks, Func<Seat, string> shapeOf)
    {
        var twins = new Twins(lattice, order, lengths, tracks, shapeOf);
        foreach (var pair in twins.pairs)
            if (twins.IsReversed(pair)) twins.TryExchange(pair);
    }

    private bool IsReversed((int First, int Second) pair) => order.PlaceOf(partsOf[pair.First][0].Id) > order.PlaceOf(partsOf[pair.Second][0].Id);

    private void TryExchange((int First, int Second) pair)
    {
        var before = order.Save();
        double length = lengths.Total();
        int[] ids = [.. before.Ids];
        foreach (var (first, second) in WithCompany(pair))
            foreach (var (a, b) in partsOf[first].Zip(partsOf[second]))
                (ids[order.PlaceOf(a.Id)], ids[order.PlaceOf(b.Id)]) = (b.Id, a.Id);
        order.Rearrange(ids);
        if (order.Crossings > before.Crossings || lengths.Total() > length + Longer) order.Restore(before);
    }

    // The fuse of the left lamp goes with it.
    private List<(int First, int Second)> WithCompany((int First, int Second) pair)
    {
        List<(int First, int Second)> company = [pair];
        HashSet<int> used = [pair.First, pair.Second];
        for (int i = 0; i < company.Count; i++)
            foreach (var (first, second) in pairs.Where(IsReversed))
                if (!used.Contains(first) && !used.Contains(second) && near[company[i].First].Contains(first) && near[company[i].Second].Contains(second))
                {
                    used.UnionWith([first, second]);
                    company.Add((first, second));
                }
        return company;
    }
}
