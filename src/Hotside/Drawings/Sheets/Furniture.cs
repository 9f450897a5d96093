using System.Collections.Immutable;
using Hotside.Drawings.Marks;
using Hotside.Drawings.Pictures;
using Hotside.Drawings.Plans;
using Hotside.Symbols;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;
using Hotside.Wording;

namespace Hotside.Drawings.Sheets;

/// <summary>Everything on the sheet but the circuits, and the room that it leaves them.</summary>
/// <param name="Size">The paper.</param>
/// <param name="HeadTop">Where the headlines begin.</param>
/// <param name="Room">The room for the circuits.</param>
/// <param name="Groups">Frame, title block, legend, cautions, change list.</param>
internal sealed record Furniture(SheetSize Size, double HeadTop, Box Room, ImmutableArray<SceneGroup> Groups)
{
    // What a headline takes above its view, at normal lettering.
    private const double Headroom = 34;

    private const double Gap = 9, AboveHeadline = 2, Margin = 40;

    // A legend that would be crowded beside the title block stands above it where that takes no more of the paper's height.
    private const double LittleOfPaper = 0.04;

    /// <summary>Whether the legend takes room from the circuits.</summary>
    public bool HasHighLegend { get; private init; }

    /// <summary>What a headline takes above its view.</summary>
    public static double HeadlineRoom(Lettering lettering) => Headroom * lettering.Factor;

    /// <summary>Where a load is, while that is not known.</summary>
    private const string AnyZone = "M88";

    /// <summary>All of it.</summary>
    /// <param name="plan">What is drawn.</param>
    /// <param name="request">What is asked of the sheet.</param>
    /// <param name="size">The paper.</param>
    /// <param name="where">In which zone a load is; <see langword="null"/> while that is not known.</param>
    /// <param name="joints">What is seen of joints; <see langword="null"/> while that is not known.</param>
    public static Furniture Of(DrawingPlan plan, SheetRequest request, SheetSize size, Func<string, string>? where = null, ShownJoints? joints = null)
    {
        if (request.IsBare) return Bare(plan, request, size, joints);
        var (views, fields, words) = request;
        double headroom = HeadlineRoom(plan.Lettering);
        var frame = new SheetFrame(size);
        var inside = frame.Inside;
        var groups = ImmutableArray.CreateBuilder<SceneGroup>();
        groups.AddRange(Frame(frame, plan.Lettering, request));
        double y = frame.Frame.Bottom - TitleBlock.Height;
        var (legend, legendTop) = LegendOf(UsedOnSheet.Entries(plan, views, words, joints: joints), frame, y, plan.Lettering);
        groups.Add(new(Layer.Notes, legend.At(inside.Left, legendTop)) { Id = "legend", Classes = ["legend"] });
        bool isHigh = legendTop < y;
        y = Math.Min(y, legendTop) - Gap;
        foreach (var (piece, id) in request.IsInSet ? [] : new[] { (Warnings(plan, inside.Width, words), "cautions"), (List(plan, inside.Width, words), "changes"), (Table(plan, inside.Width, words, where), "loads") })
        {
            if (piece.Height == 0) continue;
            y -= piece.Height;
            groups.Add(new(Layer.Notes, piece.At(inside.Left, y)) { Id = id, Classes = [id] });
            y -= Gap;
        }
        var note = views[0] == SeenIn.Both ? OverlayNote(plan, inside.Width, words) : Piece.Empty;
        if (note.Height > 0) groups.Add(new(Layer.Notes, note.At(inside.Left, inside.Top + headroom - 4)) { Id = "note", Classes = ["note"] });
        double top = inside.Top + headroom + (note.Height > 0 ? note.Height + 6 : 0);
        return new(size, inside.Top + AboveHeadline, new(inside.Left, top, inside.Right, y), groups.ToImmutable()) { HasHighLegend = isHigh };
    }

    // Margins, a legend below the circuits, and a caption below that.
    private static Furniture Bare(DrawingPlan plan, SheetRequest request, SheetSize size, ShownJoints? joints)
    {
        Box inside = new(Margin, Margin, size.Width - Margin, size.Height - Margin);
        var caption = new TextRows(false);
        foreach (string line in TextLines.Break(TitleRow.Value(request.TitleBlock, "title"), plan.Lettering.Body, inside.Width, 3)) caption.Text(line, plan.Lettering.Body, ColourRole.Ink, null);
        var groups = ImmutableArray.CreateBuilder<SceneGroup>();
        double y = inside.Bottom + Gap;
        foreach (var (piece, id) in new[] { (caption.Done(), "caption"), (Legend.Of(UsedOnSheet.Entries(plan, request.Views, request.Words, hasList: false, joints), inside.Width, 1, plan.Lettering), "legend") })
        {
            if (piece.Height == 0) continue;
            y -= piece.Height + Gap;
            groups.Add(new(Layer.Notes, piece.At(inside.Left, y)) { Id = id, Classes = [id] });
        }
        return new(size, inside.Top, inside with { Top = inside.Top + HeadlineRoom(plan.Lettering), Bottom = y - Gap }, groups.ToImmutable());
    }

    /// <summary>Frame and title block.</summary>
    public static IEnumerable<SceneGroup> Frame(SheetFrame frame, Lettering lettering, SheetRequest request)
    {
        // Lines and letters by themselves: what all shapes of a group share is written once.
        foreach (var shapes in frame.Shapes(lettering).GroupBy(s => s is TextShape)) yield return new(Layer.Frame, [.. shapes]) { Classes = ["frame"], AriaHidden = true };
        var block = TitleBlock.Of(new Dictionary<string, string>(request.TitleBlock) { ["paper size"] = frame.Size.Name, ["sheet"] = request.TitleBlock.GetValueOrDefault("sheet", request.SheetText(0, 1)) }, request.InSet);
        yield return new(Layer.Notes, block.At(frame.Frame.Right - TitleBlock.Width, frame.Frame.Bottom - TitleBlock.Height)) { Id = "title-block", Classes = ["title-block"] };
    }

    /// <summary>The headline of a view.</summary>
    public SceneGroup Head(DrawingPlan plan, SeenIn view, Box room, Vocabulary words)
    {
        if (view == SeenIn.Both) return Head("Overlay", SheetText.Supply(plan.Alteration, words), room, HeadTop, plan);
        var circuit = view == SeenIn.Before ? plan.Alteration.Before : plan.Alteration.After;
        string text = plan.Alteration.Whole.Changes.IsEmpty ? "As it is" : view == SeenIn.Before ? "Before" : "After";
        string note = plan.Parts.Any(p => p.In(view) is not null) ? "" : view == SeenIn.Before ? "; nothing of this is there yet" : "; nothing of this is left";
        if (plan.Figures is { } figures) note += figures.Note(view == SeenIn.Before, words);
        return Head(text, SheetText.System(circuit.System, words) + note, room, room.Top - HeadlineRoom(plan.Lettering) + AboveHeadline, plan);
    }

    /// <summary>The line between two views.</summary>
    public SceneGroup Divider(ViewRooms rooms)
    {
        var (x1, y1, x2, y2) = rooms.Divider(HeadTop + 2);
        return new(Layer.Frame, [Headline.Divider(x1, y1, x2, y2)]) { Classes = ["divider"], AriaHidden = true };
    }

    private static SceneGroup Head(string text, string note, Box room, double top, DrawingPlan plan) =>
        new(Layer.Notes, Headline.Of(text, note, room.Width, plan.Lettering).At(room.Left, top)) { Classes = ["headline"] };

    /// <summary>The legend and where it stands: left of the title block; where a narrow sheet leaves it no room there, across the sheet above it.</summary>
    public static (Piece Legend, double Top) LegendOf(ImmutableArray<LegendEntry> entries, SheetFrame frame, double blockTop, Lettering lettering)
    {
        double room = frame.Frame.Right - TitleBlock.Width - frame.Inside.Left - Gap;
        var beside = Legend.Of(entries, room, TitleBlock.Height, lettering);
        var above = Legend.Of(entries, frame.Inside.Width, 1, lettering);
        bool isBetterAbove = Legend.IsCrowded(entries, room, TitleBlock.Height, lettering) && above.Height < LittleOfPaper * frame.Frame.Height;
        if (beside.Width <= room && beside.Height <= TitleBlock.Height && !isBetterAbove) return (beside, Math.Min(blockTop + 2, frame.Frame.Bottom - beside.Height - 2));
        return (above, blockTop - above.Height - (Gap / 2));
    }

    private static Piece OverlayNote(DrawingPlan plan, double width, Vocabulary words)
    {
        var rows = new TextRows(false);
        foreach (string line in TextLines.Break(SheetText.OverlayNote(plan.Alteration, IsShown(LineStyle.TakenOut) || plan.Parts.Any(p => p.Overlay is { Look: PartStyle.TakenOut }), IsShown(LineStyle.WhereItLay), words), plan.Lettering.Small, width, 3)) rows.Text(line, plan.Lettering.Small, ColourRole.Ink, null);
        return rows.Done();

        bool IsShown(LineStyle style) => plan.Lines.Any(l => l.Overlay is { } shown && shown.State == style);
    }

    private static Piece List(DrawingPlan plan, double width, Vocabulary words) => ChangeList.Of(SheetText.ListHead(plan.Alteration), Lines(plan, words), width, plan.Lettering);

    /// <summary>The lines of the change list.</summary>
    public static ImmutableArray<ListLine> Lines(DrawingPlan plan, Vocabulary words) =>
        [.. plan.Alteration.Changes.Select(c => new ListLine(ChangeLook.NumberOf(c, plan.Alteration), ChangeLook.LineOf(c), ChangeText.Of(c, plan.Alteration.Whole, words)) { Part = ChangeLook.PartOf(c) })];

    private static Piece Table(DrawingPlan plan, double width, Vocabulary words, Func<string, string>? where) =>
        !plan.Style.HasSwitchTable ? Piece.Empty : SwitchTable.Of(SwitchRow.Of(plan.Study, words), where ?? (_ => AnyZone), width, plan.Lettering, words, "zone");

    /// <summary>The cautions; nothing where nothing is altered.</summary>
    public static Piece Warnings(DrawingPlan plan, double width, Vocabulary words) =>
        plan.Alteration.Changes.IsEmpty ? Piece.Empty : CautionBlock.Of("Cautions", [.. Cautions.Of(plan.Alteration, words)], width, plan.Lettering);
}
