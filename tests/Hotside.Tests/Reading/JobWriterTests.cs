using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Kinds;
using Hotside.Reading;
using Hotside.Tests.Support;

namespace Hotside.Tests.Reading;

public class JobWriterTests
{
    public static TheoryData<string> Files => [.. JobFiles.All];

    [Theory]
    [MemberData(nameof(Files))]
    public void A_job_that_is_written_and_read_again_is_the_same(string file)
    {
        var first = JobFiles.Read(file);
        string text = Write(first);
        var second = JobReader.Read("again.yaml", text, Catalogue.Standard, _ => null);
        Assert.Empty(second.Diagnostics.Where(d => d.Severity > Severity.Note).Select(d => d.ToString()));
        Alteration was = first.Alteration!, now = second.Alteration!;
        Assert.Equal(JobWriter.Text(was.Before), JobWriter.Text(now.Before));
        // Changes are written in the order of work, so what they bring may stand in another order.
        Assert.Equal(Lines(was.After), Lines(now.After));
        Assert.Equal(was.Changes.Select(Text), now.Changes.Select(Text));
        Assert.Equal(text, Write(second));
    }

    [Fact]
    public void Map_form_and_line_form_are_the_same_job()
    {
        JobReading line = JobFiles.Read("horn.yaml"), map = JobFiles.Read("small/14-map-form.yaml");
        // Title and title block are other ones on purpose.
        Assert.Equal(Write(line with { Title = "", TitleBlock = [] }), Write(map with { Title = "", TitleBlock = [] }));
    }

    [Theory]
    [InlineData("30, battery feed")]
    [InlineData("Lamp #2")]
    [InlineData("Charge: main")]
    [InlineData("'quoted'")]
    [InlineData("Lamp on dash")]
    [InlineData("Hands free")]
    [InlineData("in the boot")]
    [InlineData("at rest")]
    [InlineData("because")]
    [InlineData("6 V")]
    [InlineData("coil 3 A")]
    [InlineData("A = B")]
    [InlineData("- dash")]
    [InlineData("wound")]
    [InlineData("Trompe é 汽笛 🚗 صوت")]
    [InlineData("{braces} [brackets] & * ! | > % @ `")]
    public void Any_name_comes_back_as_it_was(string name)
    {
        var builder = new CircuitBuilder(UnitsNet.ElectricPotential.FromVolts(6), Ground.Negative)
            .Part("M1", Kind.Motor, new() { Name = name })
            .Part("G1", Kind.Battery)
            .Wire("w1", "G1.pos", "M1.1", new() { Name = name })
            .Wire("w2", "M1.2", "G1.neg");
        string text = JobWriter.Text(builder.Build());
        var read = JobReader.Read("job.yaml", text, Catalogue.Standard, _ => null);
        Assert.Empty(read.Diagnostics.Where(d => d.Severity >= Severity.Error).Select(d => d.ToString()));
        Assert.Equal(name, read.Alteration!.Before.FindPart("M1")!.Name);
        Assert.Equal(name, read.Alteration!.Before.FindConductor("w1")!.Wire.Name);
    }

    private static string[] Lines(Circuit circuit) => [.. JobWriter.Text(circuit).Split('\n').Order(StringComparer.Ordinal)];

    private static string Write(JobReading reading) => JobWriter.Write(reading.Title, reading.TitleBlock, reading.Alteration!);

    private static string Text(Change change) => $"{change.Number} {change.Reason}: " + string.Join("; ", change.Acts.Select(a => a switch
    {
        Move move => $"move {string.Join(", ", move.Ends.Select(e => $"{e.From} to {e.To}"))} {move.IsRenewed}",
        Cut cut => $"cut {cut.First} and {cut.Second}",
        Work work => "do " + work.Sentence,
        Replace replace => "replace " + replace.Reversed,
        _ => a.GetType().Name,
    } + " " + string.Join(", ", a.Items)));
}
