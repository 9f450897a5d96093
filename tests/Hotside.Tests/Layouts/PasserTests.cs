using Hotside.Layouts;
using Hotside.Layouts.Passes;
using Hotside.Symbols;

namespace Hotside.Tests.Layouts;

/// <summary>A conductor is seen to end at its own pin.</summary>
public class PasserTests
{
    // The fuse box's wire is on the battery's pole; on one trunk it would leave at the relay's stud.
    [Fact]
    public void A_wire_of_the_battery_does_not_seem_to_hang_on_the_relay()
    {
        var drawn = LaidOutJob.OfGallery("starter");
        int pole = drawn.Pin("G1", "neg").X;
        Assert.All(LaidOutJob.Steps(drawn.Line("w6 (was)")).Intersect(LaidOutJob.Steps(drawn.Line("w1"))), s => Assert.Equal(pole, s.X));
    }

    // From ignition switch or reducer to the first gauge, past the three others.
    [Fact]
    public void A_feed_of_the_first_gauge_does_not_seem_to_hang_on_the_last()
    {
        var drawn = LaidOutJob.OfGallery("gauges");
        int first = drawn.Pin("P1", "I").X;
        var chain = drawn.Plan.Input.Wires.Zip(drawn.Layout.Wires).Where(w => w.First.From.Box.StartsWith('P') && w.First.To.Box.StartsWith('P')).SelectMany(w => LaidOutJob.Steps(w.Second.Points)).ToHashSet();
        var feeds = drawn.Plan.Input.Wires.Zip(drawn.Layout.Wires).Where(w => new[] { w.First.From.Box, w.First.To.Box } is var ends && ends.Contains("P1") && (ends.Contains("S1") || ends.Contains("N1"))).ToArray();
        Assert.Equal(2, feeds.Length);
        Assert.All(feeds.SelectMany(f => LaidOutJob.Steps(f.Second.Points)).Where(chain.Contains), s => Assert.Equal(first, s.X));
    }

    // In an overlay each view shows both circuits; what only one of them has is joined with nothing in the other.
    [Fact]
    public void Nets_that_the_other_circuit_lacks_are_not_one_net_there()
    {
        LineEnd feed = new(EndKind.Feed, -1, -1), chassis = new(EndKind.Chassis, -1, -1);
        Net Alone(int id) => new(id, SeenIn.Before, [id], [], [], (id, -1)) { RunsApart = id == 0 };
        var netlist = new Netlist([], [], [new(0, "w1", SeenIn.Before, feed, chassis), new(1, "w2", SeenIn.Before, feed, chassis)], [], [Alone(0), Alone(1)], []).Overlaid();
        Assert.Empty(Passers.Crossing(netlist, [new("w1", [(5, 0), (5, 10)]), new("w2", [(0, 5), (10, 5)])]));
    }
}
