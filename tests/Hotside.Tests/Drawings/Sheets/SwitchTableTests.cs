using Hotside.Drawings.Sheets;
using Hotside.Symbols.Shapes;
using Hotside.Tests.Outputs;

namespace Hotside.Tests.Drawings.Sheets;

/// <summary>A vehicle with many loads has its verdicts in a table where that saves paper, judged by the finished picture.</summary>
public sealed class SwitchTableTests
{
    private static readonly Lazy<Job> Many = new(() => Lamps(14));
    private static readonly Lazy<Drawing> Drawn = new(() => Many.Value.Draw(View.After));

    [Fact]
    public void A_table_in_the_place_of_badges_takes_a_smaller_paper()
    {
        Assert.Equal((594, 420), (Math.Round(Drawn.Value.WidthInMillimetres), Math.Round(Drawn.Value.HeightInMillimetres)));
        Assert.Equal("", string.Join('\n', Clearance.Faults(Drawn.Value.Scene)));
        Assert.DoesNotContain("HOT-SWITCHED", TextsOf(Drawn.Value));
    }

    [Fact]
    public void Every_load_has_a_row_with_the_zone_in_which_it_is_drawn()
    {
        var scene = Drawn.Value.Scene;
        string[] texts = [.. scene.Groups.Single(g => g.Id == "loads").Shapes.OfType<TextShape>().Select(t => t.Text)];
        SheetFrame frame = new(SheetSize.A2);
        var loads = Many.Value.Study.After.Loads.Where(l => !l.Element.IsInternal).ToArray();
        Assert.Equal(14, loads.Length);
        foreach (var load in loads)
        {
            int row = Array.FindIndex(texts, t => t.StartsWith(load.Name + ", ", StringComparison.Ordinal));
            Assert.True(row >= 0, load.Name);
            var drawn = Box.Around(scene.Groups.Single(g => g.Id == "a-part-" + load.Part.Id).Shapes.Select(s => s.Bounds));
            var zones = from x in Enumerable.Range(0, 9) from y in Enumerable.Range(0, 9) select frame.ZoneAt(drawn.Left + (drawn.Width * x / 8), drawn.Top + (drawn.Height * y / 8));
            // Load, by what, fuses, zone.
            Assert.Equal(("by S1: 0.42 A", "F1"), (texts[row + 1], texts[row + 2]));
            Assert.Contains(texts[row + 3], zones);
        }
    }

    [Fact]
    public void Where_it_saves_no_paper_or_the_loads_are_few_the_badges_have_their_words()
    {
        foreach (var job in new[] { Lamps(4), Lamps(12), GalleryJobs.Read("horn"), GalleryJobs.Read("trailer") })
            Assert.DoesNotContain(job.Draw().Scene.Groups, g => g.Id == "loads");
    }

    private static Job Lamps(int count) => Job.Read($"""
        hotside: 1
        title: Many lamps
        system: 12 V, negative ground, sizes in AWG
        parts:
          G1: battery, 12 V, 60 Ah
          X1: feed-rail, Battery feed
          F1: fuse, 15 A, 1 on X1
          S1: switch, 40 A, Lights
        {string.Join('\n', Enumerable.Range(1, count).Select(i => $"  E{i}: lamp, 12 V, 5 W, Marker {i}, 2 on chassis"))}
        wires:
          w0: G1.neg to chassis, 4 BK
          wa: G1.pos to X1, 4 RD
          wb: F1.2 to S1.1, 10 RD
        {string.Join('\n', Enumerable.Range(1, count).Select(i => $"  w{i}: S1.2 to E{i}.1, 16 RD"))}
        """).OrThrow();

    private static IEnumerable<string> TextsOf(Drawing drawing) => drawing.Scene.Groups.SelectMany(g => g.Shapes).OfType<TextShape>().Select(t => t.Text);
}
