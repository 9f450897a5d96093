using System.Collections.Concurrent;
using System.Globalization;
using System.Xml.Linq;
using Hotside.Drawings;
using Hotside.Drawings.Plans;
using Hotside.Layouts;
using Hotside.Layouts.Passes;
using Hotside.Studies;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;
using Hotside.Tests.Outputs;
using Hotside.Tests.Support;

namespace Hotside.Tests.Drawings;

public sealed class OverlayTests
{
    // All but the whole vehicle, which takes as long as the rest together.
    public static TheoryData<string> Files => [.. JobFiles.All.Where(f => f != "van.yaml")];

    // Each circuit by itself keeps the rules of every layout; over each other, texts and bodies keep clear of all that is shown.
    [Theory]
    [MemberData(nameof(Files))]
    public void Nothing_lies_on_a_text_or_a_body_though_no_circuit_has_both(string file)
    {
        var alteration = JobFiles.Read(file).Alteration!;
        var plan = OverlayPlan.Of(DrawingPlan.Of(alteration, Study.Of(alteration), Lettering.Normal, Hotside.Wording.Vocabulary.Of(Words.American)));
        var layout = Layout.Of(plan.Input, new());
        Assert.Equal([], Check.Of(plan.Input, layout).Where(f => !f.EndsWith("is lost", StringComparison.Ordinal)));
        var together = Check.Of(plan.Input.AllSeen(), layout).Where(f => f.Contains("overlap", StringComparison.Ordinal) || f.Contains("the text of", StringComparison.Ordinal) || f.Contains("runs through", StringComparison.Ordinal));
        Assert.Equal([], together);
    }

    public static TheoryData<string> GalleryCases => [.. GalleryJobs.Names.Where(n => n != "van")];

    public static TheoryData<string> Jobs => [.. GalleryJobs.Names.Where(n => n != "van"), .. JobFiles.All.Where(f => f != "van.yaml")];

    [Theory]
    [MemberData(nameof(Jobs))]
    public void Nothing_on_the_sheet_lies_over_anything_else(string job) =>
        Assert.Equal("", string.Join('\n', Clearance.Faults(Drawn(job))));

    // A label beside a line that covers its own would name another conductor. Where a wire lay, its label stands at the dots.
    [Theory]
    [MemberData(nameof(GalleryCases))]
    public void A_label_stands_at_a_line_that_is_painted_there(string job)
    {
        var scene = Drawn(job);
        foreach (var label in scene.Groups.Where(g => g.Classes.Contains("label") && g.Data.Contains(("change", "old-lie"))))
        {
            var box = Box.Around(label.Shapes.Select(s => s.Bounds));
            string of = label.Data.First(d => d.Name == "ref").Value, change = label.Data.First(d => d.Name == "change").Value;
            var lines = scene.In(Layer.Wires).Where(w => w.Data.Contains(("change", change))).SelectMany(w => w.Shapes);
            Assert.True(lines.Any(l => l.Bounds.Overlaps(new(box.Left - 10, box.Top - 8, box.Right + 10, box.Bottom + 8), 0)), $"{job}: {of} {change} at {box}");
        }
    }

    private static readonly ConcurrentDictionary<string, Lazy<Scene>> Scenes = new(StringComparer.Ordinal);

    private static Scene Drawn(string job) => Scenes.GetOrAdd(job, j => new(() => (j.EndsWith(".yaml", StringComparison.Ordinal) ? Job.Read(JobFiles.Text(j)).OrThrow() : GalleryJobs.Read(j)).Draw(View.Overlay).Scene)).Value;

    [Fact]
    public void What_stays_is_drawn_once_and_a_moved_wire_twice_under_one_number()
    {
        var svg = XDocument.Parse(GalleryJobs.HornOverlay.ToSvg());
        string[] Changes(string id) => [.. Wires(svg, id).Select(w => w.Attribute("data-change")!.Value).Order(StringComparer.Ordinal)];
        Assert.Equal(["kept"], Changes("w5"));
        Assert.Equal(["out"], Changes("w3"));
        Assert.Equal(["new"], Changes("w7"));
        Assert.Equal(["moved", "old-lie"], Changes("w4"));
        Assert.All(Wires(svg, "w4"), w => Assert.Equal("5", w.Attribute("data-number")!.Value));
        foreach (var part in GalleryJobs.Read("horn").Alteration.After.Parts.Where(p => p.Id != "X1"))
            Assert.Single(svg.Descendants(), e => e.Attribute("id")?.Value == "hotside-o-part-" + part.Id);
    }

    [Fact]
    public void Ratings_potentials_and_supplies_stand_there_old_and_new()
    {
        string[] texts = [.. XDocument.Parse(GalleryJobs.HornOverlay.ToSvg()).Descendants().Where(e => e.Name.LocalName == "text").Select(e => e.Value)];
        int was = Array.IndexOf(texts, "was 6 V · 8 A");
        Assert.True(was > 0);
        Assert.Equal("12 V · 5 A", texts[was + 1]);
        // A potential against the chassis has the sign of the pole that is not grounded.
        Assert.Contains("before \u22126 V, after +12 V", texts);
        Assert.Contains("before: 6 V, positive ground; after: 12 V, negative ground", texts);
        Assert.Contains("G1: its minus pole goes to ground; before, its plus pole was on ground.", string.Join(' ', texts), StringComparison.Ordinal);
        Assert.Contains(texts, t => t.StartsWith("before ground-switched", StringComparison.Ordinal));
    }

    // No dot where only an old line meets a new one: they were never joined.
    [Fact]
    public void A_dot_is_a_joint_that_one_of_the_circuits_has()
    {
        var svg = XDocument.Parse(GalleryJobs.HornOverlay.ToSvg());
        (double X, double Y)[] old = [.. Wires(svg, "w4").Where(w => w.Attribute("data-change")!.Value == "old-lie").Descendants().Attributes("d").SelectMany(d => Ends(d.Value))];
        var dots = svg.Descendants().Where(e => e.Name.LocalName == "circle" && ((string?)e.Parent!.Attribute("class")) == "hs-dot").Select(c => (X: (double)c.Attribute("cx")!, Y: (double)c.Attribute("cy")!)).ToArray();
        Assert.NotEmpty(old);
        Assert.NotEmpty(dots);
        Assert.DoesNotContain(dots, d => old.Contains((d.X, d.Y)));
    }

    [Fact]
    public void Every_number_is_on_the_sheet_and_in_the_list()
    {
        var job = GalleryJobs.Read("horn");
        var svg = XDocument.Parse(GalleryJobs.HornOverlay.ToSvg());
        Assert.Equal(
            job.Alteration.Changes.Select(c => c.Number.ToString(CultureInfo.InvariantCulture)).Order(StringComparer.Ordinal),
            svg.Descendants().Attributes("data-number").SelectMany(a => a.Value.Split(',')).Distinct().Order(StringComparer.Ordinal));
        Assert.Contains(svg.Descendants().Where(e => e.Name.LocalName == "text"), t => t.Value == "where a moved wire lay");
    }

    // The new flasher has its terminal 49a elsewhere: its wire is the same wire.
    [Fact]
    public void What_stays_is_drawn_once_though_a_new_symbol_has_its_pin_elsewhere()
    {
        var svg = XDocument.Parse(Job.Read(JobFiles.Text("signals.yaml")).OrThrow().Draw(View.Overlay).ToSvg());
        Assert.DoesNotContain(svg.Descendants(), e => (string?)e.Attribute("data-change") == "old-lie");
        var kept = svg.Descendants().Where(e => (string?)e.Attribute("data-change") == "kept" && ((string)e.Attribute("class")!).StartsWith("hs-wire", StringComparison.Ordinal)).Select(e => e.Attribute("data-ref")!.Value).ToArray();
        Assert.Equal(kept.Distinct(), kept);
    }

    [Fact]
    public void A_job_that_alters_nothing_is_drawn_once() =>
        Assert.Equal(Unaltered().Draw(View.After).ToSvg(), Unaltered().Draw(View.Overlay).ToSvg());

    private static Job Unaltered() => Job.Read(File.ReadAllText(Repository.Path("gallery", "horn", "job.yaml")).Split("alteration:")[0]).OrThrow();

    private static XElement[] Wires(XDocument svg, string id) =>
        [.. svg.Descendants().Where(e => ((string?)e.Attribute("class"))?.StartsWith("hs-wire", StringComparison.Ordinal) == true && (string?)e.Attribute("data-ref") == id)];

    private static IEnumerable<(double, double)> Ends(string path) => SvgPathPoints.Of(path).SelectMany(l => new[] { l[0], l[^1] });
}
