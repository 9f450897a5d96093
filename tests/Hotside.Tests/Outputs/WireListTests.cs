using System.Globalization;

namespace Hotside.Tests.Outputs;

public sealed class WireListTests
{
    // Read off the job file by hand.
    [Theory]
    [InlineData("w3", "1", "F2.2", "H1.1", "14 AWG", "BK", 1.4, "taken out")]
    [InlineData("w4", "5", "K1.85", "S1.1", "16 AWG", "YE", 1.1, "moved from H1.2 to K1.85")]
    [InlineData("w5", "", "S1.2", "chassis", "16 AWG", "BK", 0.2, "left as is")]
    [InlineData("w7", "7", "K1.87", "H1.1", "14 AWG", "GN", 0.9, "run new")]
    [InlineData("w1", "", "G1.pos", "X1", "2 AWG", "BK", 0.6, "left as is, terminal was G1.neg")]
    public void A_wire_has_its_ends_its_stuff_and_what_becomes_of_it(string id, string numbers, string from, string to, string size, string colour, double length, string change) =>
        Assert.Equal(new(numbers, id, from, to, size, colour, length, "", change), WireList.Of(GalleryJobs.Read("horn")).Rows.Single(r => r.Id == id));

    [Fact]
    public void Every_wire_of_both_circuits_has_one_line_and_every_number_is_on_the_list_of_changes()
    {
        var job = GalleryJobs.Headlamps();
        var rows = WireList.Of(job).Rows;
        Assert.Equal(job.Alteration.Before.Conductors.Concat(job.Alteration.After.Conductors).Select(c => c.Id).Distinct(), rows.Select(r => r.Id));
        string[] changes = [.. job.Alteration.Changes.Select(c => c.Number.ToString(CultureInfo.InvariantCulture))];
        Assert.All(rows.SelectMany(r => r.Numbers.Split(',', StringSplitOptions.RemoveEmptyEntries)), n => Assert.Contains(n, changes));
        Assert.All(rows, r => Assert.Equal(r.Change.StartsWith("left", StringComparison.Ordinal), r.Numbers.Length == 0));
    }

    [Fact]
    public void A_cut_wire_and_its_other_half_name_each_other()
    {
        var rows = WireList.Of(GalleryJobs.Headlamps()).Rows;
        Assert.Equal("cut: from X0 to F0.1; the rest is w15", rows.Single(r => r.Id == "w1").Change);
        Assert.Equal("run new: the rest of w1", rows.Single(r => r.Id == "w15").Change);
    }

    [Theory]
    [InlineData("renew w2: 10 GN", "renewed; was 14 AWG BK, now 10 AWG GN")]
    [InlineData("move w2: E1.2 to E2.2, 12 BK", "moved from E1.2 to E2.2; was 14 AWG BK, now 12 AWG BK")]
    [InlineData("move w2: E1.2 to E2.2, chassis to G1.neg", "used elsewhere: was E1.2 to chassis")]
    public void What_changes_of_the_wire_itself_is_said_too(string change, string said) =>
        Assert.Equal(said, WireList.Of(Job.Read(Two(change)).OrThrow()).Rows.Single(r => r.Id == "w2").Change);

    // RFC 4180, sections 2.1 to 2.7: lines end with CR LF; a field with comma, quote or line break stands in quotes; a quote is doubled.
    [Fact]
    public void Comma_separated_values_keep_to_their_standard()
    {
        string csv = WireList.Of(Job.Read(Two("renew w2: 10 GN").Replace("w2: E1.2 to chassis, 14 BK", "w2: E1.2 to chassis, 14 BK, loom 5\" tail", StringComparison.Ordinal)).OrThrow()).ToCsv();
        string[] lines = csv.Split("\r\n");
        Assert.Equal("no.,wire,from,to,size,colour,length in m,loom,change", lines[0]);
        Assert.Equal("", lines[^1]);
        Assert.DoesNotContain('\n', csv.Replace("\r\n", "", StringComparison.Ordinal));
        Assert.Equal("1,w2,E1.2,chassis,10 AWG,GN,,\"5\"\" tail\",\"renewed; was 14 AWG BK, now 10 AWG GN\"", lines[2]);
    }

    [Fact]
    public void The_text_table_stands_in_columns_and_tells_both_supplies()
    {
        string[] lines = WireList.Of(GalleryJobs.Read("horn")).ToText().Split('\n');
        Assert.Equal(["Horn circuit", "before: 6 V, positive ground; after: 12 V, negative ground", ""], lines[..3]);
        int change = lines[3].IndexOf("change", StringComparison.Ordinal);
        Assert.All(lines[4..13], l => Assert.True(l[change - 1] == ' ' && l[change] != ' ', l));
        Assert.Contains("workshop manual", lines[^2], StringComparison.Ordinal);
        Assert.Equal("before: 6 V, positive earth; after: 12 V, negative earth", WireList.Of(GalleryJobs.Read("horn"), Words.British).ToText().Split('\n')[1]);
    }

    [Fact]
    public void A_job_that_alters_nothing_has_a_list_too() =>
        Assert.All(WireList.Of(Job.Read(Two("take out w1").Split("alteration:")[0]).OrThrow()).Rows, r => Assert.Equal(("", "left as is"), (r.Numbers, r.Change)));

    private static string Two(string change) => $"""
        hotside: 1
        title: Two lamps
        system: 12 V, negative ground, sizes in AWG
        parts:
          G1: battery, 12 V, 60 Ah
          E1: lamp, 12 V, 5 W
          E2: lamp, 12 V, 5 W
        wires:
          w1: G1.pos to E1.1, 14 RD
          w2: E1.2 to chassis, 14 BK
          w3: G1.pos to E2.1, 14 RD
          w4: E2.2 to chassis, 14 BK
          w5: G1.neg to chassis, 2 BK
        alteration:
          title: One of them
          changes:
            - {change}
        """;
}
