using System.Collections.Immutable;
using Hotside.Drawings.Plans;
using Hotside.Layouts;
using Hotside.Layouts.Passes;
using Hotside.Studies;
using Hotside.Symbols;
using Hotside.Symbols.Texts;
using Hotside.Tests.Outputs;

namespace Hotside.Tests.Layouts;

/// <summary>Where moved conductors lay can be told apart, and leaves the way to what is there.</summary>
public sealed class OldPlaceTests
{
    public static TheoryData<string> Jobs => [.. GalleryJobs.Names.Where(n => n != "van")];

    [Theory]
    [MemberData(nameof(Jobs))]
    public void No_two_old_places_share_a_horizontal(string job)
    {
        var plan = Overlaid(GalleryJobs.Read(job));
        var layout = Layout.Of(plan.Input, new());
        // On the trunk of a splice or rail all that hangs there lies on it.
        var lines = OldPlaces.Of(plan.Input).Where(i => new[] { plan.Input.Wires[i].From, plan.Input.Wires[i].To }.All(e => !plan.Input.Boxes.Any(b => b.Id == e.Box && b.IsPoint))).Order().Select(i => Horizontals(layout.Wires[i])).ToArray();
        foreach (var (one, i) in lines.Select((l, i) => (l, i)))
            foreach (var other in lines.Skip(i + 1)) Assert.Empty(one.Intersect(other));
    }

    [Fact]
    public void What_moves_from_one_pin_to_several_is_apart_and_what_moves_together_is_not()
    {
        Assert.Equal(["w5 (was)", "w6 (was)", "w7 (was)", "w8 (was)"], Apart(GalleryJobs.Read("headlamps")));
        Assert.Empty(Apart(Job.Read(Together("K1.87")).OrThrow()));
        Assert.Equal(["w5 (was)", "w6 (was)"], Apart(Job.Read(Together("K1.30")).OrThrow()));
    }

    [Fact]
    public void Each_view_by_itself_has_no_old_places()
    {
        var alteration = GalleryJobs.Read("headlamps").Alteration;
        Assert.Empty(OldPlaces.Of(DrawingPlan.Of(alteration, Study.Of(alteration), Lettering.Normal, Hotside.Wording.Vocabulary.Of(Words.American)).Input));
    }

    // It keeps clear of everything, and what it crosses counts once instead of twice.
    [Fact]
    public void What_is_gone_counts_half()
    {
        LineEnd feed = new(EndKind.Feed, -1, -1), chassis = new(EndKind.Chassis, -1, -1);
        SeenIn[] seen = [SeenIn.Both, SeenIn.After, SeenIn.Before];
        var netlist = new Netlist([], [], [.. seen.Select((s, i) => new Line(i, $"w{i}", s, feed, chassis))], [],
            [.. seen.Select((s, i) => new Net(i, s, [i], [i], [], (-1, -1)))], [.. seen.Select((s, i) => new Tap(i, i, EndKind.Feed, -1, s, [new(i, true)]))]).Overlaid();
        Assert.Equal([SeenIn.Both, SeenIn.Both, SeenIn.Before], netlist.Nets.Select(n => n.Seen));
        Assert.Equal([SeenIn.Both, SeenIn.Both, SeenIn.Before], netlist.Lines.Select(n => n.Seen));
        Assert.Equal([SeenIn.Both, SeenIn.Both, SeenIn.Before], netlist.Taps.Select(n => n.Seen));
        Assert.Equal(seen, netlist.Nets.Select(n => n.Circuits));
    }

    // Two conductors of one channel lie over each other; where a third lay, it goes down as low as nothing else reaches near it.
    [Theory]
    [InlineData(true, 40, 1)]
    [InlineData(true, 22, 0)]
    [InlineData(false, 40, 0)]
    public void An_old_place_lies_low_over_its_pin(bool isGone, int column, int level)
    {
        var circuits = isGone ? SeenIn.Before : SeenIn.Both;
        ImmutableArray<Seat> seats = [.. Enumerable.Range(0, 6).Select(i => new Seat(i, 1 + (i % 2), SeenIn.Both, i, -1))];
        int[] x = [0, 16, 8, 20, column, column + 8];
        Net NetOf(int id, SeenIn seen) => new(id, SeenIn.Both, [id], [], [], (id, id)) { RunsApart = true, Circuits = seen };
        ImmutableArray<Piece> pieces = [.. new[] { SeenIn.Both, SeenIn.Both, circuits }.Select((seen, i) =>
            new Piece(i, 1, NetOf(i, seen), SeenIn.Both, true, false, [new(2 * i, 2 * i, 0, SeenIn.Both, false)], [new((2 * i) + 1, (2 * i) + 1, 0, SeenIn.Both, false)]))];
        var lattice = new Lattice(2, seats, pieces, [], [], 6);
        int[] levels = Channels.Of(lattice, x, new PieceSpans(lattice, x)).Levels;
        Assert.Equal([0, 1], levels.Take(2).Order());
        Assert.Equal(level, levels[2]);
    }

    private static string[] Apart(Job job)
    {
        var input = Overlaid(job).Input;
        return [.. OldPlaces.Of(input).Order().Select(i => input.Wires[i].Id)];
    }

    private static DrawingPlan Overlaid(Job job) => OverlayPlan.Of(DrawingPlan.Of(job.Alteration, Study.Of(job.Alteration), Lettering.Normal, Hotside.Wording.Vocabulary.Of(Words.American)));

    private static HashSet<(int X, int Y)> Horizontals(PlacedWire wire) =>
        [.. wire.Points.Zip(wire.Points.Skip(1)).Where(s => s.First.Y == s.Second.Y).SelectMany(s => Enumerable.Range(Math.Min(s.First.X, s.Second.X), Math.Abs(s.First.X - s.Second.X)).Select(x => (x, s.First.Y)))];

    private static string Together(string second) => $"""
        hotside: 1
        title: Two lamps
        system: 12 V, negative ground, sizes in mm²
        parts:
          G1: battery, 12 V, 50 Ah
          F1: fuse, 15 A
          S1: switch, 10 A
          E1: lamp, 12 V, 21 W
          E2: lamp, 12 V, 21 W
        wires:
          w1: G1.pos to F1.1, 10 RD, 0.5 m
          w2: G1.neg to chassis, 10 BK, 0.5 m
          w3: F1.2 to S1.1, 2.5 RD, 0.5 m
          w5: S1.2 to E1.1, 1.5 YE, 1 m
          w6: S1.2 to E2.1, 1.5 YE, 1 m
          w7: E1.2 to chassis, 1.5 BK, 0.2 m
          w8: E2.2 to chassis, 1.5 BK, 0.2 m
        alteration:
          title: A relay
          changes:
            - fit K1: relay, 12 V, 20 A, coil 0.15 A
            - run w9: S1.2 to K1.86, 1 YE, 0.5 m
            - run w10: K1.85 to chassis, 1 BK, 0.2 m
            - run w11: F1.2 to K1.30, 2.5 RD, 0.5 m
            - move w5: S1.2 to K1.87
            - move w6: S1.2 to {second}
        """;
}
