using System.Globalization;
using System.Xml.Linq;
using Hotside.Tests.Outputs;
using Hotside.Tests.Support;

namespace Hotside.Tests.Drawings;

/// <summary>The table of places against the geometry that is read back from the SVG itself.</summary>
public sealed class DrawnBoxTests
{
    [Theory]
    [InlineData(View.Pair)]
    [InlineData(View.Overlay)]
    public void Every_id_of_the_picture_is_in_the_table_and_the_reverse(View view)
    {
        var drawing = Drawn(view);
        string[] drawn = [.. XDocument.Parse(drawing.ToSvg()).Descendants().Attributes("data-ref").Select(a => a.Value).Distinct().Order(StringComparer.Ordinal)];
        Assert.Equal(drawn, drawing.Boxes.Select(b => b.Id).Distinct().Order(StringComparer.Ordinal));
        Assert.All(drawing.Boxes, b => Assert.True(b.Width > 0 && b.Height > 0 && b.Left > 0 && b.Top > 0 && b.Left + b.Width < drawing.WidthInMillimetres && b.Top + b.Height < drawing.HeightInMillimetres, b.ToString()));
        Assert.Equal(view == View.Pair ? [View.Before, View.After] : [View.Overlay], drawing.Boxes.Select(b => b.View).Distinct());
    }

    // Ends of the strokes as the file has them; 4 units of the file are a millimetre.
    [Theory]
    [InlineData(View.Pair)]
    [InlineData(View.Overlay)]
    public void Each_run_of_a_conductor_is_a_box_and_no_box_is_without_a_run(View view)
    {
        var drawing = Drawn(view);
        var wires = XDocument.Parse(drawing.ToSvg()).Descendants().Where(e => ((string?)e.Attribute("class"))?.StartsWith("hs-wire", StringComparison.Ordinal) == true && e.Attribute("data-ref") is not null).ToArray();
        Assert.NotEmpty(wires);
        foreach (var group in wires.GroupBy(w => (Id: w.Attribute("data-ref")!.Value, View: ViewOf(w))))
        {
            var boxes = drawing.Boxes.Where(b => b.Id == group.Key.Id && b.View == group.Key.View).ToArray();
            var runs = group.Elements().Where(e => e.Name.LocalName == "path").SelectMany(p => Points(p) is var points ? points.Zip(points.Skip(1)) : []).ToArray();
            Assert.All(runs, r => Assert.Contains(boxes, b => b.Holds(r.First.X, r.First.Y) && b.Holds(r.Second.X, r.Second.Y)));
            // A box that lies on no stroke holds the conductor's label.
            foreach (var box in boxes.Where(b => Math.Min(b.Width, b.Height) <= 1))
                Assert.Contains(runs, r => Math.Abs(Math.Min(r.First.X, r.Second.X) - box.Left) <= 0.51 && Math.Abs(Math.Abs(r.First.X - r.Second.X) - box.Width) <= 1.01
                    && Math.Abs(Math.Min(r.First.Y, r.Second.Y) - box.Top) <= 0.51 && Math.Abs(Math.Abs(r.First.Y - r.Second.Y) - box.Height) <= 1.01);
        }
    }

    [Theory]
    [InlineData(View.Pair)]
    [InlineData(View.Overlay)]
    public void A_parts_box_fits_its_strokes_and_texts(View view)
    {
        var drawing = Drawn(view);
        var parts = XDocument.Parse(drawing.ToSvg()).Descendants().Where(e => ((string?)e.Attribute("class"))?.StartsWith("hs-part", StringComparison.Ordinal) == true && e.Attribute("data-ref") is not null && e.Elements().Any(c => c.Name.LocalName != "title")).ToArray();
        Assert.NotEmpty(parts);
        foreach (var part in parts)
        {
            var read = part.Descendants().SelectMany(Extremes).ToArray();
            double left = read.Min(p => p.X), top = read.Min(p => p.Y), bottom = read.Max(p => p.Y);
            var own = drawing.Boxes.Where(b => b.Id == part.Attribute("data-ref")!.Value && b.View == ViewOf(part)).ToArray();
            Assert.All(read, p => Assert.Contains(own, b => b.Holds(p.X, p.Y, 0.01)));
            // How far a text reaches the file does not say; where the strokes and the first letters begin it does.
            Assert.Contains(own, b => Math.Abs(b.Left - left) < 0.6 && Math.Abs(b.Top - top) < 2 && b.Top + b.Height - bottom < 1);
        }
    }

    [Fact]
    public void What_a_reader_points_at_is_found()
    {
        var drawing = Drawn(View.Pair);
        var relay = drawing.Boxes.Single(b => b.Id == "K1");
        Assert.Equal("K1", drawing.Boxes.Last(b => b.Holds(relay.Left + 1, relay.Top + (relay.Height / 2))).Id);
        Assert.DoesNotContain(drawing.Boxes, b => b.Holds(1, 1));
    }

    private static Drawing Drawn(View view) => view == View.Pair ? GalleryJobs.HornPair : GalleryJobs.HornOverlay;

    private static View ViewOf(XElement group) => group.Attribute("id")!.Value.Split('-')[1] switch { "b" => View.Before, "a" => View.After, _ => View.Overlay };

    private static IEnumerable<(double X, double Y)> Extremes(XElement shape)
    {
        double Of(string name) => (double)shape.Attribute(name)! / 4;
        switch (shape.Name.LocalName)
        {
            case "path":
                return Points(shape);
            case "rect":
                return [(Of("x"), Of("y")), (Of("x") + Of("width"), Of("y") + Of("height"))];
            case "circle":
                return [(Of("cx") - Of("r"), Of("cy") - Of("r")), (Of("cx") + Of("r"), Of("cy") + Of("r"))];
            case "text":
                return [(Of("x"), Of("y"))];
            default:
                return [];
        }
    }

    private static (double X, double Y)[] Points(XElement path) => [.. SvgPathPoints.Of(path.Attribute("d")!.Value).SelectMany(l => l).Select(p => (p.X / 4, p.Y / 4))];

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture) / 4;
}
