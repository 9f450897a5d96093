using Hotside.Drawings.Plans;

namespace Hotside.Drawings.Sets;

/// <summary>
/// Which blocks go onto which sheet: few sheets, few flags, none nearly empty beside full ones. Only what no sheet holds is cut. Sheets are in the order of the file.
/// </summary>
/// <param name="plan">The whole.</param>
/// <param name="fits">Whether a sheet holds a block.</param>
/// <param name="sizeOf">About how large a block is.</param>
/// <param name="evenness">What uneven halves count for, in lines cut.</param>
internal sealed class BlockPacking(DrawingPlan plan, Func<Block, bool> fits, Func<Block, int> sizeOf, double evenness)
{
    // To fill a sheet a block is cut where no more lines than these are.
    private const int FewCuts = 2;

    // So many times a block that does not fit is passed over, and a sheet that nothing more fits on is given up.
    private const int MostMisses = 5, MostRefusals = 3;

    private readonly Dictionary<string, bool> known = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> places = plan.Parts.Select((p, i) => (p.Box, i)).ToDictionary(p => p.Box, p => p.i, StringComparer.Ordinal);

    private readonly HashSet<string> sources = [.. plan.Parts.Where(p => (p.After ?? p.Before)?.Part.Kind.Elements.Any(e => e.IsSource) == true).Select(p => p.Box)];

    /// <summary>The blocks of the sheets; <see langword="null"/> where one that cannot be cut is too large.</summary>
    public List<Block>? Sheets()
    {
        if (Filled() is not { } sheets) return null;
        Merge(sheets);
        Recut(sheets);
        Merge(sheets);
        Even(sheets);
        return [.. sheets.OrderBy(PlaceOf)];
    }

    private bool HasSource(Block block) => block.Parts.Any(sources.Contains);

    private int PlaceOf(Block block) => block.Parts.Select(p => places.GetValueOrDefault(p)).DefaultIfEmpty(int.MaxValue).Min();

    // Sheet by sheet; a block that is too large for a sheet of its own is halved.
    private List<Block>? Filled()
    {
        // What gives current stands together, in front.
        List<Block> sheets = [], rest = [.. Block.Of(plan).OrderBy(b => HasSource(b) ? 0 : 1)];
        while (rest.Count > 0)
        {
            var sheet = Filled(rest);
            if (sheet != Block.Empty) sheets.Add(sheet);
            else if (rest[0].Halved(plan, evenness) is var (first, second))
            {
                rest[0] = first;
                rest.Insert(1, second);
            }
            else return null;
        }
        return sheets;
    }

    // As many blocks as a sheet holds, in the order of the file; what is then left of it takes half of the next one, where that must be cut anyway and costs few cuts, and later ones.
    private Block Filled(List<Block> rest)
    {
        var sheet = Block.Empty;
        int tries = 0;
        for (int i = 0; i < rest.Count && tries < MostMisses;)
        {
            if (Holds(sheet.And(rest[i])))
            {
                sheet = sheet.And(rest[i]);
                rest.RemoveAt(i);
            }
            else if (sheet == Block.Empty) break;
            else if (tries++ == 0 && !Holds(rest[i]) && rest[i].Halved(plan, evenness) is var (fitting, remaining) && fitting.Cuts.Length - rest[i].Cuts.Length <= FewCuts && Holds(sheet.And(fitting)))
            {
                sheet = sheet.And(fitting);
                rest[i++] = remaining;
            }
            else i++;
        }
        return sheet;
    }

    // What was set apart because the next was too large may go with a later piece of that.
    private void Merge(List<Block> sheets)
    {
        for (int i = 0; i < sheets.Count; i++)
            for (int later = sheets.Count - 1; later > i; later--)
                if (Holds(sheets[i].And(sheets[later])))
                {
                    sheets[i] = sheets[i].And(sheets[later]);
                    sheets.RemoveAt(later);
                }
    }

    // Halves of halves are not the best parts of the whole: two sheets between which lines are cut are put together and cut anew, as long as that takes fewer flags.
    private void Recut(List<Block> sheets)
    {
        for (bool isBetter = true; isBetter;)
        {
            isBetter = false;
            foreach (var (i, j) in Pairs(sheets.Count).Where(p => sheets[p.I].IsCutFrom(sheets[p.J])))
            {
                if (sheets[i].And(sheets[j]).Halved(plan, evenness) is not var (first, second) || FlagsOf(first, second) >= FlagsOf(sheets[i], sheets[j]) || !Holds(first) || !Holds(second)) continue;
                (sheets[i], sheets[j], isBetter) = (first, second, true);
            }
        }
    }

    private static IEnumerable<(int I, int J)> Pairs(int count) => Enumerable.Range(0, count).SelectMany(i => Enumerable.Range(i + 1, count - i - 1).Select(j => (i, j)));

    // What belongs to nothing else on a sheet goes over to one that is far emptier, where that takes no more flags.
    private void Even(List<Block> sheets)
    {
        var full = new HashSet<Block>();
        while (sheets.Where(s => !full.Contains(s)).MinBy(sizeOf) is { } least && sizeOf(least) < 0.8 * sheets.Average(sizeOf))
        {
            int refused = 0;
            bool isMoved = false;
            foreach (var (from, piece, rest) in Moves(sheets, least))
            {
                if (refused == MostRefusals) break;
                if (!Holds(least.And(piece)) || !Holds(rest))
                {
                    refused++;
                    continue;
                }
                sheets[sheets.IndexOf(from)] = rest;
                sheets[sheets.IndexOf(least)] = least.And(piece);
                isMoved = true;
                break;
            }
            if (!isMoved) full.Add(least);
        }
    }

    // The evener first; the sheet that takes must stay the smaller one. What gives current stays where it is.
    private IEnumerable<(Block From, Block Piece, Block Remainder)> Moves(List<Block> sheets, Block least)
    {
        int size = sizeOf(least);
        return from sheet in sheets
               where sheet != least
               let pieces = sheet.Pieces(plan)
               where pieces.Length > 1
               from piece in pieces
               where !HasSource(piece)
               let rest = pieces.Where(p => p != piece).Aggregate(Block.Empty, (all, p) => all.And(p))
               where size + sizeOf(piece) <= sizeOf(rest) && FlagsOf(least.And(piece), rest) <= FlagsOf(least, sheet)
               orderby Math.Abs(sizeOf(rest) - size - sizeOf(piece)), PlaceOf(piece)
               select (sheet, piece, rest);
    }

    // Cut lines, and rails that are on both.
    private int FlagsOf(Block a, Block b) => a.Cuts.Length + b.Cuts.Length + (2 * a.RailsOf(plan).Intersect(b.RailsOf(plan)).Count());

    private bool Holds(Block block)
    {
        string key = string.Join(' ', block.Parts.Order(StringComparer.Ordinal)) + '|' + string.Join(' ', block.Lines.Order(StringComparer.Ordinal));
        return known.TryGetValue(key, out bool held) ? held : known[key] = fits(block);
    }
}
