using System.Collections.Immutable;
using Hotside.Drawings.Plans;
using Hotside.Drawings.Sheets;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;
using Hotside.Wording;

namespace Hotside.Drawings.Sets;

/// <summary>A sheet of text: pieces below each other, and what explains their signs.</summary>
internal sealed record TextSheet(DrawingPlan Plan, SheetRequest Request, SheetSize Size, ImmutableArray<(string Id, Piece Piece, double Y)> Pieces, ImmutableArray<LegendEntry> Legend)
{
    /// <summary>What it goes on with, where it is not the first: that one has the job's own words.</summary>
    public string? Subject { get; init; }

    /// <summary>The picture.</summary>
    public Scene Draw()
    {
        var frame = new SheetFrame(Size);
        var inside = frame.Inside;
        var (legend, top) = Furniture.LegendOf(Legend, frame, frame.Frame.Bottom - TitleBlock.Height, Plan.Lettering);
        string title = TitleRow.Value(Request.TitleBlock, "title"), number = TitleRow.Value(Request.TitleBlock, "sheet");
        return new(Size.Width, Size.Height, $"{title}, {number}", SheetText.Description(Plan.Alteration, Plan.Study, Request.Words),
        [
            .. Furniture.Frame(frame, Plan.Lettering, Request),
            .. Legend.IsEmpty ? [] : new[] { new SceneGroup(Layer.Notes, legend.At(inside.Left, top)) { Id = "legend", Classes = ["legend"] } },
            new(Layer.Notes, Headline.Of("Overview", SheetText.Supply(Plan.Alteration, Request.Words), inside.Width, Plan.Lettering).At(inside.Left, inside.Top + 2)) { Classes = ["headline"] },
            .. Pieces.Select(p => new SceneGroup(Layer.Notes, p.Piece.At(inside.Left, p.Y)) { Id = p.Id, Classes = [p.Id.Split(' ')[0]] }),
        ]);
    }
}

/// <summary>Cautions, the list of changes and the table of loads, on as many sheets as they need.</summary>
internal sealed class TextSheets
{
    private const double Gap = 14, MostGap = 80;

    // The index is no wider than it must be.
    private const int MostInColumn = 4;

    // From the calmest down to the closest.
    private static readonly double[] Airs = [8, 6, 4, 2, 0];

    private const string Changes = "changes", Loads = "loads";

    private readonly DrawingPlan plan;
    private readonly SheetRequest request;
    private readonly SheetSize size;
    private readonly Box room;
    private readonly SetIndex index;
    private readonly ImmutableArray<ListLine> lines;
    private readonly ImmutableArray<SwitchRow> rows;
    private readonly string? zone;
    private readonly List<TextSheet> sheets = [];
    private readonly List<(string Id, Piece Piece, double Y)> pieces = [];
    private Range listed, told;
    private string begins = "";
    private double y;
    private int most = int.MaxValue;
    private bool isTooMuch;

    private TextSheets(DrawingPlan plan, SheetRequest request, SheetSize size, ImmutableArray<ListLine> lines, ImmutableArray<SwitchRow> rows, SetIndex index)
    {
        (this.plan, this.request, this.size, this.lines, this.rows, this.index) = (plan, request, size, lines, rows, index);
        zone = rows.SelectMany(r => index.Load(r.Load).Split(' ')).FirstOrDefault(z => z.Length > 0);
        var frame = new SheetFrame(size);
        // No sheet has more signs than all together.
        double top = frame.Frame.Bottom - TitleBlock.Height, legend = Furniture.LegendOf(UsedOnSheet.InText(lines, rows, zone, plan, request.Words), frame, top, plan.Lettering).Top;
        room = frame.Inside with { Top = frame.Inside.Top + Furniture.HeadlineRoom(plan.Lettering), Bottom = Math.Min(top, legend) - Gap };
        y = room.Top;
    }

    /// <summary>The sheets.</summary>
    /// <param name="plan">What is drawn.</param>
    /// <param name="request">What is asked for.</param>
    /// <param name="size">The paper.</param>
    /// <param name="index">What it says of where things are.</param>
    public static ImmutableArray<TextSheet> Of(DrawingPlan plan, SheetRequest request, SheetSize size, SetIndex index)
    {
        ImmutableArray<ListLine> lines = [.. Furniture.Lines(plan, request.Words).Select(l => l with { Place = index.Change(l.Number.Text) })];
        var rows = SwitchRow.Of(plan.Study, request.Words);
        ImmutableArray<TextSheet>? At(DrawingPlan lettered, double air, int columns, int most) => new TextSheets(lettered, request, size, lines, rows, index) { most = most }.Filled(air, columns);
        var close = At(plan, 0, int.MaxValue, int.MaxValue)!.Value;
        // Letters a step larger and lines that stand apart, as far as that takes no more sheets; paper of their own says how large letters are.
        ImmutableArray<TextSheet>? Calm(DrawingPlan lettered, double air) => At(lettered, air, (index.Contents.Length + MostInColumn - 1) / MostInColumn, close.Length);
        var large = plan with { Lettering = Lettering.Large };
        var calmest = request.TextPaper is null && Calm(large, 0) is not null ? large : plan;
        return Airs.Select(air => Calm(calmest, air)).FirstOrDefault(s => s is not null) ?? close;
    }

    // Nothing where that takes more sheets than it may.
    private ImmutableArray<TextSheet>? Filled(double air, int columns)
    {
        double width = room.Width;
        var contents = index.Contents;
        Add("cautions", 1, _ => "Cautions", (_, _) => Furniture.Warnings(plan, width, request.Words));
        Add(Changes, lines.Length, i => $"Changes from {lines[i].Number.Text}", (from, count) => ChangeList.Of(SheetText.ListHead(plan.Alteration), [.. lines.Skip(from).Take(count)], width, plan.Lettering, air));
        Add("sheets", contents.Length, i => $"Sheets from {contents[i].Sheet}", (from, count) => ChangeList.Of("What stands on which sheet", [.. contents.Skip(from).Take(count).Select(c => new ListLine(new(c.Sheet, ColourRole.Ink), null, c.What))], width, plan.Lettering, air, columns));
        Add(Loads, rows.Length, i => $"Who switches what, from {rows[i].Load}", (from, count) => SwitchTable.Of([.. rows.Skip(from).Take(count)], index.Load, width, plan.Lettering, request.Words, "sheet", air));
        Close();
        return isTooMuch ? null : [.. sheets];
    }

    // As much of something as the sheet still holds, the rest on the next.
    private void Add(string id, int count, Func<int, string> subject, Func<int, int, Piece> of)
    {
        for (int from = 0; from < count && !isTooMuch;)
        {
            int fits = count - from;
            var piece = of(from, fits);
            double left = room.Bottom - y;
            isTooMuch = piece.Height > left && sheets.Count + 1 == most;
            if (isTooMuch) return;
            while (fits > 0 && piece.Height > left) piece = of(from, --fits);
            if (fits == 0 && pieces.Count > 0)
            {
                Close();
                continue;
            }
            // What is higher than a sheet by itself stands there all the same.
            if (fits == 0) piece = of(from, fits = 1);
            if (pieces.Count == 0) begins = subject(from);
            if (piece.Height > 0) pieces.Add((from == 0 ? id : $"{id} {from + 1}", piece, y));
            if (id == Changes) listed = from..(from + fits);
            if (id == Loads) told = from..(from + fits);
            y += piece.Height + Gap;
            from += fits;
        }
    }

    private void Close()
    {
        // What is left of the height is shared out between the pieces.
        double more = pieces.Count < 2 ? 0 : Math.Clamp((room.Bottom - y + Gap) / pieces.Count, 0, MostGap - Gap);
        if (pieces.Count > 0) sheets.Add(new(plan, request, size, [.. pieces.Select((p, i) => p with { Y = p.Y + (i * more) })], Legend()) { Subject = sheets.Count == 0 ? null : begins });
        pieces.Clear();
        (listed, told) = (default, default);
        y = room.Top;
    }

    private ImmutableArray<LegendEntry> Legend()
    {
        var shown = rows[told];
        return UsedOnSheet.InText(lines[listed], shown, shown.IsEmpty ? null : zone, plan, request.Words);
    }
}
