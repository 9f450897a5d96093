using Hotside.Wording;
using System.Collections.Immutable;
using Hotside.Packs.Lists;
using Hotside.Packs.Papers;

namespace Hotside.Packs.Pages;

/// <summary>What is bought, and what is cut.</summary>
internal static class MaterialPage
{
    public const string Key = "materials";

    private static readonly (MaterialSort Sort, string Head)[] Sorts =
    [
        (MaterialSort.Wire, "Wire and cable"), (MaterialSort.Terminal, "Terminals"), (MaterialSort.Fuse, "Fuses"), (MaterialSort.Lamp, "Lamps"), (MaterialSort.Part, "Other parts"), (MaterialSort.Sundry, "Sundries"),
    ];

    public static Section? Of(PackSource source)
    {
        var lines = MaterialList.Of(source.Alteration, source.Wires, source.Words);
        if (!source.IsAltered || lines.IsEmpty) return null;
        var (width, lettering) = (source.WideWidth, source.Lettering);
        List<FlowPart> parts = [Bought(lines, width, lettering)];
        var cuts = CutLine.All(source.Wires);
        if (cuts.Length > 0)
        {
            parts.Add(Prose.Heading("Cut list", width, lettering));
            parts.Add(Cuts(cuts, source.Words, width, lettering));
            parts.Add(Prose.Paragraph("Cut: the run and 150 mm more at each end for service and error; a braid and a lead with ends of its own as they run. \"Measure\": the job file states no length; lay a string along the way. "
                + "Order: thick wire first, one color after the other, long pieces first.".Replace("color", source.Words.Color, StringComparison.Ordinal), lettering.Fine, width));
        }
        return new(Key, cuts.Length > 0 ? "Materials and cut list" : "Materials", [.. parts]) { IsLying = source.IsWideLying, Note = "Wire with 15 % for waste. Grommets, sleeve and clips: look at the vehicle." };
    }

    private static FlowPart Bought(ImmutableArray<MaterialLine> lines, double width, PackLettering lettering)
    {
        List<TableRow> rows = [];
        foreach (var (sort, head) in Sorts)
        {
            var own = lines.Where(l => l.Sort == sort).ToArray();
            if (own.Length == 0) continue;
            rows.Add(TableRow.Heading(head));
            rows.AddRange(own.Select(l => TableRow.Of(l.Name, MaterialList.Amount(l), string.Join(", ", l.For), Cell.Tick, Cell.Tick)));
        }
        return Table.Of([new("What") { Share = 1 }, new("How much") { IsBold = true }, new("For") { Share = 1 }, Column.Tick("Have"), Column.Tick("Bought")], rows, width, lettering);
    }

    private static FlowPart Cuts(ImmutableArray<CutLine> cuts, Vocabulary words, double width, PackLettering lettering) =>
        Table.Of(
            [Column.Tick(), new("Wire") { IsBold = true }, new("Size"), new(Vocabulary.Capital(words.Color)), new("Cut") { IsRight = true, IsBold = true }, new("Runs") { IsRight = true }, new("From"), new("Terminal") { Share = 1 }, new("To"), new("Terminal") { Share = 1 }, Column.Blank("Cut to", 16)],
            cuts.Select(c => TableRow.Of(Cell.Tick, c.Wire, c.SizeText, c.Colour, Lengths.Text(c.Cut), c.Length is { } run ? Lengths.Text(run) : "", c.From, c.TerminalFrom, c.To, c.TerminalTo, Cell.Empty)), width, lettering);
}
