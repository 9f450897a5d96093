using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Drawings.Marks;
using Hotside.Drawings.Pictures;
using Hotside.Drawings.Plans;
using Hotside.Layouts;
using Hotside.Symbols;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;
using Hotside.Wording;

namespace Hotside.Drawings.Sheets;

/// <summary>
/// A sheet with its circuit or pair: the smallest paper that holds all at full size. Type never shrinks; where no paper is large enough the sheet grows.
/// </summary>
internal sealed class SheetPlan
{
    private const double Gap = 12, HeadlineRoom = 40, BetweenViews = 30;
    private static readonly SheetSize[] Sizes = [SheetSize.A4, SheetSize.A3, SheetSize.A2];
    private static readonly LayoutOptions[] Spacings = [new(), new(Channel: 5), new(Channel: 4)];

    private readonly DrawingPlan plan;
    private readonly SeenIn[] views;
    private readonly IReadOnlyDictionary<string, string> titleBlock;
    private readonly Vocabulary words;
    private readonly CancellationToken cancel;

    private SheetPlan(DrawingPlan plan, SeenIn[] views, IReadOnlyDictionary<string, string> titleBlock, Vocabulary words, CancellationToken cancel) =>
        (this.plan, this.views, this.titleBlock, this.words, this.cancel) = (plan, views, titleBlock, words, cancel);

    public static Scene Of(DrawingPlan plan, SeenIn[] views, IReadOnlyDictionary<string, string> titleBlock, Vocabulary words, CancellationToken cancel) =>
        new SheetPlan(plan, views, titleBlock, words, cancel).Compose();

    // The calmest spacing that a paper holds; a smaller paper at closer spacing before a larger one.
    private Scene Compose()
    {
        foreach (var size in Sizes)
        {
            var furniture = Furniture.Of(plan, views, size, titleBlock, words);
            foreach (var options in Spacings)
            {
                var natural = Layout.Of(plan.Input, options, cancel);
                var needed = PictureBounds.Of(plan, natural);
                if (furniture.Holds(needed)) return Draw(furniture, Stretched(furniture, natural, needed, options));
                if (needed.Width > 2 * furniture.ViewWidth) break;
            }
        }
        // Larger than any paper of the series: as large as it must be.
        var large = Layout.Of(plan.Input, new LayoutOptions(), cancel);
        var bounds = PictureBounds.Of(plan, large);
        var last = Furniture.Of(plan, views, SheetSize.A2, titleBlock, words);
        var grown = new SheetSize("", SheetSize.A2.Width + (views.Length * Math.Max(0, Math.Ceiling(bounds.Width - last.ViewWidth))), SheetSize.A2.Height + Math.Max(0, Math.Ceiling(bounds.Height - last.ViewHeight)));
        return Draw(Furniture.Of(plan, views, grown, titleBlock, words), large);
    }

    // The drawing fills the room it has, calmly; never beyond it.
    private Layout Stretched(Furniture furniture, Layout natural, Box needed, LayoutOptions options)
    {
        double m = Symbol.Module, sides = needed.Width - (natural.Width * m), ends = needed.Height - (natural.Height * m);
        var stretched = Layout.Of(plan.Input, options with
        {
            FillWidth = (int)Math.Floor((furniture.ViewWidth - sides) / m),
            FillHeight = (int)Math.Floor((furniture.ViewHeight - ends) / m),
        }, cancel);
        return furniture.Holds(PictureBounds.Of(plan, stretched)) ? stretched : natural;
    }

    private Scene Draw(Furniture furniture, Layout layout)
    {
        var bounds = PictureBounds.Of(plan, layout);
        var groups = ImmutableArray.CreateBuilder<SceneGroup>();
        groups.AddRange(furniture.Groups);
        double top = furniture.ViewTop - bounds.Top + Math.Max(0, (furniture.ViewHeight - bounds.Height) / 2);
        // Both views shift by one constant, so that the eye finds a thing at the same place.
        double inner = Math.Max(0, (furniture.ViewWidth - bounds.Width) / 2);
        for (int i = 0; i < views.Length; i++)
            groups.AddRange(CircuitPicture.Of(plan, layout, views[i], Math.Round(furniture.ViewLeft(i) - bounds.Left + Math.Min(inner, 40)), Math.Round(top)));
        string what = views[0] == SeenIn.Both ? ", before and after over each other" : views.Length > 1 ? ", before and after" : plan.Alteration.Changes.IsEmpty ? "" : views[0] == SeenIn.Before ? ", before" : ", after";
        return new(furniture.Size.Width, furniture.Size.Height, TitleRow.Value(titleBlock, "title") + what, SheetText.Description(plan.Alteration, plan.Study, words), groups.ToImmutable());
    }

    /// <summary>Everything on the sheet but the circuits, and the room that it leaves them.</summary>
    private sealed record Furniture(SheetSize Size, SheetFrame Frame, ImmutableArray<SceneGroup> Groups, double ViewTop, double ViewWidth, double ViewHeight)
    {
        public bool Holds(Box needed) => needed.Width <= ViewWidth && needed.Height <= ViewHeight;

        public double ViewLeft(int view) => Frame.Inside.Left + (view * (ViewWidth + BetweenViews));

        public static Furniture Of(DrawingPlan plan, SeenIn[] views, SheetSize size, IReadOnlyDictionary<string, string> fields, Vocabulary words)
        {
            var frame = new SheetFrame(size);
            var inside = frame.Inside;
            var groups = ImmutableArray.CreateBuilder<SceneGroup>();
            groups.Add(new(Layer.Frame, frame.Shapes(plan.Lettering)) { Classes = ["frame"], AriaHidden = true });
            double y = frame.Frame.Bottom - TitleBlock.Height;
            var block = TitleBlock.Of(new Dictionary<string, string>(fields) { ["paper size"] = size.Name, ["sheet"] = fields.GetValueOrDefault("sheet", "1 / 1") });
            groups.Add(new(Layer.Notes, block.At(frame.Frame.Right - TitleBlock.Width, y)) { Id = "title-block", Classes = ["title-block"] });
            var legend = Legend.Of(UsedOnSheet.Entries(plan, views), frame.Frame.Right - TitleBlock.Width - inside.Left - Gap, TitleBlock.Height, plan.Lettering);
            double legendTop = Math.Min(y + 2, frame.Frame.Bottom - legend.Height - 2);
            groups.Add(new(Layer.Notes, legend.At(inside.Left, legendTop)) { Id = "legend", Classes = ["legend"] });
            y = Math.Min(y, legendTop) - Gap;
            foreach (var (piece, id) in new[] { (Warnings(plan, inside.Width, words), "cautions"), (List(plan, inside.Width, words), "changes") })
            {
                if (piece.Height == 0) continue;
                y -= piece.Height;
                groups.Add(new(Layer.Notes, piece.At(inside.Left, y)) { Id = id, Classes = [id] });
                y -= Gap;
            }
            var note = views[0] == SeenIn.Both ? OverlayNote(plan, inside.Width, words) : Piece.Empty;
            if (note.Height > 0) groups.Add(new(Layer.Notes, note.At(inside.Left, inside.Top + HeadlineRoom - 4)) { Id = "note", Classes = ["note"] });
            double top = inside.Top + HeadlineRoom + (note.Height > 0 ? note.Height + 6 : 0), width = views.Length == 1 ? inside.Width : (inside.Width - BetweenViews) / 2;
            var furniture = new Furniture(size, frame, [], top, width, y - top);
            for (int i = 0; i < views.Length; i++) groups.Add(Head(plan, views[i], furniture.ViewLeft(i), inside.Top, width, words));
            if (views.Length > 1) groups.Add(new(Layer.Frame, [Headline.Divider(size.Width / 2, inside.Top + 4, y)]) { Classes = ["divider"], AriaHidden = true });
            return furniture with { Groups = groups.ToImmutable() };
        }

        private static SceneGroup Head(DrawingPlan plan, SeenIn view, double x, double y, double width, Vocabulary words)
        {
            if (view == SeenIn.Both) return new(Layer.Notes, Headline.Of("Overlay", SheetText.Supply(plan.Alteration, words), width, plan.Lettering).At(x, y + 2)) { Classes = ["headline"] };
            var circuit = view == SeenIn.Before ? plan.Alteration.Before : plan.Alteration.After;
            string text = plan.Alteration.Changes.IsEmpty ? "As it is" : view == SeenIn.Before ? "Before" : "After";
            return new(Layer.Notes, Headline.Of(text, SheetText.System(circuit.System, words), width, plan.Lettering).At(x, y + 2)) { Classes = ["headline"] };
        }

        private static Piece OverlayNote(DrawingPlan plan, double width, Vocabulary words)
        {
            var rows = new TextRows(false);
            foreach (string line in TextLines.Break(SheetText.OverlayNote(plan.Alteration, words), plan.Lettering.Small, width, 3)) rows.Text(line, plan.Lettering.Small, ColourRole.Ink, null);
            return rows.Done();
        }

        private static Piece List(DrawingPlan plan, double width, Vocabulary words) => ChangeList.Of(
            SheetText.ListHead(plan.Alteration),
            [.. plan.Alteration.Changes.Select(c => new ListLine(new(Numbers.Whole(c.Number), ChangeLook.ColourOf(c)), ChangeLook.LineOf(c), ChangeText.Of(c, plan.Alteration, words)))],
            width, plan.Lettering);

        private static Piece Warnings(DrawingPlan plan, double width, Vocabulary words) =>
            plan.Alteration.Changes.IsEmpty ? Piece.Empty : CautionBlock.Of("Cautions", [.. Cautions.Of(plan.Alteration, words)], width, plan.Lettering);
    }
}
