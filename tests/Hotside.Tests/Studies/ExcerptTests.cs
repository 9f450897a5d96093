using Hotside.Circuits;
using Hotside.Studies;
using Hotside.Studies.Excerpts;
using Hotside.Tests.Outputs;
using Hotside.Tests.Support;

namespace Hotside.Tests.Studies;

/// <summary>What belongs to a load: enough that its verdict is the same without all the rest, and no more than a hand picks from the diagram.</summary>
public sealed class ExcerptTests
{
    public static TheoryData<string> Files => [.. JobFiles.All];

    // The study, which knows nothing of excerpts, is asked again about what is left.
    [Theory]
    [MemberData(nameof(Files))]
    public void A_load_with_what_belongs_to_it_and_nothing_else_has_the_same_verdict(string file)
    {
        if (JobFiles.Read(file).Alteration is not { } alteration) return;
        foreach (var circuit in new[] { alteration.Before, alteration.After }.Distinct())
        {
            var study = CircuitStudy.Of(circuit);
            foreach (var load in study.Loads.Where(l => !l.Element.IsInternal && l.AlsoFedBy.IsEmpty && !l.IsInRace))
            {
                var excerpt = Excerpt.Of(study, [load]);
                var alone = CircuitStudy.Of(excerpt.From(circuit, excerpt)).Load(load.Name);
                Assert.Equal((load.Name, load.Side, load.Control.ToString(), string.Join(",", load.Chain)), (alone.Name, alone.Side, alone.Control.ToString(), string.Join(",", alone.Chain)));
                Assert.All(load.Paths.SelectMany(p => p.HotWay.Concat(p.GroundWay)).Where(i => i != "chassis"), i => Assert.Contains(i, excerpt.Items));
            }
        }
    }

    // Picked by hand from the van's wiring: the feed comes over the starter relay's stud, main fuse and ammeter; no lamp, no charging, no starter.
    [Theory]
    [InlineData("H1", true, "F0 F4 G1 H1 K2 P1 S7 X1 w1 w2 w24 w25 w26 w7 w8 w9")]
    [InlineData("H1", false, "F0 F4 G1 H1 K2 K5 P1 S7 X1 w1 w2 w24 w25 w26 w7 w75 w76 w77 w8 w9")]
    [InlineData("E1.high", true, "E1 F0 G1 K2 P1 S3 S4 X1 w1 w2 w29 w30 w31 w35 w7 w8 w9")]
    [InlineData("E1.high", false, "E1 F0 F13 F8 G1 K2 K6 P1 S3 S4 X1 w1 w2 w29 w30 w31 w35 w7 w79 w8 w81 w9")]
    [InlineData("M1", true, "G1 K2 M1 S2 engine w1 w2 w3 w4 w5 w6")]
    [InlineData("P2", false, "F0 F12 F2 G1 K2 N1 P1 P2 R2 S1 X1 X2 w1 w13 w14 w18 w2 w21 w7 w78 w8 w9")]
    public void Nothing_else_is_picked(string load, bool isBefore, string expected)
    {
        var job = GalleryJobs.Read("van");
        var study = isBefore ? job.Study.Before : job.Study.After;
        Assert.Equal(expected, string.Join(' ', Excerpt.Of(study, study.LoadsNamed(load)).Items.Order(StringComparer.Ordinal)));
    }

    [Fact]
    public void What_is_passed_on_one_terminal_only_is_a_stud()
    {
        var study = GalleryJobs.Read("van").Study.Only(["H1"]);
        foreach (var circuit in new[] { study.Alteration.Before, study.Alteration.After })
            Assert.Single(circuit.FindPart("K2")!.Kind.Terminals);
        Assert.Equal(3, GalleryJobs.Read("van").Study.Only(["M1"]).Alteration.Before.FindPart("K2")!.Kind.Terminals.Length);
    }

    // A change of many parts is told of those that are shown, under the number that it has in the whole list.
    [Fact]
    public void The_changes_are_those_of_what_is_shown()
    {
        var job = GalleryJobs.Read("van");
        var only = job.Study.Only(["E1"]).Alteration;
        var lamps = only.Changes.Single(c => c.Acts.Any(a => a.Items.Contains("E1")));
        Assert.Equal(["E1"], lamps.Acts.SelectMany(a => a.Items));
        Assert.Equal(job.Alteration.NumbersOf("E1"), [lamps.Number]);
        Assert.All(only.Changes, c => Assert.Contains(c.Acts.SelectMany(a => a.Items), i => IsIn(only.Before, i) || IsIn(only.After, i)));
        Assert.Same(job.Alteration, only.Whole);
    }

    [Theory]
    [InlineData("H2", "did you mean \"H1\"?")]
    [InlineData("S7", "S7 is a part, but no load")]
    public void An_unknown_load_is_answered_with_the_nearest(string name, string said) =>
        Assert.Contains(said, Assert.Throws<ArgumentException>(() => GalleryJobs.Read("horn").Study.Only([name])).Message + Assert.Throws<ArgumentException>(() => GalleryJobs.Read("van").Study.Only([name == "H2" ? "H12" : name])).Message, StringComparison.Ordinal);

    private static bool IsIn(Circuit circuit, string id) => circuit.FindPart(id) is not null || circuit.FindConductor(id) is not null;
}
