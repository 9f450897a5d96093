using Hotside.Tests.Outputs;

namespace Hotside.Tests.Drawings;

/// <summary>A reader never doubts which line a label names.</summary>
public sealed class LabelDoubtTests
{
    // How many are left in both views: trailer and van have lines that come down right below a strange horizontal to a part whose text takes the other side, launch a lamp with a line
    // close below it; in starter two short lines side by side have all their room between them.
    [Theory]
    [InlineData("horn", 0)]
    [InlineData("starter", 2)]
    [InlineData("gauges", 0)]
    [InlineData("headlamps", 0)]
    [InlineData("turn-signals", 0)]
    [InlineData("launch", 1)]
    [InlineData("trailer", 2)]
    [InlineData("van", 6)]
    public void Labels_stand_nearest_to_their_own_lines(string job, int most)
    {
        string[] doubts = [.. (job == "van" ? GalleryJobs.VanPair : GalleryJobs.Read(job).DrawSheets(View.Pair)).SelectMany((s, i) => LabelDoubts.Of(s.Scene).Select(d => $"{i + 1}: {d}"))];
        Assert.True(doubts.Length <= most, string.Join('\n', doubts));
    }

    // In a bundle every label stands above its line.
    [Theory]
    [InlineData("trailer")]
    [InlineData("charging")]
    public void No_label_stands_below_its_line_where_it_finds_room_elsewhere(string job) =>
        Assert.Equal([], GalleryJobs.Read(job).DrawSheets(View.Pair).SelectMany(s => LabelDoubts.BelowTheirLines(s.Scene)));
}
