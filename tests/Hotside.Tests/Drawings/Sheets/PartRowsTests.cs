using Hotside.Drawings.Plans;
using Hotside.Drawings.Sheets;
using Hotside.Studies;
using Hotside.Symbols.Texts;
using Hotside.Tests.Outputs;
using Hotside.Wording;

namespace Hotside.Tests.Drawings.Sheets;

/// <summary>What a paper holds is never passed over unseen.</summary>
public sealed class PartRowsTests
{
    // The papers that the gallery's pairs take (their committed pictures): each leaves a third of the limit.
    [Theory]
    [InlineData("horn", "A4")]
    [InlineData("starter", "A4")]
    [InlineData("courtesy", "A3")]
    [InlineData("charging", "A2")]
    [InlineData("launch", "A2")]
    [InlineData("tractor", "A2")]
    [InlineData("van", "A0")]
    public void A_paper_that_holds_a_pair_is_not_far_too_narrow_for_it(string job, string paper) =>
        Assert.InRange(ShareOf(job, paper), 0.1, PaperSearch.FarTooWide / 1.5);

    [Fact]
    public void A_whole_van_is_far_too_wide_for_an_A2() => Assert.True(ShareOf("van", "A2") > PaperSearch.FarTooWide);

    private static double ShareOf(string job, string paper)
    {
        var alteration = GalleryJobs.Read(job).Alteration;
        var plan = DrawingPlan.Of(alteration, Study.Of(alteration), Lettering.Normal, Vocabulary.Of(Words.American));
        return PartRows.ShareOf(plan, 2, SheetSize.Series.Single(s => s.Name == paper));
    }
}
