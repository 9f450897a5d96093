using System.Globalization;
using System.Xml.Linq;
using Hotside.Drawings;
using Hotside.Drawings.Sheets;
using Hotside.Outputs;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;
using Hotside.Tests.Support;

namespace Hotside.Tests.Outputs;

public sealed class SvgOutputTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public static TheoryData<string> Hostile =>
    [
        "</text></svg><script>alert(1)</script>", "\"'><image href=\"http://example.org/x.png\"/>", "]]><!-- & &amp; &#0;", "\u0000\u0001\u000b\uFFFE" + (char)0xD800,
        "\u202Eevil\u2066 שלום مرحبا", "👩‍🔧🚗", new string('x', 10_000), "url(http://example.org)", "--hs-ink:red;}", "\r\n\t  ",
    ];

    [Fact]
    public void A_picture_says_what_it_is()
    {
        XElement root = Parse(SvgOutput.Write(Sample.Sheet()));
        Assert.Equal("img", (string?)root.Attribute("role"));
        Assert.Equal("en", (string?)root.Attribute("lang"));
        string[] ids = ((string)root.Attribute("aria-labelledby")!).Split(' ');
        Assert.Equal(["title", "desc"], ids.Select(id => root.Elements().Single(e => (string?)e.Attribute("id") == id).Name.LocalName));
        Assert.Equal("420mm", (string?)root.Attribute("width"));
        Assert.Equal("0 0 1680 1188", (string?)root.Attribute("viewBox"));
    }

    [Theory]
    [MemberData(nameof(Hostile))]
    public void Whatever_a_user_writes_the_file_is_sound_and_fetches_nothing(string text)
    {
        XElement root = Parse(SvgOutput.Write(Sample.Sheet(text)));
        List<string> ids = [.. root.DescendantsAndSelf().Select(e => (string?)e.Attribute("id")).OfType<string>()];
        Assert.Equal(ids.Count, ids.Distinct().Count());
        Assert.Empty(root.Descendants().Select(e => e.Name.LocalName).Except(["title", "desc", "style", "g", "rect", "path", "circle", "text"]));
        Assert.DoesNotContain(root.Descendants().Attributes(), a => a.Name.LocalName is "href" or "src" || a.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase));
        string style = root.Element(Svg + "style")!.Value;
        Assert.DoesNotContain("http", style, StringComparison.Ordinal);
        Assert.DoesNotContain("@import", style, StringComparison.Ordinal);
        Assert.All(root.Descendants(Svg + "text"), t => Assert.True(CleanText.CanDraw(t.Value) && t.Value.Length < 300));
    }

    [Fact]
    public void A_text_of_ten_thousand_characters_stands_whole_in_a_title()
    {
        string text = string.Concat(Enumerable.Repeat("0123456789", 1000));
        Assert.Contains(Parse(SvgOutput.Write(Sample.Sheet(text))).Descendants(Svg + "title"), t => t.Value == text && t.Parent!.Element(Svg + "text") is { } shown && shown.Value.EndsWith('…'));
    }

    [Fact]
    public void Nothing_is_painted_in_a_colour_without_a_role()
    {
        XElement root = Parse(SvgOutput.Write(Sample.Sheet()));
        string style = root.Element(Svg + "style")!.Value;
        Assert.All(root.Descendants().Where(e => e.Name.LocalName is "path" or "rect" or "circle" or "text"), e =>
        {
            Assert.Null(e.Attribute("style"));
            Assert.All(ClassesOf(e), c => Assert.Contains(".hs ." + c + "{", style, StringComparison.Ordinal));
            // A stroke may be borne by the group; a text has the ink of the style sheet where it says nothing.
            string[] paints = [.. ClassesOf(e), .. ClassesOf(e.Parent!)];
            Assert.True(e.Name.LocalName == "text" || paints.Any(c => c.StartsWith("hs-s-", StringComparison.Ordinal) || c.StartsWith("hs-f-", StringComparison.Ordinal)), e.ToString());
        });
        Assert.Contains(".hs .hs-s-new{stroke:#0072b2;stroke:var(--hs-new,#0072b2)}", style, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_rule_begins_with_the_pictures_own_class()
    {
        string style = Parse(SvgOutput.Write(Sample.Sheet())).Element(Svg + "style")!.Value;
        Assert.All(style.Split('\n', StringSplitOptions.RemoveEmptyEntries), r => Assert.True(r.StartsWith(".hs", StringComparison.Ordinal) || r.StartsWith("@font-face", StringComparison.Ordinal), r));
    }

    [Fact]
    public void The_font_is_embedded_and_the_wider_file_only_where_it_is_needed()
    {
        string narrow = SvgOutput.Write(Sample.Sheet("Hupe")), wide = SvgOutput.Write(Sample.Sheet("Přepínač"));
        Assert.Equal(2, narrow.Split("data:font/woff2").Length - 1);
        Assert.InRange(wide.Length - narrow.Length, 30_000, 60_000);
        Assert.True(FontFace.Regular.Woff2(false).Length < 16_384 && FontFace.Bold.Woff2(false).Length < 16_384);
    }

    [Fact]
    public void Without_the_font_every_text_has_its_measured_length()
    {
        XElement root = Parse(SvgOutput.Write(Sample.Sheet(), new() { Font = SvgFont.Family }));
        Assert.All(root.Descendants(Svg + "text"), t => Assert.True((double)t.Attribute("textLength")! > 0));
        Assert.DoesNotContain("base64", root.Element(Svg + "style")!.Value, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void The_bytes_are_the_same_in_every_culture_and_on_four_threads(string culture)
    {
        string expected = SvgOutput.Write(Sample.Sheet());
        string[] written = new string[4];
        Thread[] threads = [.. Enumerable.Range(0, 4).Select(i => new Thread(() => written[i] = SvgOutput.Write(Sample.Sheet())) { CurrentCulture = new CultureInfo(culture), CurrentUICulture = new CultureInfo(culture) })];
        Array.ForEach(threads, t => t.Start());
        Array.ForEach(threads, t => t.Join());
        Assert.All(written, w => Assert.Equal(expected, w));
        Assert.DoesNotContain('\r', expected);
    }

    [Fact]
    public void Texts_read_back_from_a_title_block_lie_apart()
    {
        Scene scene = new(720, 84, "t", "d", [new(Layer.Notes, TitleBlock.Of(TitleBlock.FieldNames.ToDictionary(n => n, n => "Straßenverkehrsamt " + n)).Shapes)]);
        XElement root = Parse(SvgOutput.Write(scene));
        List<Box> boxes = [.. root.Descendants(Svg + "text").Select(t => BoxOf(t, root.Element(Svg + "style")!.Value))];
        Assert.True(boxes.Count > 20);
        for (int i = 0; i < boxes.Count; i++)
        {
            for (int j = i + 1; j < boxes.Count; j++)
                Assert.False(boxes[i].Overlaps(boxes[j], 0.05));
        }
    }

    [Fact]
    public void Dark_is_a_choice_of_the_writer_and_of_the_page()
    {
        string paper = SvgOutput.Write(Sample.Sheet()), dark = SvgOutput.Write(Sample.Sheet(), new() { Theme = Theme.Dark });
        Assert.Contains(".hs[data-theme=dark]{--hs-paper:#14181d", paper, StringComparison.Ordinal);
        Assert.Contains(" data-theme=\"dark\">", dark, StringComparison.Ordinal);
        Assert.Contains(".hs .hs-f-paper{fill:#14181d;", dark, StringComparison.Ordinal);
        Assert.DoesNotContain("prefers-color-scheme", paper, StringComparison.Ordinal);
    }

    [Fact]
    public void A_shape_without_a_stroke_takes_none_from_its_group()
    {
        Pen pen = new(StrokeRank.Heavy, ColourRole.New);
        Scene scene = new(100, 100, "t", "d", [new(Layer.Parts, [Shape.Line(pen, 0, 0, 10, 0), Shape.Line(pen, 10, 0, 10, 10), Shape.Dot(ColourRole.Ink, 5, 5, 2), Shape.Line(Pen.Thin, 0, 9, 9, 9)])]);
        XElement group = Parse(SvgOutput.Write(scene)).Descendants(Svg + "g").Single(g => g.Elements(Svg + "circle").Any());
        Assert.Equal("hs-heavy hs-s-new", (string?)group.Attribute("class"));
        Assert.Equal(["path:  M0 0h10M10 0v10", "circle: hs-n hs-f-ink ", "path: hs-thin hs-s-ink M0 9h9"], group.Elements().Select(e => $"{e.Name.LocalName}: {(string?)e.Attribute("class")} {(string?)e.Attribute("d")}"));
    }

    // A hundredth of a millimetre that were lost with each step would be seen after a hundred.
    [Fact]
    public void Steps_of_a_long_line_end_where_they_should()
    {
        Point[] points = [.. Enumerable.Range(0, 300).Select(i => new Point(i * 1.234, i % 2 == 0 ? i * 0.777 : 3))];
        Scene scene = new(400, 400, "t", "d", [new(Layer.Wires, [Shape.Polyline(Pen.Medium, points)])]);
        string data = Parse(SvgOutput.Write(scene)).Descendants(Svg + "path").Select(p => (string)p.Attribute("d")!).Single();
        using var path = SkiaSharp.SKPath.ParseSvgPathData(data);
        Assert.Equal(points.Length, path.PointCount);
        Assert.All(path.Points.Zip(points), p => Assert.True(Math.Abs(p.First.X - p.Second.X) < 0.051 && Math.Abs(p.First.Y - p.Second.Y) < 0.051));
    }

    [Fact]
    public void A_whole_van_takes_less_than_120_kilobytes_beside_its_font()
    {
        string svg = SvgOutput.Write(Job.ReadFile(Repository.Path("gallery", "van", "job.yaml")).OrThrow().Draw(View.After).Scene, new() { Font = SvgFont.Embedded });
        Assert.InRange(System.Text.Encoding.UTF8.GetByteCount(System.Text.RegularExpressions.Regex.Replace(svg, "base64,[^)]*", "")), 50_000, 120 * 1024);
    }

    [Fact]
    public void The_description_is_of_the_views_that_are_shown()
    {
        var job = Job.ReadFile(Repository.Path("gallery", "horn", "job.yaml")).OrThrow();
        string before = job.Draw(View.Before).Scene.Description, after = job.Draw(View.After).Scene.Description, pair = job.Draw(View.Pair).Scene.Description;
        Assert.Equal([(true, false), (false, true), (true, true)], new[] { before, after, pair }.Select(d => (d.Contains("Before, 6 V", StringComparison.Ordinal), d.Contains("After, 12 V", StringComparison.Ordinal))));
    }

    private static string[] ClassesOf(XElement element) => ((string?)element.Attribute("class") ?? "").Split(' ', StringSplitOptions.RemoveEmptyEntries);

    private static XElement Parse(string svg) => XDocument.Parse(svg).Root!;

    private static Box BoxOf(XElement text, string style)
    {
        string? name = ClassesOf(text).FirstOrDefault(c => c.StartsWith("hs-t", StringComparison.Ordinal));
        string rule = style.Split('\n').Single(l => l.StartsWith(name is null ? ".hs text{" : ".hs ." + name + "{", StringComparison.Ordinal));
        double size = double.Parse(rule.Split("font-size:")[1].Split("px")[0], CultureInfo.InvariantCulture);
        TextStyle lettering = new("x", size * 0.698, rule.Contains("font-weight:700", StringComparison.Ordinal), 0);
        return new TextShape(((double)text.Attribute("x")!, (double)text.Attribute("y")!), text.Value, lettering, Anchor.Start, ColourRole.Ink).Bounds;
    }
}
