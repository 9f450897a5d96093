using Hotside.Drawings.Sheets;
using Hotside.Symbols.Shapes;
using Hotside.Tests.Outputs;

namespace Hotside.Tests.Drawings.Sheets;

/// <summary>A vehicle with many loads has its verdicts in a table where that saves paper, judged by the finished picture.</summary>
public sealed class SwitchTableTests
{
    private static readonly Lazy<Drawing> Trailer = new(() => GalleryJobs.Read("trailer").Draw(View.After));

    [Fact]
    public void A_table_in_the_place_of_badges_takes_a_smaller_paper()
    {
        Assert.Equal((594, 420), (Math.Round(Trailer.Value.WidthInMillimetres), Math.Round(Trailer.Value.HeightInMillimetres)));
        Assert.Equal("", string.Join('\n', Clearance.Faults(Trailer.Value.Scene)));
        Assert.DoesNotContain("HOT-SWITCHED", TextsOf(Trailer.Value));
    }

    [Fact]
    public void Every_load_has_a_row_with_the_zone_in_which_it_is_drawn()
    {
        var scene = Trailer.Value.Scene;
        string[] texts = [.. scene.Groups.Single(g => g.Id == "loads").Shapes.OfType<TextShape>().Select(t => t.Text)];
        SheetFrame frame = new(SheetSize.A2);
        var loads = GalleryJobs.Read("trailer").Study.After.Loads.Where(l => !l.Element.IsInternal).ToArray();
        Assert.Equal(14, loads.Length);
        foreach (var load in loads)
        {
            int row = Array.FindIndex(texts, t => t.StartsWith(load.Name + ", ", StringComparison.Ordinal));
            Assert.True(row >= 0, load.Name);
            var drawn = Box.Around(scene.Groups.Single(g => g.Id == "a-part-" + load.Part.Id).Shapes.Select(s => s.Bounds));
            var zones = from x in Enumerable.Range(0, 9) from y in Enumerable.Range(0, 9) select frame.ZoneAt(drawn.Left + (drawn.Width * x / 8), drawn.Top + (drawn.Height * y / 8));
            // Load, before, after, fuses, zone.
            Assert.Contains(texts[row + 4], zones);
            Assert.Contains("F0", texts[row + 3], StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("horn", View.Pair)]
    [InlineData("headlamps", View.Pair)]
    [InlineData("trailer", View.Pair)]
    public void Where_it_saves_no_paper_or_the_loads_are_few_the_badges_have_their_words(string job, View view) =>
        Assert.DoesNotContain(GalleryJobs.Read(job).Draw(view).Scene.Groups, g => g.Id == "loads");

    private static IEnumerable<string> TextsOf(Drawing drawing) => drawing.Scene.Groups.SelectMany(g => g.Shapes).OfType<TextShape>().Select(t => t.Text);
}
