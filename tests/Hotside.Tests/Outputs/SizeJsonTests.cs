using System.Text.Json;
using Hotside.Faults;
using Hotside.Tests.Sizing;

namespace Hotside.Tests.Outputs;

public class SizeJsonTests
{
    private static readonly Job Lamps = Job.Read(TwoLamps.Text()).OrThrow();

    [Fact]
    public void Sizes_as_json_are_those_of_the_job()
    {
        using var json = JsonDocument.Parse(SizeTable.Of(Lamps).ToJson());
        Assert.Equal("hotside-sizes/1", json.RootElement.GetProperty("schema").GetString());
        var after = json.RootElement.GetProperty("after");
        var wires = after.GetProperty("wires").EnumerateArray().ToArray();
        Assert.Equal(Lamps.Sizes.After.Conductors.Select(c => c.Conductor.Id), wires.Select(w => w.GetProperty("wire").GetString()!));
        foreach (var (sizing, wire) in Lamps.Sizes.After.Conductors.Zip(wires))
        {
            Assert.Equal(sizing.Current.Amperes, wire.GetProperty("current").GetDouble(), 1e-4);
            Assert.Equal(sizing.ProtectedBy, wire.GetProperty("protectedBy").EnumerateArray().Select(p => p.GetString()!));
            Assert.Equal(sizing.Rules.Length, wire.GetProperty("rules").GetArrayLength());
            Assert.Equal(sizing.Ampacity is not null, wire.TryGetProperty("mayCarry", out _));
        }
        Assert.Equal(Lamps.Sizes.After.Fuses.Select(f => f.Part.Id), after.GetProperty("fuses").EnumerateArray().Select(f => f.GetProperty("fuse").GetString()!));
        Assert.Equal(Lamps.Sizes.After.Findings.Select(f => f.Code), after.GetProperty("findings").EnumerateArray().Select(f => f.GetProperty("code").GetString()!));
    }

    // The worked example: 166.98 A at the junction, cleared by F1 within a tenth of a second (ISO 8820-3).
    [Fact]
    public void Faults_as_json_say_what_dies_and_which_fuse_opens_within_what_time()
    {
        using var json = JsonDocument.Parse(FaultTable.Of(Lamps, "w3").ToJson());
        Assert.Equal("hotside-faults/1", json.RootElement.GetProperty("schema").GetString());
        Assert.Contains("manual", json.RootElement.GetProperty("caution").GetString()!, StringComparison.Ordinal);
        var faults = json.RootElement.GetProperty("after").GetProperty("faults").EnumerateArray().ToArray();
        Assert.Equal(["open", "bad-joint", "short-at-first-end", "short-at-second-end"], faults.Select(f => f.GetProperty("fault").GetString()!));
        var told = CircuitFaults.OfConductor(Lamps.Sizes.After, "w3").Faults;
        Assert.All(told.Zip(faults), f => Assert.Equal(f.First.Loads.Select(l => l.Load), f.Second.GetProperty("loads").EnumerateArray().Select(l => l.GetProperty("load").GetString()!)));
        var opens = faults[3].GetProperty("opens")[0];
        Assert.Equal("F1", opens.GetProperty("part").GetString());
        Assert.InRange(opens.GetProperty("latest").GetDouble(), 0, 0.1);
        Assert.Equal("cleared", faults[3].GetProperty("end").GetString());
    }

    [Fact]
    public void A_setting_that_only_one_circuit_has_is_told_for_that_one()
    {
        string text = "hotside: 1\nsystem: 12 V, negative ground, sizes in AWG\nparts:\n  G1: battery, 12 V, 60 Ah\n  F1: fuse, 10 A\n  S1: switch\n  E1: lamp, 12 V, 21 W, 2 on chassis\nwires:\n  w1: G1.neg to chassis, 4 BK, 0.3 m\n  w2: G1.pos to F1.1, 14 RD, 0.1 m\n"
            + "  w3: F1.2 to S1.1, 14 RD, 1 m\n  w4: S1.2 to E1.1, 14 RD, 1 m\nalteration:\n  changes:\n    - fit E2: lamp, 12 V, 21 W, 2 on chassis\n    - run w5: S1.2 to E2.1, 14 RD, 1 m\n";
        var job = Job.Read(text).OrThrow();
        using var json = JsonDocument.Parse(FaultTable.Of(job, "w3", "E2 alone").ToJson());
        Assert.False(json.RootElement.TryGetProperty("before", out _));
        Assert.Equal(4, json.RootElement.GetProperty("after").GetProperty("faults").GetArrayLength());
        Assert.Throws<ArgumentException>(() => FaultTable.Of(job, "w3", "no such setting"));
    }
}
