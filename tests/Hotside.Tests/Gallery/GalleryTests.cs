using System.Collections.Concurrent;
using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Hotside.Alterations;
using Hotside.Diagnostics;
using Hotside.Symbols;
using Hotside.Tests.Drawings;
using Hotside.Tests.Support;

namespace Hotside.Tests.Gallery;

/// <summary>The gallery is documentation, regression test and shop window in one.</summary>
public partial class GalleryTests
{
    private const int LargeCase = 40;

    private static readonly ConcurrentDictionary<string, Lazy<(Job Job, Drawing Pair, string Svg)>> Pairs = new(StringComparer.Ordinal);

    public static TheoryData<string> Cases => [.. Directory.GetDirectories(Repository.Path("gallery")).Where(d => File.Exists(Path.Combine(d, "job.yaml"))).Select(d => Path.GetFileName(d)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_case_has_no_errors(string name) =>
        Assert.Empty(Read(name).Findings.Where(d => d.Severity >= Severity.Error).Select(d => d.ToString()));

    [Theory]
    [MemberData(nameof(Cases))]
    public void Its_committed_pair_is_what_is_drawn_today(string name) => Approve.Text(Drawn(name).Svg, "gallery", name, "pair.svg");

    // What no A2 holds stands on several sheets, as the command line has it.
    [Theory]
    [InlineData("trailer")]
    [InlineData("van")]
    public void Its_committed_sheets_are_what_is_drawn_today(string name)
    {
        var sheets = Drawn(name).Job.DrawSheets();
        Assert.True(sheets.Length > 2);
        for (int i = 0; i < sheets.Length; i++) Approve.Text(sheets[i].ToSvg(), "gallery", name, $"sheet-{(i + 1).ToString(CultureInfo.InvariantCulture)}.svg");
        Assert.Equal(sheets.Length, Directory.GetFiles(Repository.Path("gallery", name), "sheet-*.svg").Length);
        Assert.All(sheets, s => Assert.True(Math.Max(s.WidthInMillimetres, s.HeightInMillimetres) <= 420));
        Assert.Equal("", string.Join('\n', sheets.SelectMany(s => Clearance.Faults(s.Scene))));
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Its_committed_wire_list_is_what_is_written_today(string name) => Approve.Text(WireList.Of(Drawn(name).Job).ToText(), "gallery", name, "wires.txt");

    [Theory]
    [MemberData(nameof(Cases))]
    public void Nothing_on_the_sheet_lies_over_anything_else(string name) => Assert.Equal("", string.Join('\n', Clearance.Faults(Drawn(name).Pair.Scene)));

    [Theory]
    [InlineData("horn", 297, 210)]
    [InlineData("courtesy", 420, 297)]
    [InlineData("charging", 594, 420)]
    [InlineData("launch", 594, 420)]
    [InlineData("van", 1189, 841)]
    public void A_pair_takes_the_smallest_paper_beside_each_other_or_above(string name, double width, double height) =>
        Assert.Equal((width, height), (Drawn(name).Pair.WidthInMillimetres, Drawn(name).Pair.HeightInMillimetres));

    [Fact]
    public void The_overlay_of_the_headlamps_is_what_is_drawn_today() => Approve.Text(Drawn("headlamps").Job.Draw(View.Overlay).ToSvg(), "gallery", "headlamps", "overlay.svg");

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_case_says_in_a_few_lines_what_it_shows_and_stands_in_the_index(string name)
    {
        string text = File.ReadAllText(Repository.Path("gallery", name, "README.md")), index = File.ReadAllText(Repository.Path("gallery", "README.md"));
        Assert.Contains("invented", text, StringComparison.OrdinalIgnoreCase);
        Assert.Contains($"{name}/pair.svg", index, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void The_same_bytes_come_again_in_other_cultures_and_on_many_threads(string name)
    {
        var (job, _, first) = Drawn(name);
        bool isLarge = job.Alteration.After.Parts.Length > LargeCase;
        var culture = CultureInfo.CurrentCulture;
        try
        {
            foreach (string other in isLarge ? ["tr-TR"] : new[] { "de-DE", "tr-TR", "ar-SA" })
            {
                CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(other);
                Assert.Equal(first, Read(name).Draw().ToSvg());
            }
        }
        finally
        {
            CultureInfo.CurrentCulture = culture;
        }
        Parallel.For(0, isLarge ? 2 : 8, _ => Assert.Equal(first, job.Draw().ToSvg()));
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Every_part_conductor_and_change_is_on_the_sheet(string name)
    {
        var (job, _, text) = Drawn(name);
        var svg = XDocument.Parse(text);
        string[] ids = [.. svg.Descendants().Attributes("id").Select(a => a.Value)];
        Assert.Equal(ids.Length, ids.Distinct().Count());
        foreach (var (prefix, circuit) in new[] { ("b", job.Alteration.Before), ("a", job.Alteration.After) })
        {
            foreach (var part in circuit.Parts.Where(p => !p.Kind.Terminals.IsEmpty))
                Assert.Contains(ids, id => id.Contains($"-{prefix}-part-{part.Id}", StringComparison.Ordinal));
            foreach (var wire in circuit.Conductors)
                Assert.Contains(ids, id => id.EndsWith($"-{prefix}-wire-{wire.Id}", StringComparison.Ordinal));
        }
        string[] numbers = [.. svg.Descendants().Attributes("data-number").SelectMany(a => a.Value.Split(',')).Distinct()];
        string[] listed = [.. job.Alteration.Changes.Select(c => c.Number.ToString(CultureInfo.InvariantCulture))];
        Assert.Equal(listed.Order(StringComparer.Ordinal), numbers.Order(StringComparer.Ordinal));
        string list = svg.Descendants().First(e => e.Attribute("id")?.Value.EndsWith("-changes", StringComparison.Ordinal) == true).Value;
        Assert.All(listed, n => Assert.Contains(n, list, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Nothing_is_executed_or_fetched(string name)
    {
        string svg = Drawn(name).Svg;
        Assert.DoesNotContain("<script", svg, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("foreignObject", svg, StringComparison.Ordinal);
        Assert.DoesNotMatch(Handler(), svg);
        // A namespace is a name, not an address that is fetched; the font lies in the file.
        Assert.All(Address().Matches(svg).Select(m => m.Value), a => Assert.Equal("http://www.w3.org/2000/svg", a));
        Assert.All(Reference().Matches(svg).Select(m => m.Groups[1].Value), r => Assert.StartsWith("data:font/woff2", r, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void What_stands_in_both_circuits_stands_in_the_same_place(string name)
    {
        var (job, _, text) = Drawn(name);
        var svg = XDocument.Parse(text);
        var shifts = job.Alteration.Before.Conductors.Where(c => job.Alteration.StateOfConductor(c.Id) == ConductorState.LeftAsIs)
            .Select(c => (Was: Ends(svg, "b-wire-" + c.Id), Now: Ends(svg, "a-wire-" + c.Id)))
            .Select(p => new[] { (X: p.Now.First.X - p.Was.First.X, Y: p.Now.First.Y - p.Was.First.Y), (X: p.Now.Last.X - p.Was.Last.X, Y: p.Now.Last.Y - p.Was.Last.Y) }).ToArray();
        // One end may show less in one view, where a rail's bar is longer there.
        Assert.True(shifts.Length == 0 || shifts[0].Any(s => (s.X == 0 || s.Y == 0) && shifts.All(other => other.Contains(s))), "kept conductors do not shift by one constant");
    }

    // The geometry is read back from the picture itself: every end of a wire lies on a pin, a rail, a dot, a chassis sign or another wire.
    [Theory]
    [MemberData(nameof(Cases))]
    public void Wires_are_drawn_along_the_axes_but_for_slants_of_a_module(string name)
    {
        var svg = XDocument.Parse(Drawn(name).Svg);
        foreach (var wire in svg.Descendants().Where(e => e.Attribute("class")?.Value.StartsWith("hs-wire", StringComparison.Ordinal) == true))
            foreach (var path in wire.Elements().Where(e => e.Name.LocalName == "path"))
            foreach (var points in SvgPathPoints.Of(path.Attribute("d")!.Value))
                Assert.All(points.Zip(points.Skip(1)), s => Assert.True(s.First.X == s.Second.X || s.First.Y == s.Second.Y || IsSlant(s.First.X - s.Second.X, s.First.Y - s.Second.Y), wire.Attribute("id")?.Value));
    }

    // Or a dash of one.
    private static bool IsSlant(double across, double down) => Math.Abs(across) <= Symbol.Module && Math.Abs(Math.Abs(across) - Math.Abs(down)) < 0.01;

    private static ((double X, double Y) First, (double X, double Y) Last) Ends(XDocument svg, string id)
    {
        var paths = svg.Descendants().First(e => e.Attribute("id")?.Value.EndsWith("-" + id, StringComparison.Ordinal) == true).Elements().Where(e => e.Name.LocalName == "path").ToArray();
        return (SvgPathPoints.Of(paths[0].Attribute("d")!.Value)[0][0], SvgPathPoints.Of(paths[^1].Attribute("d")!.Value)[^1][^1]);
    }

    private static (Job Job, Drawing Pair, string Svg) Drawn(string name) => Pairs.GetOrAdd(name, n => new(() =>
    {
        var job = Read(n);
        var pair = job.Draw();
        return (job, pair, pair.ToSvg());
    })).Value;

    private static Job Read(string name) => Job.ReadFile(Repository.Path("gallery", name, "job.yaml")).OrThrow();

    [GeneratedRegex(@"\son\w+\s*=")]
    private static partial Regex Handler();

    [GeneratedRegex(@"https?://[^""'\s<)]+")]
    private static partial Regex Address();

    [GeneratedRegex(@"(?:url\(|href="")['""]?([^'"")]{1,40})")]
    private static partial Regex Reference();
}
