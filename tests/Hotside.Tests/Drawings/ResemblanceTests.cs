using Hotside.Tests.Outputs;
using Hotside.Tests.Support;

namespace Hotside.Tests.Drawings;

/// <summary>A job that was edited a little is drawn like it was: what need not move stands where it stood.</summary>
public class ResemblanceTests
{
    [Theory]
    [InlineData("horn")]
    [InlineData("headlamps")]
    [InlineData("trailer")]
    public void A_job_is_drawn_like_itself(string name)
    {
        var job = GalleryJobs.Read(name);
        foreach (var page in new[] { Page.Smallest, Page.Fit })
            Assert.Equal(job.Draw(options: new() { Page = page }).ToSvg(), job.Draw(options: new() { Page = page, Like = GalleryJobs.Read(name) }).ToSvg());
    }

    // Each wire of the headlamps is left out in turn. A part whose wire is gone has another text, and another box with it.
    [Fact]
    public void What_need_not_move_stands_where_it_stood()
    {
        string text = File.ReadAllText(Repository.Path("gallery", "headlamps", "job.yaml"));
        var before = Job.Read(text).OrThrow();
        string[] places = Places(before.Draw());
        int kept = 0, anew = 0, all = 0;
        foreach (string line in text.Split('\n').Where(l => l.StartsWith("  w", StringComparison.Ordinal) && !l.Contains("# ", StringComparison.Ordinal)))
        {
            if (Job.Read(text.Replace(line + "\n", "", StringComparison.Ordinal)).Job is not { } edited) continue;
            kept += places.Intersect(Places(edited.Draw(options: new() { Like = before }))).Count();
            anew += places.Intersect(Places(edited.Draw())).Count();
            all += places.Length;
        }
        Assert.InRange(all, 2 * places.Length, int.MaxValue);
        Assert.InRange(kept, 0.7 * all, all);
        Assert.InRange(kept, anew + 1, all);
    }

    [Fact]
    public void A_job_that_has_nothing_in_common_is_drawn_as_ever()
    {
        var horn = GalleryJobs.Read("horn");
        Assert.Equal(horn.Draw().ToSvg(), horn.Draw(options: new() { Page = Page.A4, Like = GalleryJobs.Read("van") }).ToSvg());
    }

    private static string[] Places(Drawing drawing) => [.. drawing.Boxes.Where(b => char.IsAsciiLetterUpper(b.Id[0])).Select(b => $"{b.Id} {b.View} {Math.Round(b.Left)} {Math.Round(b.Top)}")];
}
