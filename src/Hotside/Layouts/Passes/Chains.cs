using Hotside.Symbols;

namespace Hotside.Layouts.Passes;

/// <summary>
/// Conductors that run on from one part to the next of its kind hang on one trunk as a daisy chain: its branches stand in the order of the chain, so that each stretch of the trunk is the one
/// conductor whose label it bears. Of other trunks, too, no stretch should be of conductors that share no pin. A branch changes its place with all that hangs on it, if that costs no crossing
/// and hardly any length.
/// </summary>
internal sealed class Chains
{
    private const double Longer = 16;

    /// <summary>A conductor between two branches, as strands.</summary>
    /// <param name="InChain">Between alike parts on one side of the trunk: on the other stands what feeds it.</param>
    private readonly record struct Link((int Tap, int Strand) A, (int Tap, int Strand) B, SeenIn Seen, bool InChain);

    private readonly Lattice lattice;
    private readonly Netlist netlist;
    private readonly StrandOrder order;
    private readonly TrunkLengths lengths;
    private readonly Dictionary<int, int> strandOfTap;

    private Chains(Lattice lattice, Netlist netlist, StrandOrder order, TrunkLengths lengths)
    {
        (this.lattice, this.netlist, this.order, this.lengths) = (lattice, netlist, order, lengths);
        strandOfTap = lattice.Ways.ToDictionary(w => w.Tap, w => order.StrandOf[w.Steps.IsEmpty ? w.Seat : w.Steps[^1].Seat]);
    }

    /// <summary>Puts the branches of each trunk into the order of its conductors where that costs nothing.</summary>
    public static void InOrder(Lattice lattice, Netlist netlist, StrandOrder order, TrunkLengths lengths)
    {
        var chains = new Chains(lattice, netlist, order, lengths);
        foreach (var trunk in lattice.Pieces.Where(p => p.IsTrunk && p.Tops.Length + p.Bottoms.Length > 3)) chains.Sort(trunk);
    }

    private void Sort(Piece trunk)
    {
        var tapOf = trunk.Net.Taps.SelectMany(t => netlist.Taps[t].Ends.Select(e => (e, t))).ToDictionary(p => p.e, p => p.t);
        var atTop = trunk.Tops.Select(e => order.StrandOf[e.Seat]).ToHashSet();
        Link[] links =
        [
            .. from line in trunk.Net.Lines
               where tapOf.ContainsKey(new(line, true)) && tapOf.ContainsKey(new(line, false))
               let a = tapOf[new(line, true)]
               let b = tapOf[new(line, false)]
               where strandOfTap[a] != strandOfTap[b]
               let inChain = atTop.Contains(strandOfTap[a]) == atTop.Contains(strandOfTap[b]) && ShapeOf(a) is { Length: > 0 } shape && shape == ShapeOf(b)
               select new Link((a, strandOfTap[a]), (b, strandOfTap[b]), netlist.Lines[line].Seen, inChain),
        ];
        if (links.Length < 2 || Detours(links, Places(order.Current())) == 0) return;
        int[] group = Groups(trunk);
        int[] branches = [.. links.SelectMany(Strands).Select(s => group[s]).Distinct()];
        if (branches.Length < 2) return;
        for (bool better = true; better && Detours(links, Places(order.Current())) > 0;)
        {
            better = false;
            foreach (int moved in branches)
                foreach (int beside in branches.Where(b => b != moved))
                    better |= Try(moved, beside, true, group, links) || Try(moved, beside, false, group, links);
        }
    }

    private string ShapeOf(int tap) => netlist.StandOf(netlist.Taps[tap]) is >= 0 and var stand ? netlist.Stands[stand].Shape : "";

    // How many branches the conductors of a chain pass that they do not end at, and how many stretches are of conductors that share no pin.
    private static int Detours(Link[] links, int[] places)
    {
        int detours = 0;
        foreach (var view in Extents.Views)
        {
            Link[] shown = [.. links.Where(l => (l.Seen & view) != 0)], chain = [.. shown.Where(l => l.InChain)];
            int[] along = [.. shown.SelectMany(Strands).Distinct().OrderBy(s => places[s])];
            // What feeds a chain comes to its own link of it, and past no other.
            var members = chain.SelectMany(Strands).ToHashSet();
            foreach (var link in shown.Where(l => l.InChain || members.Contains(l.A.Strand) || members.Contains(l.B.Strand)))
                detours += Between(along, link).Count(s => link.InChain || members.Contains(s));
            detours += shown.SelectMany(Strands).Distinct().Count(s => IsMixed([.. shown.Where(l => IsOver(l, places[s], places))]));
        }
        return detours;
    }

    private static IEnumerable<int> Between(int[] along, Link link)
    {
        int a = Array.IndexOf(along, link.A.Strand), b = Array.IndexOf(along, link.B.Strand);
        return along[(Math.Min(a, b) + 1)..Math.Max(a, b)];
    }

    // Whether it lies on the stretch that begins at a place.
    private static bool IsOver(Link link, int place, int[] places) =>
        Math.Min(places[link.A.Strand], places[link.B.Strand]) <= place && place < Math.Max(places[link.A.Strand], places[link.B.Strand]);

    private static int[] Places(IReadOnlyList<int> ids)
    {
        var places = new int[ids.Count];
        for (int i = 0; i < places.Length; i++) places[ids[i]] = i;
        return places;
    }

    private static bool IsMixed(Link[] links) => links.Length > 1 && !new[] { links[0].A.Tap, links[0].B.Tap }.Any(t => links.All(l => l.A.Tap == t || l.B.Tap == t));

    private static int[] Strands(Link link) => [link.A.Strand, link.B.Strand];

    private bool Try(int moved, int beside, bool isAfter, int[] group, Link[] links)
    {
        int[] stood = order.Current();
        var ids = stood.Where(s => group[s] != moved).ToList();
        int at = isAfter ? ids.FindLastIndex(s => group[s] == beside) + 1 : ids.FindIndex(s => group[s] == beside);
        ids.InsertRange(at, stood.Where(s => group[s] == moved));
        // What tells no more needs no counting.
        if (Detours(links, Places(ids)) >= Detours(links, Places(stood))) return false;
        var before = order.Save();
        double length = lengths.Total();
        order.Rearrange([.. ids]);
        if (order.Crossings <= before.Crossings && lengths.Total() <= length + Longer) return true;
        order.Restore(before);
        return false;
    }

    // What hangs together once the trunk is taken away.
    private int[] Groups(Piece trunk)
    {
        var sets = new DisjointSets(order.Length);
        foreach (var piece in lattice.Pieces.Where(p => p.Id != trunk.Id))
        {
            int[] along = [.. order.StrandsOfPiece[piece.Id]];
            for (int i = 1; i < along.Length; i++) sets.Join(along[0], along[i]);
        }
        return [.. Enumerable.Range(0, order.Length).Select(sets.Find)];
    }
}
