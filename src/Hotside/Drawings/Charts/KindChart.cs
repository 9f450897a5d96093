using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Drawings.Sheets;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;
using Hotside.Wording;

namespace Hotside.Drawings.Charts;

/// <summary>The symbol chart: all kinds by class on a framed sheet.</summary>
internal sealed class KindChart
{
    private const double HeadlineRoom = 44, HeadingRoom = 34, BetweenRows = 14, MostBetweenRows = 44, AboveTitleBlock = 16;

    private readonly Lettering lettering;
    private readonly ImmutableArray<(string Heading, ImmutableArray<KindCell> Cells)> classes;

    private KindChart(IEnumerable<PartKind> kinds, Vocabulary words, Lettering lettering)
    {
        this.lettering = lettering;
        var cells = kinds.ToLookup(PartClass.Of, k => KindCell.Of(k, words, lettering));
        classes = [.. PartClass.All.Where(cells.Contains).Select(c => ((c.Letter + "  " + c.Name).Trim(), cells[c].ToImmutableArray()))];
    }

    public static Scene Of(IEnumerable<PartKind> kinds, Words words, Lettering lettering) => new KindChart(kinds, Vocabulary.Of(words), lettering).Compose();

    private Scene Compose()
    {
        foreach (var size in SheetSize.Series)
            if (Rows(size) is var rows && rows.All(r => Fits(r, size)) && Height(rows, BetweenRows) <= Room(size)) return Draw(size, rows);
        // More than any paper holds: a sheet as wide as the widest cell needs, and as high as it must be.
        var widest = SheetSize.Series[^1];
        double missing = Math.Max(0, classes.SelectMany(c => c.Cells).Max(c => c.Columns * KindCell.Column) - new SheetFrame(widest).Inside.Width);
        var grown = new SheetSize("", widest.Width + Math.Ceiling(missing), widest.Height);
        return Draw(grown with { Height = grown.Height + Math.Ceiling(Math.Max(0, Height(Rows(grown), BetweenRows) - Room(grown))) }, Rows(grown));
    }

    private static int Columns(SheetSize size) => Math.Max(1, (int)(new SheetFrame(size).Inside.Width / KindCell.Column));

    private static bool Fits(ImmutableArray<ChartPlace> row, SheetSize size) => row.All(p => p.Column + p.Cell.Columns <= Columns(size));

    private static double Room(SheetSize size)
    {
        var frame = new SheetFrame(size);
        return frame.Frame.Bottom - TitleBlock.Height - AboveTitleBlock - frame.Inside.Top - HeadlineRoom;
    }

    private ImmutableArray<ImmutableArray<ChartPlace>> Rows(SheetSize size) =>
        ChartFlow.Rows(classes, Columns(size), heading => (int)Math.Ceiling((TextMeasure.Width(heading, lettering.Title) + 24) / KindCell.Column));

    private double Height(ImmutableArray<ImmutableArray<ChartPlace>> rows, double between) => rows.Sum(r => RowHeight(r) + between);

    private double RowHeight(ImmutableArray<ChartPlace> row) => Heading(row) + row.Max(p => p.Cell.Figure.Height) + row.Max(p => p.Cell.CaptionHeight(lettering));

    private static double Heading(ImmutableArray<ChartPlace> row) => row.Any(p => p.Heading is not null) ? HeadingRoom : 0;

    private Scene Draw(SheetSize size, ImmutableArray<ImmutableArray<ChartPlace>> rows)
    {
        var frame = new SheetFrame(size);
        var inside = frame.Inside;
        var groups = ImmutableArray.CreateBuilder<SceneGroup>();
        groups.Add(new(Layer.Frame, frame.Shapes(lettering)) { Classes = ["frame"], AriaHidden = true });
        groups.Add(new(Layer.Notes, Headline.Of("Symbols", "on the 2.5 mm module; hot pin above, chassis side below; contacts drawn at rest", inside.Width, lettering).At(inside.Left, inside.Top + 2)) { Classes = ["headline"] });
        groups.Add(new(Layer.Notes, TitleBlock.Of(Fields(size)).At(frame.Frame.Right - TitleBlock.Width, frame.Frame.Bottom - TitleBlock.Height)) { Id = "title-block", Classes = ["title-block"] });
        double spare = (Room(size) - Height(rows, 0)) / rows.Length, y = inside.Top + HeadlineRoom;
        foreach (var row in rows)
        {
            groups.AddRange(Row(row, inside.Left, Math.Round(y)));
            y += RowHeight(row) + Math.Min(MostBetweenRows, spare);
        }

        int kinds = classes.Sum(c => c.Cells.Length);
        string description = $"{Numbers.Whole(kinds)} kinds of parts with their terminals. " + string.Join(" ", classes.Select(c => $"{c.Heading.TrimStart()}: {string.Join(", ", c.Cells.Select(k => k.Kind.Id))}."));
        return new(size.Width, size.Height, "Symbol chart", description, groups.ToImmutable());
    }

    private IEnumerable<SceneGroup> Row(ImmutableArray<ChartPlace> row, double left, double y)
    {
        double top = y + Heading(row), room = row.Max(p => p.Cell.Figure.Height);
        foreach (var place in row)
        {
            double x = left + (place.Column * KindCell.Column);
            if (place.Heading is { } heading)
                yield return new(Layer.Notes, [TextShape.Of(heading, lettering.Title, x + 8, y + lettering.Title.CapHeight)]) { Classes = ["heading"] };
            yield return place.Cell.At(x, top, room, lettering);
        }
    }

    private Dictionary<string, string> Fields(SheetSize size) => new()
    {
        ["title"] = "Symbol chart",
        ["supplementary title"] = $"{Numbers.Whole(classes.Sum(c => c.Cells.Length))} kinds of parts",
        ["document type"] = "Symbol chart",
        ["paper size"] = size.Name,
        ["sheet"] = "1 / 1",
    };
}
