using System.Text.Json;
using System.Xml.Linq;
using Hotside.Tests.Outputs;
using Hotside.Tests.Support;

namespace Hotside.Tests.Packs;

/// <summary>The pieces of a pack: sheets as SVG, lists as CSV, all of it as JSON; and the command that writes them.</summary>
public sealed class PackPiecesTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("hotside").FullName;

    [Fact]
    public void Each_sheet_is_an_svg_and_each_list_a_csv()
    {
        string path = Path.Combine(folder, "made", "here");
        PackJobs.Horn.SavePieces(path);
        foreach (var sheet in PackJobs.Horn.Sheets)
            Assert.Equal("svg", XDocument.Load(Path.Combine(path, sheet.Name + ".svg")).Root!.Name.LocalName);
        foreach (string list in new[] { "changes", "materials", "cuts", "wires", "labels", "fuses" })
            Assert.True(File.ReadLines(Path.Combine(path, list + ".csv")).Count() > 1, list);
        string[] wires = File.ReadAllLines(Path.Combine(path, "wires.csv"));
        Assert.Equal("no.,wire,from,to,size,colour,length in m,loom,change,terminal from,terminal to", wires[0]);
        Assert.Contains("7,w7,K1.87,H1.1,14 AWG,GN,0.9,,run new,blade 6.3 mm,", wires);
        Assert.Equal(1 + (2 * GalleryJobs.Read("horn").Alteration.After.Conductors.Length), File.ReadAllLines(Path.Combine(path, "labels.csv")).Length);
    }

    [Fact]
    public void The_json_names_its_contract_and_says_what_the_lists_say()
    {
        using var json = JsonDocument.Parse(PackJobs.Horn.ToJson());
        var root = json.RootElement;
        Assert.Equal("hotside-pack/1", root.GetProperty("schema").GetString());
        Assert.Equal(PackJobs.Horn.Sheets.Length, root.GetProperty("sheets").GetInt32());
        Assert.Equal(PackJobs.Horn.Pages.Select(p => p.Key), root.GetProperty("pages").EnumerateArray().Select(p => p.GetProperty("key").GetString()!));
        Assert.Equal(10, root.GetProperty("changes").GetArrayLength());
        Assert.Equal(1.2, root.GetProperty("cuts").EnumerateArray().Single(c => c.GetProperty("wire").GetString() == "w7").GetProperty("cut").GetDouble(), 1e-9);
    }

    [Fact]
    public void The_command_writes_the_document_and_its_pieces()
    {
        File.WriteAllText(Path.Combine(folder, "horn.yaml"), PackJobs.HornText);
        var run = ToolRun.In(folder, null, "pack", "horn.yaml", "-o", "out", "--page", "Letter", "--words", "uk", "--only", "cover", "wires", "labels");
        Assert.Equal((0, ""), (run.Code, run.Error));
        Assert.Equal(["01-cover.svg", "02-labels.svg", "labels.csv", "wires.csv", "work-pack.json", "work-pack.pdf"], Directory.GetFiles(Path.Combine(folder, "out")).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_command_refuses_a_page_that_there_is_not()
    {
        File.WriteAllText(Path.Combine(folder, "horn.yaml"), PackJobs.HornText);
        Assert.Equal(64, ToolRun.In(folder, null, "pack", "horn.yaml", "--only", "labels", "nothing").Code);
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);
}
