using Hotside.Alterations;
using Hotside.Packs.Lists;
using Hotside.Tests.Outputs;

namespace Hotside.Tests.Packs;

/// <summary>What is cut and what is bought, worked out by hand from the gallery's job files.</summary>
public sealed class MaterialTests
{
    // horn: w7 runs 0.9 m, w6 0.4 m, w9 0.2 m, w8 0.1 m; each is cut 300 mm longer.
    [Fact]
    public void A_wire_is_cut_150_mm_longer_at_each_end_thick_ones_first()
    {
        var cuts = PackJobs.Horn.Cuts;
        Assert.Equal([("w6", 0.7), ("w7", 1.2), ("w9", 0.5), ("w8", 0.4)], cuts.Select(c => (c.Wire, Math.Round(c.Cut!.Value.Meters, 6))));
        Assert.All(cuts, c => Assert.Equal(0.3, (c.Cut - c.Length)!.Value.Meters, 1e-9));
    }

    // 1.2 m · 1.15 = 1.38 m, bought by the tenth of a metre: 1.4 m.
    [Fact]
    public void Wire_is_bought_by_size_and_colour_with_15_per_cent()
    {
        var green = Assert.Single(PackJobs.Horn.Materials, m => m.Name.EndsWith("GN", StringComparison.Ordinal));
        Assert.Equal((MaterialSort.Wire, 1.4), (green.Sort, Math.Round(green.Length!.Value.Meters, 6)));
        // ASTM B258: 14 AWG is 2.08 mm².
        Assert.StartsWith("14 AWG (2.08 mm²)", green.Name, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wire_without_a_length_is_to_be_measured()
    {
        var pack = Job.Read(PackJobs.HornText.Replace("14 GN, 0.9 m", "14 GN", StringComparison.Ordinal)).OrThrow().Pack(new() { Only = ["materials"] });
        Assert.Null(pack.Cuts.Single(c => c.Wire == "w7").Cut);
        Assert.Equal(["w7"], pack.Materials.Single(m => m.Name.EndsWith("GN", StringComparison.Ordinal)).NotMeasured);
        Assert.Contains("measure w7", PackJobs.TextsOf(pack, "materials"));
    }

    [Fact]
    public void Only_new_wire_is_cut_and_what_stays_or_moves_is_not_bought()
    {
        var alteration = GalleryJobs.Read("van").Alteration;
        string[] cut = [.. PackJobs.Van.Cuts.Select(c => c.Wire)];
        Assert.All(alteration.After.Conductors, w => Assert.Equal(alteration.StateOfConductor(w.Id) is ConductorState.RunNew or ConductorState.Renewed or ConductorState.MovedAndRenewed, cut.Contains(w.Id)));
    }

    [Fact]
    public void The_other_half_of_a_wire_that_is_cut_is_old_wire_with_one_new_end()
    {
        var job = Job.Read(PackJobs.HornText.Split("alteration:")[0] + "alteration:\n  title: A connector\n  changes:\n    - fit X2: connector, 1 way\n    - \"cut w4: X2.a1 and X2.b1 as w20\"\n").OrThrow();
        var pack = job.Pack(new() { Only = ["materials", "wires"] });
        Assert.Empty(pack.Cuts);
        Assert.Equal(2, pack.Materials.Where(m => m.Sort == MaterialSort.Terminal).Sum(m => m.Count));
    }

    [Fact]
    public void Every_fuse_of_the_vehicle_has_spares_and_new_ones_are_bought()
    {
        var fuse = Assert.Single(PackJobs.Horn.Materials, m => m.Sort == MaterialSort.Fuse);
        Assert.Equal(("Fuse, 10 A", 1, 2), (fuse.Name, fuse.Count!.Value, fuse.Spares));
        // van: five of 7.5 A are new, F1, F5 and F6 of 10 A stay and F13 is new; F3 of 15 A stays and has spares all the same.
        var fuses = PackJobs.Van.Materials.Where(m => m.Sort == MaterialSort.Fuse).ToDictionary(m => m.Name, m => (m.Count, m.Spares));
        Assert.Equal((5, 2), fuses["Fuse, 7.5 A"]);
        Assert.Equal((1, 2), fuses["Fuse, 10 A"]);
        Assert.Equal((0, 2), fuses["Fuse, 15 A"]);
    }

    // What every shop sells: SAE J1284, ISO 8820-3.
    [Theory]
    [InlineData(5, "tan")]
    [InlineData(7.5, "brown")]
    [InlineData(10, "red")]
    [InlineData(15, "light blue")]
    [InlineData(20, "yellow")]
    [InlineData(25, "clear")]
    [InlineData(30, "light green")]
    [InlineData(6, "")]
    public void A_blade_fuse_has_the_colour_of_its_amperes(double amperes, string colour) => Assert.Equal(colour, FuseColour.Of(amperes));

    [Fact]
    public void Ids_are_in_the_order_in_which_a_person_looks_for_them() =>
        Assert.Equal(["F1", "F2", "F10", "w2", "w10", "w10a", "w010b"], new[] { "w10a", "F10", "w10", "F2", "w010b", "w2", "F1" }.Order(NaturalOrder.Instance));
}
