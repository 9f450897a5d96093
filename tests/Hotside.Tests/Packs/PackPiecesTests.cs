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

    // F1 is in the lead of the machine, which passes a way of F2; F3 is a spare on the machine's stud, and F2's other way feeds a lamp.
    [Fact]
    public void A_fuse_is_charged_through_where_pulling_it_parts_machine_and_battery()
    {
        var fuses = FusesOf("""
            hotside: 1
            title: A charge lead
            system: 12 V, negative ground
            parts:
              G1: battery, 12 V, 60 Ah
              G2: alternator-one-wire, 14 V, 45 A
              F1: fuse, 60 A
              F2: fuse-block, 2 ways, 60 A
              F3: fuse, 10 A
              S1: switch
              E1: lamp, 12 V, 21 W
            wires:
              w1: G1.pos to F2.30, 10 mm2, 0.5 m
              w2: G1.neg to chassis, 10 mm2, 0.5 m
              w3: F2.1 to F1.1, 10 mm2, 0.5 m
              w4: F1.2 to G2.B+, 10 mm2, 0.5 m
              w5: G2.B+ to F3.1, 1.5 mm2, 0.5 m
              w6: F2.2 to S1.1, 1.5 mm2, 1 m
              w7: S1.2 to E1.1, 1.5 mm2, 1 m
              w8: E1.2 to chassis, 1.5 mm2, 0.3 m
            """, "charged");
        Assert.Equal(["F1: G2", "F2.fuse1: G2", "F2.fuse2: ", "F3: "], fuses);
    }

    // A second lead past the fuse: pulling it parts nothing.
    [Fact]
    public void A_fuse_beside_another_way_charges_nothing_alone() => Assert.Equal(["F1: ", "F2: "], FusesOf("""
        hotside: 1
        title: Two charge leads
        system: 12 V, negative ground
        parts:
          G1: battery, 12 V, 60 Ah
          G2: alternator-one-wire, 14 V, 45 A
          F1: fuse, 60 A
          F2: fuse, 60 A
        wires:
          w1: G1.pos to F1.1, 10 mm2, 0.5 m
          w2: G1.neg to chassis, 10 mm2, 0.5 m
          w3: F1.2 to G2.B+, 10 mm2, 0.5 m
          w4: G1.pos to F2.1, 10 mm2, 0.5 m
          w5: F2.2 to G2.B+, 10 mm2, 0.5 m
        """, "charged"));

    [Fact]
    public void What_a_relay_feeds_is_dead_with_a_fuse_however_many_relays_lie_between()
    {
        var fuses = FusesOf("""
            hotside: 1
            title: A relay that feeds another's coil
            system: 12 V, negative ground
            parts:
              G1: battery, 12 V, 60 Ah
              X1: feed-rail, Feed
              F1: fuse, 5 A, 1 on X1
              F2: fuse, 5 A, 1 on X1
              F3: fuse, 5 A, 1 on X1
              F4: fuse, 15 A, 1 on X1
              S1: switch
              K1: relay
              K2: relay
              K3: relay
              E1: lamp, 12 V, 55 W
            wires:
              w1: G1.pos to X1, 10 mm2, 0.5 m
              w2: G1.neg to chassis, 10 mm2, 0.5 m
              w3: F1.2 to S1.1, 1.5 mm2, 1 m
              w4: S1.2 to K1.86, 1.5 mm2, 1 m
              w5: K1.85 to chassis, 1.5 mm2, 0.3 m
              w6: F2.2 to K1.30, 1.5 mm2, 1 m
              w7: K1.87 to K2.86, 1.5 mm2, 1 m
              w8: K2.85 to chassis, 1.5 mm2, 0.3 m
              w9: F3.2 to K2.30, 1.5 mm2, 1 m
              w10: K2.87 to K3.86, 1.5 mm2, 1 m
              w11: K3.85 to chassis, 1.5 mm2, 0.3 m
              w12: F4.2 to K3.30, 2.5 mm2, 1 m
              w13: K3.87 to E1.1, 2.5 mm2, 1 m
              w14: E1.2 to chassis, 2.5 mm2, 0.3 m
            """, "dead");
        Assert.All(fuses, f => Assert.Contains("E1", f, StringComparison.Ordinal));
    }

    private static string[] FusesOf(string job, string list)
    {
        using var json = JsonDocument.Parse(Job.Read(job).OrThrow().Pack(new() { Only = ["fuses"] }).ToJson());
        return [.. json.RootElement.GetProperty("fuses").EnumerateArray().Select(f => $"{f.GetProperty("fuse").GetString()}: {string.Join(", ", f.GetProperty(list).EnumerateArray().Select(t => t.GetString()))}")];
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

    // Of a block with one feed a path tells the block alone: what dies is what pulling the one fuse parts from the battery. Ways 3 and 4 feed nothing.
    [Fact]
    public void The_fuse_chart_tells_what_dies_with_each_way_of_a_block()
    {
        var job = Job.Read("""
            hotside: 1
            title: A block
            system: 12 V, negative ground, sizes in AWG
            parts:
              G1: battery, 12 V, 60 Ah
              F1: fuse-block, 4 ways, 10 A
              S1: switch, 10 A
              E1: lamp, 12 V, 21 W, 2 on chassis
              H1: horn, 12 V, 4 A
              S2: push-button, 10 A
            wires:
              w1: G1.pos to F1.30, 12 RD, 0.3 m
              w2: G1.neg to chassis, 2 BK, 0.4 m
              w3: F1.1 to S1.1, 16 RD, 1 m
              w4: S1.2 to E1.1, 16 BN, 1 m
              w5: F1.2 to H1.1, 16 RD, 1 m
              w6: H1.2 to S2.1, 16 YE, 1 m
              w7: S2.2 to chassis, 16 BK, 1 m
            alteration:
              changes:
                - renew w7: 14 BK
            """).OrThrow();
        using var json = JsonDocument.Parse(job.Pack(new() { Only = ["fuses"] }).ToJson());
        string[] dead = [.. json.RootElement.GetProperty("fuses").EnumerateArray().Select(f => f.TryGetProperty("dead", out var d) ? string.Join(", ", d.EnumerateArray().Select(e => e.GetString()![..2])) : "")];
        Assert.Equal(["E1", "H1", "", ""], dead);
    }
}
