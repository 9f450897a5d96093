using Hotside.Symbols;

namespace Hotside.Layouts.Passes;

/// <summary>
/// How long the trunks of an order will be, judged by the width of what stands between their ends. At equal crossings shorter trunks are calmer:
/// a strand is carried to where crossings and lengths together are least.
/// </summary>
internal sealed class TrunkLengths
{
    // A crossing is dearer than any trunk that it could shorten by as many modules.
    private const double Crossing = 100, Least = 1e-6;

    // Part of a strand's width is taken twice, since the rows overlap.
    private const double Share = 0.7;
    private const int Rounds = 4;

    private readonly StrandOrder order;
    private readonly double[] width, x;
    private readonly int[][] piecesOf;
    private readonly int[][] strandsOf;
    private readonly int[] weight, stamp;
    private int tick;

    public TrunkLengths(Lattice lattice, StrandOrder order, Func<Seat, int> widthOf)
    {
        this.order = order;
        width = [.. order.Strands.Select(s => Math.Max(2, Share * s.Seats.Max(i => widthOf(lattice.Seats[i]))))];
        x = new double[order.Length];
        strandsOf = [.. order.StrandsOfPiece.Select(s => s.ToArray())];
        weight = [.. lattice.Pieces.Select(p => p.Seen == SeenIn.Both ? 2 : 1)];
        stamp = new int[lattice.Pieces.Length];
        var pieces = order.Strands.Select(_ => new List<int>()).ToArray();
        foreach (var piece in lattice.Pieces.Where(p => strandsOf[p.Id].Length > 1))
            foreach (int strand in strandsOf[piece.Id]) pieces[strand].Add(piece.Id);
        piecesOf = [.. pieces.Select(p => p.ToArray())];
    }

    /// <summary>The sum of all trunks, in modules of both views.</summary>
    public double Total()
    {
        Measure();
        double total = 0;
        for (int piece = 0; piece < strandsOf.Length; piece++) total += Of(piece);
        return total;
    }

    /// <summary>Sifts all strands by crossings and lengths.</summary>
    public void Tidy() => Tidy(order.Current(), Rounds);

    /// <summary>Sifts some strands by crossings and lengths.</summary>
    public void Tidy(int[] strands, int rounds)
    {
        Measure();
        for (int round = 0; round < rounds; round++)
        {
            double gain = 0;
            for (int i = 0; i < strands.Length; i++) gain += Sift(strands[round % 2 == 0 ? i : strands.Length - 1 - i]);
            if (gain > -0.5) break;
        }
    }

    private void Measure()
    {
        double at = 0;
        for (int i = 0; i < order.Length; i++)
        {
            x[order.At(i)] = at;
            at += width[order.At(i)];
        }
    }

    private double Sift(int strand)
    {
        int home = order.PlaceOf(strand), best = home;
        double change = 0, least = -Least;
        for (int i = home; i < order.Length - 1; i++)
            if ((change += Exchange(i)) < least) (least, best) = (change, i + 1);
        for (int i = order.Length - 1; i > 0; i--)
            if ((change += Exchange(i - 1)) < least && i - 1 < home) (least, best) = (change, i - 1);
        for (int i = 0; i < best; i++) Exchange(i);
        return least < -Least ? least : 0;
    }

    private double Exchange(int at)
    {
        int left = order.At(at), right = order.At(at + 1);
        double before = Around(left, right);
        int crossings = order.Exchange(at);
        x[left] += width[right];
        x[right] -= width[left];
        return (Crossing * crossings) + Around(left, right) - before;
    }

    private double Around(int left, int right)
    {
        tick++;
        double sum = 0;
        foreach (int piece in piecesOf[left])
        {
            stamp[piece] = tick;
            sum += Of(piece);
        }
        foreach (int piece in piecesOf[right])
            if (stamp[piece] != tick) sum += Of(piece);
        return sum;
    }

    private double Of(int piece)
    {
        double low = double.MaxValue, high = double.MinValue;
        foreach (int strand in strandsOf[piece])
        {
            low = Math.Min(low, x[strand]);
            high = Math.Max(high, x[strand]);
        }
        return high > low ? (high - low) * weight[piece] : 0;
    }
}
