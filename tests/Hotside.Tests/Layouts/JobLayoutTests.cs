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
        // A few labels of all these circuits find no room between lines that lie as close as a relay's pins; they are left out, never put over something.
        string[] faults = [.. Check.Of(plan.Input, Layout.Of(plan.Input, new()))];
        Assert.Equal([], faults.Where(f => !f.EndsWith("is lost", StringComparison.Ordinal)));
        Assert.InRange(faults.Length, 0, file switch { "small/07-connector.yaml" => 3, "small/11-latching-relay.yaml" => 2, _ => 0 });
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void A_sheet_that_nobody_looked_at_has_nothing_over_anything_else(string file) =>
        Assert.Equal("", string.Join('\n', Clearance.Faults(Job.Read(JobFiles.Text(file)).OrThrow().Draw(View.Pair).Scene)));
}
