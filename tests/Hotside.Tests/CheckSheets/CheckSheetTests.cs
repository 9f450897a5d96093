using Hotside.CheckSheets;
using Hotside.Diagnoses;
using Hotside.Tests.Outputs;
using Hotside.Tests.Support;

namespace Hotside.Tests.CheckSheets;

public class CheckSheetTests
{
    private static readonly Job Horn = GalleryJobs.Read("horn");

    [Theory]
    [InlineData("horn", SheetExtent.Short)]
    [InlineData("horn", SheetExtent.Intake)]
    [InlineData("gauges", SheetExtent.Short)]
    public void A_sheet_is_approved(string name, SheetExtent extent) => Approve.Text(
        GalleryJobs.Read(name).CheckSheet(extent, extent == SheetExtent.Intake ? View.Before : View.After).ToText(),
        "tests", "Hotside.Tests", "CheckSheets", $"{name}-{extent.ToString().ToLowerInvariant()}.approved.txt");

    [Fact]
    public void Every_sheet_begins_with_whom_it_defers_to_and_the_post_of_this_polarity()
    {
        foreach (var (view, post) in new[] { (View.Before, "positive"), (View.After, "negative") })
        {
            var sheet = Horn.CheckSheet(SheetExtent.Short, view);
            Assert.Contains("workshop manual, local codes and licensed practice", sheet.Cautions[0], StringComparison.Ordinal);
            Assert.Contains($"the cable of the {post} post", sheet.Cautions[1], StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Rows_are_numbered_in_the_order_of_their_stages()
    {
        var rows = Horn.CheckSheet(SheetExtent.Full).Rows;
        Assert.Equal(Enumerable.Range(1, rows.Length), rows.Select(r => r.Number));
        Assert.Equal(rows.Select(r => r.Stage).Order(), rows.Select(r => r.Stage));
    }

    // Common practice, no source: the hot cable to the chassis, each fuse's load side and the battery stand on every sheet.
    [Fact]
    public void What_must_be_measured_stands_on_a_short_sheet_too()
    {
        var rows = Horn.CheckSheet().Rows;
        Assert.Contains(rows, r => r is { Stage: CheckStage.DeadShorts, RedOn: "G1.pos", Expected: "open" });
        Assert.Contains(rows, r => r is { Stage: CheckStage.DeadShorts, RedOn: "F2.2, F2 pulled" });
        Assert.Contains(rows, r => r is { Stage: CheckStage.AtRest, RedOn: "G1.pos" });
        Assert.Contains(rows, r => r.Stage == CheckStage.PowerUp);
    }

    [Fact]
    public void A_full_sheet_has_no_fewer_rows_and_shows_no_less_than_a_short_one()
    {
        var (brief, full) = (GalleryJobs.Read("headlamps").CheckSheet(), GalleryJobs.Read("headlamps").CheckSheet(SheetExtent.Full));
        Assert.True(full.Rows.Length >= brief.Rows.Length);
        Assert.True(Shown(full) >= Shown(brief));
        Assert.True(Shown(brief) >= 85, $"{Shown(brief)} %");

        static int Shown(CheckSheet sheet) => int.Parse(sheet.Notes[0].Split(' ')[3], System.Globalization.CultureInfo.InvariantCulture);
    }

    [Fact]
    public void A_sheet_of_one_load_leaves_the_other_fuse_ways_out()
    {
        var sheet = GalleryJobs.Read("tractor").CheckSheet(only: "H1");
        Assert.Contains(sheet.Rows, r => r.RedOn.StartsWith("H1", StringComparison.Ordinal));
        Assert.DoesNotContain(sheet.Rows, r => r.RedOn.StartsWith("E1", StringComparison.Ordinal));
        Assert.Contains(sheet.Rows, r => r.RedOn.EndsWith("all fuses pulled", StringComparison.Ordinal));
        Assert.All(sheet.Rows.Where(r => r.Stage is CheckStage.DeadShorts && !r.RedOn.EndsWith("all fuses pulled", StringComparison.Ordinal)), r => Assert.StartsWith("Fuses in: ", r.Caution, StringComparison.Ordinal));
    }

    // The four readings of a load, off and on (Kirchhoff's laws): 0 and 0 off is hot-switched, battery and battery ground-switched.
    [Fact]
    public void An_intake_sheet_has_the_four_readings_that_tell_the_side()
    {
        var before = Horn.CheckSheet(SheetExtent.Intake, View.Before, "H1").Rows;
        Assert.Equal(["−6.30 V", "−6.30 V"], before.Take(2).Select(r => r.Expected));
        Assert.Equal("all at rest", before[0].Setting);
        Assert.Equal("S1 pressed", before[2].Setting);
        var after = Horn.CheckSheet(SheetExtent.Intake, View.After, "H1").Rows;
        Assert.Equal(4, after.Length);
        Assert.DoesNotContain(after.Take(2), r => r.Expected.StartsWith("+12", StringComparison.Ordinal));
    }

    [Fact]
    public void A_filled_sheet_is_a_file_of_readings()
    {
        string[] lines = Horn.CheckSheet(SheetExtent.Full).ToCsv().Split("\r\n");
        int reading = Array.IndexOf(lines[0].Split(','), "reading");
        // Nobody measures more: the volts at the battery, the horn pressed, and the horn dead.
        string Filled(string line, string value) => string.Join(',', line.Split(',').Select((c, i) => i == reading ? value : c));
        int battery = Array.FindIndex(lines, l => l.Contains(",all at rest,G1.pos,chassis,+", StringComparison.Ordinal)), horn = Array.FindIndex(lines, l => l.Contains(",horn pressed,H1,,", StringComparison.Ordinal));
        lines[battery] = Filled(lines[battery], "12.5");
        lines[horn] = Filled(lines[horn], "dead");
        var readings = FilledSheet.Readings(string.Join("\r\n", lines));
        Assert.Equal(["G1.pos = 12.5 V @ all at rest", "H1 = dead @ horn pressed"], readings);
        Assert.DoesNotContain(Horn.Diagnose(new() { Readings = [.. readings] }).Suspects, s => s.Text == "G1 dead");
    }

    [Fact]
    public void A_sheet_without_a_column_that_is_needed_is_refused_by_name() =>
        Assert.Contains("no column \"setting\"", Assert.Throws<ArgumentException>(() => FilledSheet.Readings("no.,red on,black on,expected,reading\r\n1,G1.pos,chassis,+12 V,12.5\r\n")).Message, StringComparison.Ordinal);

    [Fact]
    public void Each_fault_that_nobody_sees_has_a_row_or_is_said_to_have_none()
    {
        var notes = GalleryJobs.Read("gauges").CheckSheet(SheetExtent.Full).Notes;
        Assert.Contains(notes, n => n.StartsWith("Nobody sees or hears these; the row finds them: row ", StringComparison.Ordinal));
    }

    // Every load is fed in some piece, and every part and wire is some piece's own.
    [Fact]
    public void The_pieces_of_a_whole_vehicle_leave_nothing_out_and_look_at_nothing_twice()
    {
        var study = GalleryJobs.Read("van").Study.After;
        var loose = LooseJoints.Of(study.Circuit);
        var pieces = SheetPieces.Of(study, []);
        Assert.True(pieces.Length > 2);
        var owned = pieces.SelectMany(p => ConnectedPiece.Of(study, loose, p.Loads) is var of ? of.Parts.Select(x => x.Id).Concat(of.Conductors.Select(c => c.Id)).Where(i => !p.Elsewhere.Contains(i)) : []).ToArray();
        Assert.Equal(owned.Length, owned.Distinct().Count());
        foreach (var load in study.Loads.Where(l => !l.Element.IsInternal)) Assert.Contains(load.Part.Id, owned);
        Assert.All(study.Circuit.Conductors.Where(c => !c.From.IsFree && !c.To.IsFree), c => Assert.Contains(c.Id, owned));
    }

    [Fact]
    public void A_reading_is_told_of_the_part_that_it_names_and_with_the_battery_that_it_had()
    {
        string text = File.ReadAllText(Repository.Path("gallery", "horn", "job.yaml")).Replace("alteration:\n", "readings:\n  - G1.neg = -5.9 V\n  - F2.2 = -5.9 V\n  - F2.1 = -6.3 V\nalteration:\n", StringComparison.Ordinal);
        var told = Job.Read(text).OrThrow().Findings.Where(f => f.Code == "HS3405").ToArray();
        Assert.Equal(["G1", "F2"], told.SelectMany(f => f.Items));
        Assert.StartsWith("F2.1 reads −6.30 V", told[1].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Readings_in_the_job_file_are_compared_with_the_netlist_and_written_back()
    {
        string text = File.ReadAllText(Repository.Path("gallery", "horn", "job.yaml")).Replace("alteration:\n", "readings:\n  - H1.1 = -6.2 V\n  - H1.2 = -0.14 V @ horn pressed\n  - H1.1 = -3.1 V @ horn pressed\nalteration:\n  readings:\n    - K1.87 = 0 V\n    - K1.87 = 12 V\n", StringComparison.Ordinal);
        var job = Job.Read(text).OrThrow();
        var told = job.Findings.Where(f => f.Code == "HS3405").ToArray();
        Assert.Equal(2, told.Length);
        Assert.Matches("^H1.1 reads −3.10 V in \"horn pressed\"; the netlist gives −6.\\d\\d V \\(", told[0].Message);
        Assert.StartsWith("K1.87 reads +12.00 V", told[1].Message, StringComparison.Ordinal);
        Assert.Contains("readings:\n  - H1.1 = -6.2 V\n", job.ToYaml(), StringComparison.Ordinal);
        Assert.Equal(job.ToYaml(), Job.Read(job.ToYaml()).OrThrow().ToYaml());
    }
}
