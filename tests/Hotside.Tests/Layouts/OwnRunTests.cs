using Hotside.Layouts;
using Hotside.Symbols;
using Hotside.Tests.Support;

namespace Hotside.Tests.Layouts;

/// <summary>A reader finds out from the drawing alone between which pins a wire lies: what shares a stretch with it shares a pin or a joint with it.</summary>
public class OwnRunTests
{
    public static TheoryData<string> Files => [.. JobFiles.All];

    [Theory]
    [MemberData(nameof(Files))]
    public void No_stretch_is_of_wires_that_share_no_pin(string file)
    {
        var drawn = LaidOutJob.OfTests(file);
        // Of the van's rear body, where each lamp hangs on the next by two wires, some would cross their own net.
        Assert.InRange(Mixed(drawn).Count, 0, file == "van.yaml" ? 4 : 0);
    }

    // The splice feeds relay and switch; the relay's jumper is on its own stud, not on the splice.
    [Fact]
    public void A_jumper_leaves_at_its_pin()
    {
        var drawn = LaidOutJob.Of("""
            hotside: 1
            system: 12 V, negative ground, sizes in mm²
            parts:
              G1: battery, 12 V, 60 Ah
              X1: splice, Feed
              K1: relay, 12 V
              S1: push-button
              S2: switch
              H1: horn, 12 V, 2 A
              E1: lamp, 12 V, 5 W
            wires:
              w1: G1.pos to X1, 4 RD, 1 m
              w2: G1.neg to chassis, 4 BK, 1 m
              w3: X1 to S2.1, 1 RD, 1 m
              w4: S2.2 to E1.1, 1 RD, 1 m
              w5: E1.2 to chassis, 1 BK, 1 m
              w6: X1 to K1.30, 1.5 RD, 1 m
              w7: K1.30 to K1.86, 1 RD, 0.1 m
              w8: K1.85 to S1.1, 1 BK, 1 m
              w9: S1.2 to chassis, 1 BK, 1 m
              w10: K1.87 to H1.1, 1.5 GN, 1 m
              w11: H1.2 to chassis, 1.5 BK, 1 m
            """);
        Assert.Empty(Mixed(drawn));
        int stud = drawn.Pin("K1", "30").X;
        Assert.All(LaidOutJob.Steps(drawn.Line("w7")).Intersect(LaidOutJob.Steps(drawn.Line("w6"))), s => Assert.Equal(stud, s.X));
    }

    // Sets of wires that have a stretch in common and no end that all of them have.
    private static HashSet<string> Mixed(LaidOutJob drawn)
    {
        var wires = drawn.Plan.Input.Wires;
        var mixed = new HashSet<string>(StringComparer.Ordinal);
        foreach (var view in new[] { SeenIn.Before, SeenIn.After })
        {
            var on = Enumerable.Range(0, wires.Length).Where(i => (wires[i].Seen & view) != 0).SelectMany(i => LaidOutJob.Steps(drawn.Layout.Wires[i].Points).Distinct().Select(s => (s, i))).ToLookup(p => p.s, p => wires[p.i]);
            foreach (var step in on.Where(s => s.Skip(1).Any()))
                if (!Ends(step.First()).Any(e => step.All(w => Ends(w).Contains(e)))) mixed.Add(string.Join(' ', step.Select(w => w.Conductor)));
        }
        return mixed;
    }

    private static LayoutEnd[] Ends(LayoutWire wire) => [wire.From, wire.To];
}
