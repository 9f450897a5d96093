using System.Collections.Immutable;
using System.Globalization;
using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Wording;
using UnitsNet;

namespace Hotside.Packs.Lists;

/// <summary>Adds up what has to be bought.</summary>
internal static class MaterialList
{
    /// <summary>The lines, sort by sort.</summary>
    public static ImmutableArray<MaterialLine> Of(Alteration alteration, ImmutableArray<WireEntry> wires, Vocabulary words) =>
    [
        .. WiresOf(wires), .. TerminalsOf(wires), .. PartsOf(alteration, words), .. SundriesOf(alteration, wires),
    ];

    private static IEnumerable<MaterialLine> WiresOf(ImmutableArray<WireEntry> wires) =>
        CutLine.All(wires).GroupBy(c => (c.Size, c.SizeText, c.Colour)).Select(g => new MaterialLine(MaterialSort.Wire, WireName(g.Key.Size, g.Key.SizeText, g.Key.Colour))
        {
            Length = Lengths.Bought(Length.FromMeters(g.Sum(c => c.Cut?.Meters ?? 0))),
            For = [.. g.Select(c => c.Wire)], NotMeasured = [.. g.Where(c => c.Cut is null).Select(c => c.Wire)],
        });

    private static string WireName(WireSize? size, string sizeText, string colour) => string.Join(" ", new[] { size is { } known ? Lengths.Size(known) : sizeText, colour }.Where(t => t.Length > 0));

    private static IEnumerable<MaterialLine> TerminalsOf(ImmutableArray<WireEntry> wires)
    {
        var ends = wires.SelectMany(w => new[] { (w.New.From, w.Ends.From, w.Terminals.From, Wire: w), (w.New.To, w.Ends.To, w.Terminals.To, Wire: w) }).Where(e => e.Item1).ToArray();
        return ends.GroupBy(e => (Sort: e.Item3.Length > 0 ? e.Item3 : "terminal: look at the part", Size: e.Wire.Wire.Size, Text: e.Wire.Size))
            .OrderBy(g => g.Key.Sort.StartsWith("terminal:", StringComparison.Ordinal) ? 1 : 0).ThenBy(g => g.Key.Sort, StringComparer.Ordinal).ThenByDescending(g => g.Key.Size?.Area ?? 0)
            .Select(g => new MaterialLine(MaterialSort.Terminal, $"{Vocabulary.Capital(g.Key.Sort)}, {(g.Key.Size is { } size ? Lengths.Size(size) : g.Key.Text)}")
            {
                Count = g.Count(), For = [.. g.Select(e => e.Item2).Distinct()],
            });
    }

    private static IEnumerable<MaterialLine> PartsOf(Alteration alteration, Vocabulary words)
    {
        var bought = alteration.After.Parts.Where(p => alteration.StateOf(p.Id) is PartState.Fitted or PartState.Replaced or PartState.ReplacedReversed && !IsPoint(p.Kind))
            .GroupBy(p => (Sort: SortOf(p.Kind), Name: NameOf(p, words))).ToArray();
        // Spares for all fuses of the vehicle, for the old ones may be of ratings that are no longer on board.
        var ratings = alteration.After.Parts.Where(p => SortOf(p.Kind) == MaterialSort.Fuse).GroupBy(p => NameOf(p, words)).ToDictionary(g => g.Key, g => g.Count(), StringComparer.Ordinal);
        var fuses = bought.Where(g => g.Key.Sort == MaterialSort.Fuse).ToDictionary(g => g.Key.Name, g => g.ToArray(), StringComparer.Ordinal);
        foreach (string name in ratings.Keys.Order(NaturalOrder.Instance))
        {
            var own = fuses.GetValueOrDefault(name) ?? [];
            yield return new(MaterialSort.Fuse, name) { Count = own.Length, Spares = SparesOf(ratings[name]), For = [.. own.Select(p => p.Id)] };
        }
        foreach (var group in bought.Where(g => g.Key.Sort != MaterialSort.Fuse).OrderBy(g => g.Key.Sort))
            yield return new(group.Key.Sort, group.Key.Name) { Count = group.Count(), For = [.. group.Select(p => p.Id)] };
    }

    private static IEnumerable<MaterialLine> SundriesOf(Alteration alteration, ImmutableArray<WireEntry> wires)
    {
        int labels = 2 * wires.Count(w => w.IsThere);
        if (labels > 0) yield return new(MaterialSort.Sundry, "Wire labels or clear sleeve, one at each end: see Labels") { Count = labels };
        string[] held = [.. alteration.After.Parts.Where(p => alteration.StateOf(p.Id) == PartState.Fitted && SortOf(p.Kind) == MaterialSort.Fuse).Select(p => p.Id)];
        if (held.Length > 0) yield return new(MaterialSort.Sundry, "Fuse holders, or free ways in the block, for its fuse and wire size") { Count = held.Length, For = [.. held] };
        // The plus post is the thicker one (SAE J537, from memory).
        string[] turned = [.. alteration.After.Parts.Where(p => p.IsStandingSource && alteration.StateOf(p.Id) is PartState.ReplacedReversed or PartState.Reversed).Select(p => p.Id)];
        if (turned.Length > 0) yield return new(MaterialSort.Sundry, "Battery clamps, one for a plus and one for a minus post: the posts differ, so old clamps do not change places") { Count = 2 * turned.Length, For = [.. turned] };
        string[] opened = [.. alteration.Changes.SelectMany(c => c.Acts).OfType<TakeOut>().SelectMany(a => a.Items).Where(i => alteration.Before.FindConductor(i) is not null)];
        if (opened.Length > 0) yield return new(MaterialSort.Sundry, "Tags for wires that come off");
    }

    // One for three, two at least: common practice, no source.
    private static int SparesOf(int count) => Math.Max(2, (count + 2) / 3);

    // What is no thing of its own is part of what it belongs to.
    private static bool IsPoint(PartKind kind) => kind.IsSplice || kind.Id is "metal" or "elsewhere" or "chassis-point";

    private static MaterialSort SortOf(PartKind kind) =>
        kind.Elements.Length > 0 && kind.Elements.All(e => e.Type == ElementType.Fuse) && kind.Elements.Length == 1 ? MaterialSort.Fuse
        : kind.Elements.Length > 0 && kind.Elements.All(e => e.Type is ElementType.Lamp or ElementType.Diode) ? MaterialSort.Lamp : MaterialSort.Part;

    private static string NameOf(Part part, Vocabulary words)
    {
        string noun = Vocabulary.Capital(words.Noun(part.Kind)), ratings = string.Join(", ", QuantityWords.Of(part.Ratings));
        // An assembly is known by its own name.
        if (part.Kind.HoldsParts && part.Name is { } name) noun = $"{noun}: {name}";
        string options = string.Join(", ", part.Spec.Options.Order(StringComparer.Ordinal));
        return string.Join(", ", new[] { noun, ratings, options }.Where(t => t.Length > 0));
    }

    /// <summary>How many, in words of a list: <c>4 + 2 spare</c>, <c>2.4 m (7.9 ft)</c>.</summary>
    public static string Amount(MaterialLine line)
    {
        if (line.Length is { } length)
            return line.NotMeasured.IsEmpty ? Lengths.InBoth(length) : $"{(length > Length.Zero ? Lengths.InBoth(length) + " and " : "")}measure {string.Join(", ", line.NotMeasured)}";
        return line.Count is not { } count ? "" : line.Spares == 0 ? count.ToString(CultureInfo.InvariantCulture)
            : count == 0 ? $"{Numbers.Whole(line.Spares)} spare" : $"{Numbers.Whole(count)} + {Numbers.Whole(line.Spares)} spare";
    }
}
