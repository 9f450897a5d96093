using Hotside.Layouts;
using Hotside.Layouts.Passes;
using Hotside.Symbols;

namespace Hotside.Tests.Layouts;

/// <summary>Parts that may face either way, and ways of connectors that may stand in any order, do so where conductors cross less then.</summary>
public class FacingTests
{
    // Counted before and after together (own measurement, no published source); as the parts are given there are more, but where leads end at chassis signs of their own.
    [Theory]
    [InlineData("gallery/charging", 0, true)]
    [InlineData("gallery/tractor", 0, true)]
    [InlineData("gallery/headlamps", 3, false)]
    [InlineData("more/caravan-split-charge.yaml", 2, false)]
    [InlineData("small/07-connector.yaml", 2, true)]
    [InlineData("gallery/trailer", 8, false)]
    public void Turning_parts_leaves_few_crossings(string job, int most, bool turns)
    {
        var drawn = Laid(job);
        Assert.InRange(drawn.Measure.Crossings, 0, most);
        Assert.Equal([], Check.Of(drawn.Plan.Input, drawn.Layout).Where(f => !f.EndsWith("is lost", StringComparison.Ordinal)));
        if (!turns) return;
        var asGiven = drawn.Plan.Input.AsGiven();
        Assert.True(BenchMeasure.Of(asGiven, Layout.Of(asGiven, new())).Crossings > drawn.Measure.Crossings, $"{drawn.Measure.Crossings}");
        Assert.Contains(drawn.Layout.Boxes, b => b.Facing != Facing.AsGiven);
    }

    [Theory]
    [InlineData("gallery/tractor", false)]
    [InlineData("small/07-connector.yaml", true)]
    public void With_the_previous_layout_parts_face_as_they_did(string job, bool isSorted)
    {
        var drawn = Laid(job);
        Assert.Equal(isSorted, drawn.Layout.Boxes.Any(b => !b.Facing.Ways.IsDefaultOrEmpty));
        var again = Layout.Of(drawn.Plan.Input, new(), drawn.Layout);
        Assert.Equal(drawn.Layout.Boxes.Select(Told), again.Boxes.Select(Told));

        static string Told(PlacedBox box) => $"{box.Id}: {box.Facing.Mirrored}, {(box.Facing.Ways.IsDefaultOrEmpty ? "" : string.Join(' ', box.Facing.Ways))}";
    }

    [Fact]
    public void A_pin_of_a_mirrored_box_stands_at_the_mirrored_place()
    {
        var box = new LayoutBox("K", SeenIn.Both, 10, 4, [new("a", Side.Top, 3, 0), new("b", Side.Left, 0, 2)]);
        var placed = new PlacedBox("K", 100, 50, false, false, 0, 0) { Facing = new(true, []) };
        Assert.Equal(((107, 50), (110, 52)), (placed.PinPlace(box, box.Pins[0]), placed.PinPlace(box, box.Pins[1])));
    }

    [Fact]
    public void An_old_connector_and_its_replacement_keep_the_wires_that_stay_in_one_column()
    {
        var drawn = Laid("gallery/trailer");
        var part = drawn.Plan.Parts.First(p => p.Box == "X2");
        foreach (var (old, fresh) in new[] { ("a1", "aL"), ("a2", "a58L"), ("a3", "a54"), ("b4", "bR") })
            Assert.Equal((part.Before!.Symbol.Pin(old).X, part.Before.Symbol.Pin(old).Y), (part.After!.Symbol.Pin(fresh).X, part.After.Symbol.Pin(fresh).Y));
    }

    private static LaidOutJob Laid(string job) => job.StartsWith("gallery/", StringComparison.Ordinal) ? LaidOutJob.OfGallery(job[8..]) : LaidOutJob.OfTests(job);
}
