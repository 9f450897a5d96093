using System.Xml.Linq;
using Hotside.Tests.Outputs;

namespace Hotside.Tests.Drawings;

/// <summary>Some loads of a vehicle, each with what feeds and controls it.</summary>
public sealed class FigureTests
{
    private static readonly Lazy<Job> Van = new(() => GalleryJobs.Read("van"));

    [Theory]
    [InlineData(View.Pair, "H1")]
    [InlineData(View.Before, "H1")]
    [InlineData(View.After, "M1")]
    [InlineData(View.Overlay, "H1")]
    [InlineData(View.Pair, "P2")]
    [InlineData(View.Pair, "E12", "E9")]
    [InlineData(View.Pair, "K5")]
    public void Nothing_lies_over_anything_else_in_any_view(View view, params string[] loads) =>
        Assert.Equal("", string.Join('\n', Clearance.Faults(Van.Value.Draw(view, new() { Figure = [.. loads] }).Scene)));

    [Fact]
    public void Drawing_list_and_title_are_of_what_is_shown()
    {
        var svg = XDocument.Parse(Van.Value.Draw(View.Pair, new() { Figure = ["H1"] }).ToSvg());
        string[] drawn = [.. svg.Descendants().Attributes("data-ref").Select(a => a.Value).Distinct().Order(StringComparer.Ordinal)];
        Assert.Equal("F0 F4 G1 H1 K2 K5 P1 S7 X1 w1 w2 w24 w25 w26 w7 w75 w76 w77 w8 w9".Split(' '), drawn);
        string[] texts = [.. svg.Descendants().Where(e => e.Name.LocalName == "text").Select(e => e.Value)];
        Assert.Contains("H1 (Horn), Delivery van, whole vehicle", texts);
        Assert.Contains(texts, t => t.StartsWith("Changes to what is shown, of 48 in all", StringComparison.Ordinal));
        Assert.DoesNotContain(texts, t => t.Contains("E3", StringComparison.Ordinal) || t.Contains("alternator G3", StringComparison.Ordinal));
        // Every number on the drawing is in the list, and the reverse.
        string list = svg.Descendants().First(e => e.Attribute("id")?.Value.EndsWith("-changes", StringComparison.Ordinal) == true).Value;
        Assert.All(svg.Descendants().Attributes("data-number").SelectMany(a => a.Value.Split(',')).Distinct(), n => Assert.Contains(n, list, StringComparison.Ordinal));
    }

    // A horn's current and its switch are the same whether all of the van is drawn or the horn alone.
    [Fact]
    public void Verdicts_are_those_of_the_whole_vehicle()
    {
        string svg = Van.Value.Draw(View.After, new() { Figure = ["H1"] }).ToSvg();
        Assert.Contains(">by K5: 5 A<", svg, StringComparison.Ordinal);
        Assert.Contains(">coil by S7: 0.15 A<", svg, StringComparison.Ordinal);
    }

    // Cables come off the whole vehicle, however little of it is shown.
    [Fact]
    public void The_caution_on_the_battery_stays() =>
        Assert.Contains("First off: the cable of the positive post", string.Concat(XDocument.Parse(Van.Value.Draw(View.Pair, new() { Figure = ["H1"] }).ToSvg()).Descendants().Where(e => e.Name.LocalName == "text").Select(e => e.Value + " ")), StringComparison.Ordinal);

    [Fact]
    public void A_figure_without_names_is_refused()
    {
        Assert.Throws<ArgumentException>(() => new DrawingOptions { Figure = [" "] });
        Assert.Equal(Van.Value.Alteration.After.Parts.Length > 40, Van.Value.Draw(View.After, new() { Figure = default }).Boxes.Length > 100);
    }
}
