using Hotside.Alterations;
using Hotside.Checks;
using Hotside.Checks.Protection;
using Hotside.Circuits;
using Hotside.Kinds;
using Hotside.Sizing;
using Hotside.Studies;
using Hotside.Tests.Reading;
using Hotside.Tests.Studies;
using Hotside.Tests.Support;

namespace Hotside.Tests.Checks;

/// <summary>What holds of all checks, and some against figures from outside.</summary>
public class CheckLawTests
{
    // What people plug in, and a stamped plus, are made for one polarity: these two mind it.
    private static readonly string[] Polar = ["HS3360", "HS3384"];

    public static TheoryData<string> Files => [.. JobLawTests.Files.Select(f => f.Data).Where(f => !f.Contains("more/", StringComparison.Ordinal))];

    public static TheoryData<string> Kinds => [.. Catalogue.Standard.Kinds.Where(k => !k.HoldsParts && !k.TakesAnyTerminal).Select(k => k.Id)];

    private static string[] Told(Circuit circuit)
    {
        var study = Study.Of(new Alteration("", circuit, circuit, []));
        return [.. CheckList.Run(study, new(() => SizeStudy.Of(study))).Where(d => !Polar.Contains(d.Code)).Select(d => $"{d.Code} {string.Join(' ', d.Items.Order(StringComparer.Ordinal))}").Order(StringComparer.Ordinal)];
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void The_other_polarity_is_told_the_same(string file)
    {
        var job = Job.Read(file.StartsWith("jobs/", StringComparison.Ordinal) ? JobFiles.Text(file["jobs/".Length..]) : File.ReadAllText(Repository.Path(file.Split('/')))).OrThrow();
        foreach (var circuit in new[] { job.Alteration.Before, job.Alteration.After }.Where(c => c.System.Ground != Ground.Isolated))
            Assert.Equal(Told(circuit), Told(JobLawTests.Mirrored(circuit)));
    }

    // Nothing that can be written may stop the list of findings: each kind with a lamp at every terminal, the polarity turned and the volts doubled.
    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_kind_can_be_checked_before_and_after_a_conversion(string id)
    {
        var kind = Catalogue.Standard.Find(id)!;
        var terminals = (kind.Ways is null ? kind : kind.WithWays(3)).Terminals;
        string lamps = string.Concat(terminals.Select((t, i) => t.Side == TerminalSide.Top ? "" : $"  E{i}: lamp, 6 V, 5 W, 2 on chassis\n"));
        string wires = string.Concat(terminals.Select((t, i) => $"  w{i}: Z1.{t.Name} to {(t.Side == TerminalSide.Top ? "X1" : $"E{i}.1")}, 16 BK, 1 m\n"));
        var job = Job.Read($"hotside: 1\nsystem: 6 V, positive ground, sizes in AWG\nparts:\n  G1: battery, 6 V\n  X1: feed-rail\n  Z1: {id}{(kind.Ways is null ? "" : ", 3 ways")}\n{lamps}wires:\n  wp: G1.pos to chassis\n  wn: G1.neg to X1\n{wires}alteration:\n  system: 12 V, negative ground\n  changes:\n    - replace G1 reversed: battery, 12 V\n").OrThrow();
        Assert.All(job.Findings, f => Assert.DoesNotContain("NaN", f.Message, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("system: 12 V, negative ground\nparts:\n  E1: lamp, 12 V\nwires:\n  w1: E1.1 to chassis\n")]
    [InlineData("system: 12 V, negative ground\nparts:\n  G1: battery, 12 V\nwires:\n  w1: G1.pos to chassis\n")]
    [InlineData("system: 12 V, negative ground\nparts:\n  G1: battery, 12 V\nwires:\n  w1: G1.pos to chassis\n  w2: G1.neg to chassis\n")]
    [InlineData("system: 12 V, negative ground\nparts:\n  G1: alternator, 12 V\nwires:\n  w1: G1.B+ to chassis\n")]
    public void A_circuit_that_is_none_stops_no_check(string text) => Assert.NotEmpty(Job.Read("hotside: 1\n" + text).OrThrow().Findings);

    [Fact]
    public void Generated_circuits_stop_no_check()
    {
        for (int seed = 0; seed < 60; seed++)
            Assert.NotNull(Told(TestCircuit.Read(GeneratedCircuit.Of(seed))));
    }

    [Theory]
    [InlineData("2", false)]
    [InlineData("4", false)]
    [InlineData("6", true)]
    // 250 A over 2.1 m: 0.27 V in 2 AWG, 0.43 V in 4 AWG, 0.68 V in 6 AWG (ASTM B258, IEC 60028); TM 10-3930-671-24 allows 0.20 V for each 100 A, here 0.50 V.
    public void A_starter_cable_is_judged_by_the_rule_of_the_handbook(string gauge, bool isTold)
    {
        var job = Job.Read($"hotside: 1\nsystem: 12 V, negative ground, sizes in AWG\nparts:\n  G1: battery, 12 V, 90 Ah\n  engine: metal\n  S1: foot-starter-switch, 1 on G1.pos\n  M1: starter, 12 V, 250 A, case on engine\nwires:\n  w1: S1.2 to M1.1, {gauge} RD, 2.1 m\n  w2: engine to chassis, 2/0 braid, 0.3 m\n  w3: G1.neg to chassis, 2/0 BK, 0.3 m\n").OrThrow();
        Assert.Equal(isTold, job.Findings.Any(f => f.Code == "HS3339"));
        Assert.DoesNotContain(job.Findings, f => f.Code == "HS3301");
    }

    // Worked by hand, Ohm's law: 12.6 V over 8 mΩ of battery, 1.3370 mΩ (10 AWG, 0.4 m), 7.7 mΩ of a 10 A fuse, 0.2494 mΩ (4 AWG, 0.3 m) is 729 A.
    [Fact]
    public void The_current_into_a_short_circuit_behind_a_fuse_is_what_Ohm_says()
    {
        var job = Job.Read("hotside: 1\nsystem: 12 V, negative ground, sizes in AWG\nparts:\n  G1: battery, 12 V, 60 Ah, 8 mohm\n  F1: fuse, 10 A\n  S1: switch\n  E1: lamp, 12 V, 21 W, 2 on chassis\nwires:\n  w1: G1.pos to F1.1, 10 RD, 0.4 m\n  w2: F1.2 to S1.1, 14 RD, 1 m\n  w3: S1.2 to E1.1, 14 RD, 1 m\n  w8: G1.neg to chassis, 4 BK, 0.3 m\n").OrThrow();
        CheckedCircuit circuit = new(job.Study.After, new(() => job.Sizes.After), []);
        Assert.Equal(12.6 / 0.0172864, ShortCircuitCurrent.Behind(circuit, job.Alteration.After.FindPart("G1")!, job.Alteration.After.FindPart("F1")!), 0);
    }

    private const string TwoBatteries = "hotside: 1\nsystem: 12 V, negative ground, sizes in AWG\nparts:\n  G1: battery, 12 V, 60 Ah\n  G2: battery, 12 V, 60 Ah\n  engine: metal\n  S1: foot-starter-switch\n  M1: starter, 12 V, 150 A, case on engine\n";

    private const string Grounds = "  w7: G1.neg to chassis, 2 BK, 0.3 m\n  w8: G2.neg to chassis, 2 BK, 0.3 m\n  w9: engine to chassis, 2 braid, 0.3 m\n";

    [Fact]
    public void Batteries_that_a_selector_puts_on_the_starter_need_no_fuse_there() => Assert.DoesNotContain(
        Job.Read(TwoBatteries + "  Q1: battery-selector\nwires:\n  w1: G1.pos to Q1.1, 2 RD, 0.3 m\n  w2: G2.pos to Q1.2, 2 RD, 0.3 m\n  w3: Q1.C to S1.1, 2 RD, 0.5 m\n  w4: S1.2 to M1.1, 2 RD, 0.5 m\n" + Grounds).OrThrow().Findings,
        f => f.Code == "HS3301");

    [Fact]
    public void A_wire_from_one_battery_to_another_needs_a_fuse() => Assert.Contains(
        Job.Read(TwoBatteries + "wires:\n  w1: G1.pos to S1.1, 2 RD, 0.3 m\n  w2: S1.2 to M1.1, 2 RD, 0.5 m\n  w3: G2.pos to G1.pos, 8 RD, 3 m\n" + Grounds).OrThrow().Findings,
        f => f.Code == "HS3301" && f.Items.Contains("w3"));
}
