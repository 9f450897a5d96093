using System.Globalization;
using System.Text.RegularExpressions;
using Hotside.Tests.Outputs;

namespace Hotside.Tests.Packs;

/// <summary>The label strips as a printer gets them: millimetres come from the file's own size and view box, the letters' height from the font (OS/2 table: capitals of 698 in 1000).</summary>
public sealed partial class LabelStripTests
{
    private const double Capitals = 0.698, Millimetres = 0.05;

    [Theory]
    [InlineData(Page.A4, TextSize.Normal)]
    [InlineData(Page.Letter, TextSize.Large)]
    public void A_strip_is_90_by_7_mm_its_ruler_50_and_its_capitals_2_5_high(Page page, TextSize text)
    {
        var pack = GalleryJobs.Read("horn").Pack(new() { Only = ["labels"], Page = page, Text = text });
        string svg = pack.Sheets.Single().Drawing.ToSvg();
        var size = Sheet().Match(svg);
        double scale = Number(size, "mm") / Number(size, "units");
        Assert.Equal(page == Page.A4 ? 210 : 215.9, Number(size, "mm"), 0.1);

        // Every cut from left to right is one strip long; cuts below each other are one strip apart.
        var cuts = Cuts().Matches(svg).Select(m => (X: Number(m, "x"), Y: Number(m, "y"), Long: scale * Number(m, "long"))).ToArray();
        var strips = cuts.Where(c => Math.Abs(c.Long - 90) < 1).ToArray();
        Assert.True(strips.Length >= 2 * 7, $"{strips.Length} strips");
        Assert.All(strips, s => Assert.Equal(90, s.Long, Millimetres));
        foreach (var column in strips.GroupBy(s => s.X))
        {
            double[] down = [.. column.Select(s => s.Y).Order()];
            Assert.All(down.Zip(down.Skip(1)), pair => Assert.Equal(7, scale * (pair.Second - pair.First), Millimetres));
        }

        // The letters of a label: of the sizes that the file uses the one of the texts with an arrow.
        string label = svg.Split('\n').First(l => l.Contains('\u2192'));
        string style = Class().Match(label) is { Success: true } named ? Regex.Match(svg, $@"\.{Regex.Escape(named.Groups["name"].Value)}\{{[^}}]*font-size:(?<size>[\d.]+)px").Groups["size"].Value : Common().Match(svg).Groups["size"].Value;
        Assert.Equal(2.5, scale * Capitals * double.Parse(style, CultureInfo.InvariantCulture), 0.02);

        // The ruler's figures 0 and 50 stand under its ends.
        double[] marks = [.. new[] { ">0<", ">50<" }.Select(t => Number(At().Match(svg.Split('\n').First(l => l.Contains(t, StringComparison.Ordinal))), "x"))];
        Assert.Equal(50, scale * (marks[1] - marks[0]), Millimetres);
    }

    private static double Number(Match match, string name) => double.Parse(match.Groups[name].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex("""width="(?<mm>[\d.]+)mm"[^>]*viewBox="0 0 (?<units>[\d.]+) """)]
    private static partial Regex Sheet();

    [GeneratedRegex("""stroke-dasharray="[^"]*" d="M(?<x>[\d.]+) (?<y>[\d.]+)h(?<long>[\d.]+)"/>""")]
    private static partial Regex Cuts();

    [GeneratedRegex("""<text[^>]* class="(?<name>[\w-]+)""")]
    private static partial Regex Class();

    [GeneratedRegex("""\.hs text\{[^}]*font-size:(?<size>[\d.]+)px""")]
    private static partial Regex Common();

    [GeneratedRegex("""<text[^>]* x="(?<x>[\d.]+)""")]
    private static partial Regex At();
}
