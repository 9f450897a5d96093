using Hotside.Packs.Lists;
using Hotside.Packs.Papers;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;
using Hotside.Wording;

namespace Hotside.Packs.Pages;

/// <summary>The fuse chart, and a copy of it for the lid.</summary>
internal static class FusePage
{
    public const string Key = "fuses";

    // A lid has no room for more.
    private const int MostInLid = 24, MostInColumn = 8;

    public static Section? Of(PackSource source)
    {
        if (source.Fuses.IsEmpty) return null;
        var (width, lettering) = (source.Width, source.Lettering);
        bool arePlaced = source.Fuses.Any(f => f.Position.Length > 0), areColoured = source.Fuses.Any(f => f.Colour.Length > 0);
        Column[] columns =
        [
            new("Fuse") { IsBold = true }, .. arePlaced ? [new Column("Where") { Share = 1 }] : Array.Empty<Column>(), new("Rating") { IsRight = true, IsBold = true },
            .. areColoured ? [new Column("If a blade")] : Array.Empty<Column>(), new("Serves") { Share = 1 }, new("Dead without it") { Share = 2, Weight = 2 }, new("Thinnest wire it guards"), Column.Blank("Owner's words", 26),
        ];
        var rows = source.Fuses.Select(f => TableRow.Of(
        [
            f.Name, .. arePlaced ? [new Cell(f.Position)] : Array.Empty<Cell>(), f.Rating, .. areColoured ? [new Cell(f.Colour)] : Array.Empty<Cell>(), f.Title, f.DeadText, f.Guards, Cell.Empty,
        ]));
        return new(Key, "Fuse chart",
        [
            Table.Of([.. columns], rows, width, lettering),
            Prose.Paragraph("A fuse is replaced by one of its own rating, after the reason has been found: a larger one turns the wire into the fuse. Blade colors after SAE J1284 and ISO 8820-3; glass fuses have none, read the cap.".Replace("colors", source.Words.Color + "s", StringComparison.Ordinal), lettering.Fine, width),
            new([.. source.Fuses.Chunk(MostInLid).Select(fuses => Lid(fuses, source))]) { After = 8, IsWhole = source.Fuses.Length <= MostInLid },
        ]) { Note = SheetText.System(source.Alteration.After.System, source.Words) };
    }

    // As narrow as a lid, in two columns where there are many; cut out along its edge.
    private static Piece Lid(FuseEntry[] fuses, PackSource source)
    {
        var lettering = source.Lettering;
        int columns = fuses.Length > MostInColumn ? 2 : 1, rows = (fuses.Length + columns - 1) / columns;
        double width = Math.Min(source.Width, (columns == 1 ? 400 : 600) * lettering.Factor);
        string system = SheetText.System(source.Alteration.After.System, source.Words).ToUpperInvariant();
        Cell[] CellsOf(int i) => i < fuses.Length ? [fuses[i].Name, fuses[i].Rating, fuses[i].Title.Length > 0 ? fuses[i].Title : string.Join(", ", fuses[i].Dead)] : [Cell.Empty, Cell.Empty, Cell.Empty];
        Column[] each = [new("") { IsBold = true }, new("") { IsRight = true, IsBold = true }, new("") { Share = 1 }];
        var table = Table.Of([.. each, .. columns == 2 ? each : []], Enumerable.Range(0, rows).Select(r => TableRow.Of([.. CellsOf(r), .. columns == 2 ? CellsOf(rows + r) : []])), width - 24, lettering);
        var inside = Prose.Stack(
        [
            Prose.Lines("FUSES · " + system, lettering.TextBold, width - 24, 0), Prose.Lines(source.Job.Title, lettering.Fine, width - 24, 0), table.Head, .. table.Rows,
            Prose.Lines("Only the same rating. Find the reason first.", lettering.Fine, width - 24, 3),
        ]);
        TextStyle style = lettering.Fine;
        return new(width, inside.Height + 30 + style.Pitch,
        [
            TextShape.Of("Copy for the lid: cut out along the dashes.", style, 0, style.CapHeight),
            new RectangleShape(new(0, style.Pitch, width, style.Pitch + inside.Height + 18), 0, new(StrokeRank.Thin, ColourRole.Ink, new Dash(5, 4)), ColourRole.None),
            .. inside.At(12, style.Pitch + 8),
        ]);
    }
}
