using Hotside.Diagnostics;
using Hotside.Kinds;
using Hotside.Reading;

namespace Hotside.Tests.Reading;

/// <summary>Jobs that lie in more than one file.</summary>
public class SeveralFilesTests
{
    private const string Shared = "parts:\n  G1: battery, 6 V\n  H1: horn, 6 V\nwires:\n  w1: G1.pos to chassis\n";
    private const string Job = "hotside: 1\nsystem: 6 V, positive ground, sizes in AWG\ninclude: shared/supply.yaml\nwires:\n  w2: G1.neg to H1.1\n  w3: H1.2 to chassis\n";

    private static JobReading Read(string text, params (string File, string Text)[] files) =>
        JobReader.Read("job.yaml", text, Catalogue.Standard, name => files.FirstOrDefault(f => f.File == name).Text);

    private static string[] Errors(JobReading reading) => [.. reading.Diagnostics.Where(d => d.Severity >= Severity.Error).Select(d => d.ToString().Split('\n')[0])];

    [Fact]
    public void An_included_file_brings_its_parts_and_wires()
    {
        var reading = Read(Job, ("shared/supply.yaml", Shared));
        Assert.Empty(Errors(reading));
        Assert.Equal(3, reading.Alteration!.Before.Conductors.Length);
        Assert.Equal("shared/supply.yaml:2:3", reading.Places["G1"].ToString());
    }

    [Fact]
    public void A_mistake_in_an_included_file_names_that_file() =>
        Assert.Equal("shared/supply.yaml:3:7: error HS1112: there is no kind of part \"hornn\"", Assert.Single(Errors(Read(Job, ("shared/supply.yaml", Shared.Replace("horn,", "hornn,", StringComparison.Ordinal))))));

    [Fact]
    public void An_id_in_two_files_is_told() =>
        Assert.Contains("HS1110", Assert.Single(Errors(Read(Job.Replace("w2", "w1", StringComparison.Ordinal), ("shared/supply.yaml", Shared)))), StringComparison.Ordinal);

    [Theory]
    [InlineData("../secret.yaml")]
    [InlineData("/etc/passwd")]
    [InlineData("C:/secret.yaml")]
    [InlineData("\\\\host\\share")]
    [InlineData("a/../../b.yaml")]
    [InlineData("http://host/a.yaml")]
    public void Nothing_outside_the_folder_is_asked_for(string path)
    {
        var asked = new List<string>();
        var reading = JobReader.Read("job.yaml", Job.Replace("shared/supply.yaml", "'" + path + "'", StringComparison.Ordinal), Catalogue.Standard, name =>
        {
            asked.Add(name);
            return Shared;
        });
        Assert.Empty(asked);
        Assert.Contains(reading.Diagnostics, d => d.Code == "HS1136");
    }

    [Fact]
    public void Files_that_include_each_other_come_to_an_end() =>
        Assert.Contains(Read(Job, ("shared/supply.yaml", Shared + "include: supply.yaml\n")).Diagnostics, d => d.Code == "HS1138");

    [Fact]
    public void An_included_file_names_others_from_its_own_folder()
    {
        var reading = Read(Job, ("shared/supply.yaml", Shared + "include: lamps.yaml\n"), ("shared/lamps.yaml", "parts:\n  E1: lamp, 6 V, 1 on H1.1, 2 on chassis\n"));
        Assert.Empty(Errors(reading));
        Assert.Equal("shared/lamps.yaml:2:3", reading.Places["E1"].ToString());
    }

    // Two jobs that name each other as what they become would never end.
    [Fact]
    public void What_an_after_file_alters_itself_is_another_job()
    {
        string other = Before + "  after: first.yaml\n";
        var reading = Read(Before + "  after: second.yaml\n", ("second.yaml", other), ("first.yaml", other));
        Assert.Empty(Errors(reading));
        Assert.Empty(reading.Alteration!.Changes);
    }

    private const string Before = "hotside: 1\nsystem: 6 V, negative ground, sizes in AWG\nparts:\n  G1: battery, 6 V\n  F1: fuse, 10 A\n  S1: switch\n  E1: lamp, 6 V, 21 W, 2 on chassis\nwires:\n" +
        "  w1: G1.neg to chassis\n  w2: G1.pos to F1.1, 14 RD\n  w3: F1.2 to S1.1, 14 RD\n  w4: S1.2 to E1.1, 14 YE\nsettings:\n  on: S1 on\nalteration:\n  title: Larger lamp\n";

    private const string Changes = "  changes:\n    - take out w3\n    - replace E1: lamp, 6 V, 35 W\n    - renew w4: 12 YE\n    - run w5: F1.2 to S1.1, 12 RD, 1 m\n";

    private const string After = "hotside: 1\nsystem: 6 V, negative ground, sizes in AWG\nparts:\n  G1: battery, 6 V\n  F1: fuse, 10 A\n  S1: switch\n  E1: lamp, 6 V, 35 W, 2 on chassis\nwires:\n" +
        "  w1: G1.neg to chassis\n  w12: G1.pos to F1.1, 14 RD\n  w4: S1.2 to E1.1, 12 YE\n  w5: F1.2 to S1.1, 12 RD, 1 m\nsettings:\n  on: S1 on\n";

    [Fact]
    public void Two_complete_files_give_the_same_job_as_a_list_of_changes()
    {
        JobReading list = Read(Before + Changes), files = Read(Before + "  after: after.yaml\n  same: w2 = w12\n", ("after.yaml", After));
        Assert.Empty(Errors(list).Concat(Errors(files)));
        string Text(JobReading reading) => JobWriter.Write("", [], reading.Alteration!);
        Assert.Equal(Text(list), Text(files));
    }

    [Fact]
    public void A_pair_that_names_nothing_is_reported() =>
        Assert.Contains(Read(Before + "  after: after.yaml\n  same: w99 = w12\n", ("after.yaml", After)).Diagnostics, d => d.Code == "HS1148" && d.Span!.Line == 18);
}
