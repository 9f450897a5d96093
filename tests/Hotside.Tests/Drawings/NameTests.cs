using Hotside.Drawings.Marks;
using Hotside.Symbols;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;
using Hotside.Tests.Layouts;
using Hotside.Tests.Support;

namespace Hotside.Tests.Drawings;

/// <summary>A name or number stands by what it names, and says it once.</summary>
public class NameTests
{
    public static TheoryData<string> Gallery => [.. Directory.GetDirectories(Repository.Path("gallery")).Where(d => File.Exists(Path.Combine(d, "job.yaml"))).Select(d => Path.GetFileName(d)!).Order(StringComparer.Ordinal)];

    // The new socket has more ways than the old plug.
    [Fact]
    public void A_connector_that_gets_more_ways_has_its_name_beside_the_ways_that_it_has()
    {
        var drawn = LaidOutJob.OfGallery("trailer");
        var given = drawn.Plan.Input.Boxes.First(b => b.Id == "X2");
        var placed = drawn.Box("X2");
        Assert.False(placed.TextOnLeft);
        foreach (var (view, shown) in new[] { (SeenIn.Before, given.WaysShown.Before), (SeenIn.After, given.WaysShown.After) })
            Assert.InRange(placed.TextIn(view, given).Left - placed.X - shown.Max(w => placed.Facing.ColumnOf(w, given)), 0, 5.5);
        Assert.True(placed.TextIn(SeenIn.Before, given).Left < placed.TextIn(SeenIn.After, given).Left - 6);
    }

    [Theory]
    [MemberData(nameof(Gallery))]
    public void The_name_of_a_rail_is_nowhere_far_from_it(string job)
    {
        var drawn = LaidOutJob.OfGallery(job);
        foreach (var (box, placed) in drawn.Plan.Input.Boxes.Zip(drawn.Layout.Boxes).Where(b => b.First.IsRail))
            foreach (var rail in drawn.Layout.Rails.Where(r => r.Box == box.Id))
                Assert.True(placed.TextX < rail.X2 + 2 && rail.X1 - 2 < placed.TextX + box.TextWidth && (rail.X1 - placed.TextX) < 16, $"{box.Id}: {placed.TextX} of {rail}");
    }

    [Fact]
    public void A_long_label_of_an_inner_rail_has_two_lines()
    {
        Piece one = Rail.InnerLabel("X5 · Relay feed", "", null, Lettering.Normal), two = Rail.InnerLabel("X2 · 15, ignition feed", "+12 V with S1 run or start", null, Lettering.Normal);
        Assert.Single(one.Shapes);
        var texts = two.Shapes.OfType<TextShape>().Select(t => t.Bounds).ToArray();
        Assert.Equal(texts[0].Left, texts[1].Left, 1e-6);
        Assert.Equal(Lettering.Normal.Small.Pitch, texts[1].Bottom - texts[0].Bottom, 0.5);
        Assert.True(two.Width < 160 && two.Height >= Lettering.Normal.Small.CapHeight + Lettering.Normal.Small.Pitch);
    }

    // Its rail is far above it.
    [Fact]
    public void A_long_lead_of_a_fitted_part_bears_the_number_of_its_change()
    {
        var lead = LaidOutJob.OfGallery("van").Plan.Lines.First(l => l.Line == "K6.30 on X1.1");
        Assert.Equal("33", lead.After!.Number!.Text);
    }

    // What stood below the ring that ends it was read as its label.
    [Theory]
    [MemberData(nameof(Gallery))]
    public void No_label_stands_where_a_free_end_would_go_on(string job)
    {
        var drawn = LaidOutJob.OfGallery(job);
        foreach (var (_, free) in drawn.Plan.Input.Boxes.Zip(drawn.Layout.Boxes).Where(b => b.First.IsFreeEnd))
            Assert.DoesNotContain(drawn.Layout.Labels, l => l.X < free.X + 2 && l.X + l.Width > free.X && l.Y > free.Y && l.Y < free.Y + 5);
    }

    [Fact]
    public void The_van_has_a_free_end() => Assert.Contains(LaidOutJob.OfGallery("van").Plan.Input.Boxes, b => b.IsFreeEnd);

    // The part that a lead comes or goes with bears the number.
    [Theory]
    [MemberData(nameof(Gallery))]
    public void No_lead_of_a_case_bears_a_number_and_each_says_once_that_it_is_one(string job)
    {
        var plan = LaidOutJob.OfGallery(job).Plan;
        foreach (var line in plan.Lines.Where(l => l.Conductor is null))
            foreach (var (shown, view) in new[] { (line.Before, SeenIn.Before), (line.After, SeenIn.After) })
            {
                if (shown is null) continue;
                if (!line.Line.Contains(".case on", StringComparison.Ordinal) || shown.NamesSign) continue;
                Assert.Null(shown.Number);
                var part = plan.Parts.First(p => p.Box == line.Line[..line.Line.IndexOf('.', StringComparison.Ordinal)]).In(view)!;
                bool isAtPin = part.Symbol.Shapes.OfType<TextShape>().Any(t => t.Text == "case");
                Assert.True(isAtPin != (shown.Label == "case"), line.Line);
            }
    }

    [Theory]
    [InlineData("26,28")]
    [InlineData("3,10,11")]
    public void Each_of_several_numbers_has_a_triangle_of_the_shape_that_all_have(string numbers)
    {
        static (double, double)[] Sizes(Piece piece) => [.. piece.Shapes.OfType<PolylineShape>().Select(p => (Math.Round(p.Bounds.Width, 6), Math.Round(p.Bounds.Height, 6)))];
        Piece all = Triangle.Of(new(numbers, ColourRole.New), Lettering.Normal), one = Triangle.Of(new("7", ColourRole.New), Lettering.Normal);
        Assert.Equal(numbers.Split(','), all.Shapes.OfType<TextShape>().Select(t => t.Text));
        Assert.Single(Sizes(all).Append(Sizes(one)[0]).Distinct());
        Assert.Equal(one.Height, all.Height);
    }
}
