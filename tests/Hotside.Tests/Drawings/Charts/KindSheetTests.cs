using System.Globalization;
using Hotside.Kinds;
using Hotside.Symbols.Shapes;
using Hotside.Tests.Support;

namespace Hotside.Tests.Drawings.Charts;

/// <summary>The symbol chart of all kinds, and a kind drawn by itself.</summary>
public class KindSheetTests
{
    private static readonly Drawing Chart = KindSheet.Of(Catalogue.Standard.Kinds);

    public static TheoryData<string> Kinds => [.. Catalogue.Standard.Kinds.Select(k => k.Id)];

    [Fact]
    public void The_chart_in_the_gallery_is_what_is_drawn_today() => Approve.Text(Chart.ToSvg(), "gallery", "kinds", "chart.svg");

    [Fact]
    public void The_same_bytes_come_again_in_another_culture()
    {
        string first = Chart.ToSvg();
        var culture = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal(first, KindSheet.Of(Catalogue.Standard.Kinds).ToSvg());
        }
        finally
        {
            CultureInfo.CurrentCulture = culture;
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_kind_is_on_the_chart_with_its_id_and_its_terminals(string id)
    {
        var kind = Catalogue.Standard.Find(id)!;
        var group = Assert.Single(Chart.Scene.Groups, g => g.Id == "kind-" + id);
        string[] texts = [.. group.Shapes.OfType<TextShape>().Select(t => t.Text)];
        string caption = string.Concat(group.Shapes.OfType<TextShape>().Where(t => t.Style.Name == "body-bold" && t.Anchor == Anchor.Middle).Select(t => t.Text));
        Assert.EndsWith(id, caption, StringComparison.Ordinal);
        if (kind.Ways is null) Assert.All(kind.Terminals, t => Assert.Contains(t.Name.EndsWith('-') ? t.Name[..^1] + "\u2212" : t.Name, texts)); // a true minus is drawn
    }

    [Fact]
    public void No_text_touches_another_text_or_a_line_that_is_not_its_own_lead()
    {
        Texts.LieApart(Chart.Scene.Groups.SelectMany(g => g.Shapes), 0.3);
        foreach (var group in Chart.Scene.Groups.Where(g => g.Id?.StartsWith("kind-", StringComparison.Ordinal) == true))
        {
            foreach (var text in group.Shapes.OfType<TextShape>())
                Assert.True(!Above(group.Shapes, Inner(text)).Any(s => Touches(s, Inner(text))), $"{group.Id}: \"{text.Text}\" is touched");
        }
    }

    [Fact]
    public void No_kind_reaches_into_another_or_over_the_frame()
    {
        Box[] boxes = [.. Chart.Scene.Groups.Where(g => g.Id?.StartsWith("kind-", StringComparison.Ordinal) == true || g.Classes.Contains("heading")).Select(g => Box.Around(g.Shapes.Select(s => s.Bounds)))];
        for (int i = 0; i < boxes.Length; i++)
        {
            for (int j = i + 1; j < boxes.Length; j++)
                Assert.False(boxes[i].Overlaps(boxes[j]), $"{i} and {j}");
        }

        Box title = Box.Around(Chart.Scene.Groups.Single(g => g.Id == "title-block").Shapes.Select(s => s.Bounds));
        Box frame = new Hotside.Drawings.Sheets.SheetFrame(Hotside.Drawings.Sheets.SheetSize.A1).Inside;
        Assert.All(boxes, b => Assert.True(!b.Overlaps(title) && frame.Contains(b, 1)));
    }

    [Theory]
    [InlineData(1, 1188, 840)]
    [InlineData(20, 1680, 1188)]
    public void The_sheet_is_the_smallest_that_holds_the_kinds(int count, double width, double height)
    {
        var scene = KindSheet.Of(Catalogue.Standard.Kinds.Take(count)).Scene;
        Assert.Equal((width, height), (scene.Width, scene.Height));
    }

    [Fact]
    public void More_kinds_than_any_paper_holds_make_the_sheet_grow()
    {
        var many = Enumerable.Range(0, 12).SelectMany(i => Catalogue.Standard.Kinds.Select(k => k with { Id = $"{k.Id}-{i}" })).ToArray();
        var scene = KindSheet.Of(many).Scene;
        double lowest = scene.Groups.Where(g => g.Classes.Contains("kind")).Max(g => g.Shapes.Max(s => s.Bounds.Bottom));
        Assert.True(scene.Height > 3364 && lowest < scene.Height - 120);
    }

    [Fact]
    public void An_empty_chart_is_refused() => Assert.Throws<ArgumentException>(() => KindSheet.Of([]));

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_kind_by_itself_names_and_lists_its_terminals(string id)
    {
        var kind = Catalogue.Standard.Find(id)!;
        var scene = KindSheet.Of(kind).Scene;
        Texts.LieApart(scene.Groups.SelectMany(g => g.Shapes), 0.3);
        Box sheet = new(0, 0, scene.Width, scene.Height);
        Assert.All(scene.Groups.SelectMany(g => g.Shapes), s => Assert.True(sheet.Contains(s.Bounds)));
        string list = string.Join('\n', scene.Groups[^1].Shapes.OfType<TextShape>().Select(t => t.Text));
        Assert.All(kind.Terminals, t => Assert.Contains(t.Name, list, StringComparison.Ordinal));
    }

    // An own kind without symbol is a box with its pins.
    [Fact]
    public void A_kind_of_ones_own_is_drawn_too()
    {
        var own = Catalogue.Standard.WithKind("kind: brake-booster\nletter: M\nterminals:\n  in: top\n  out: bottom\n  case-screw: left\nelements:\n  pump: motor, in to out\n").Find("brake-booster")!;
        Assert.Contains(">case-screw<", KindSheet.Of(own).ToSvg(), StringComparison.Ordinal);
    }

    // The letters themselves: capitals' height, without the foot of a g.
    private static Box Inner(TextShape text) => text.Bounds is var box ? new(box.Left + 0.3, box.Top + 0.5, box.Right - 0.3, text.Place.Y - 0.3) : default;

    // What lies below the last filled shape around the text is not seen there.
    private static IEnumerable<Shape> Above(IReadOnlyList<Shape> shapes, Box text)
    {
        int paper = Enumerable.Range(0, shapes.Count).LastOrDefault(i => shapes[i] is RectangleShape or CircleShape && shapes[i].Fill is ColourRole.Paper or ColourRole.Panel && shapes[i].Bounds.Contains(text));
        return shapes.Skip(paper);
    }

    private static bool Touches(Shape shape, Box text) => shape switch
    {
        PolylineShape line => Segments(line).Any(s => Crosses(s.From, s.To, text)),
        CircleShape { Pen: not null } circle => IsOnCircle(circle, text),
        RectangleShape { Box: var box } => box.Overlaps(text) && !box.Contains(text),
        _ => false,
    };

    private static IEnumerable<(Point From, Point To)> Segments(PolylineShape line) =>
        line.Points.Zip(line.Points.Skip(1)).Concat(line.Closed ? [(line.Points[^1], line.Points[0])] : Array.Empty<(Point, Point)>());

    // Sampled finely enough for letters of 1.8 mm.
    private static bool Crosses(Point a, Point b, Box text)
    {
        int steps = Math.Max(1, (int)(a.To(b) * 4));
        return Enumerable.Range(0, steps + 1).Select(i => (X: a.X + ((b.X - a.X) * i / steps), Y: a.Y + ((b.Y - a.Y) * i / steps)))
            .Any(p => p.X > text.Left && p.X < text.Right && p.Y > text.Top && p.Y < text.Bottom);
    }

    private static bool IsOnCircle(CircleShape circle, Box text) => Enumerable.Range(0, 360).Select(i => i * Math.PI / 180)
        .Select(a => (X: circle.Centre.X + (circle.Radius * Math.Cos(a)), Y: circle.Centre.Y + (circle.Radius * Math.Sin(a))))
        .Any(p => p.X > text.Left && p.X < text.Right && p.Y > text.Top && p.Y < text.Bottom);
}
