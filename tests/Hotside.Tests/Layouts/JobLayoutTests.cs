using Hotside.Drawings.Plans;
using Hotside.Layouts;
using Hotside.Layouts.Passes;
using Hotside.Studies;
using Hotside.Symbols.Texts;
using Hotside.Tests.Drawings;
using Hotside.Tests.Support;
using Hotside.Wording;

namespace Hotside.Tests.Layouts;

public class JobLayoutTests
{
    public static TheoryData<string> Files => [.. JobFiles.All];

    [Theory]
    [MemberData(nameof(Files))]
    public void A_job_that_nobody_tuned_the_layout_to_breaks_no_rule(string file)
    {
        var alteration = JobFiles.Read(file).Alteration!;
        var plan = DrawingPlan.Of(alteration, Study.Of(alteration), Lettering.Normal, Vocabulary.Of(Words.American));
        // A label that finds no room is left out, never put over something. Of all these circuits that happens to three of the twelve-way connector: w7 and w8 come down
        // to ways with a line 3 modules away on either side, their labels are 6 and 8 wide; w23 runs down with w25 6 and w21 2 away, and comes there 2 below the one and 2 above the other.
        string[] faults = [.. Check.Of(plan.Input, Layout.Of(plan.Input, new()))];
        Assert.Equal([], faults.Where(f => !f.EndsWith("is lost", StringComparison.Ordinal)));
        Assert.InRange(faults.Length, 0, file == "small/07-connector.yaml" ? 3 : 0);
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void A_sheet_that_nobody_looked_at_has_nothing_over_anything_else(string file) =>
        Assert.Equal("", string.Join('\n', Clearance.Faults(Job.Read(JobFiles.Text(file)).OrThrow().Draw(View.Pair).Scene)));
}
