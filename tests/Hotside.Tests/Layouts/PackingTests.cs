using Hotside.Layouts;
using Hotside.Layouts.Passes;
using Hotside.Symbols;

namespace Hotside.Tests.Layouts;

/// <summary>A small piece that hangs together with nothing else goes into a hole between the others.</summary>
public class PackingTests
{
    // The metal with its strap, between battery and lamps; where leads have signs of their own, the battery, too.
    [Theory]
    [InlineData("charging", false, "engine")]
    [InlineData("gauges", true, "engine")]
    [InlineData("gauges", true, "G1")]
    public void A_small_piece_takes_no_column_where_there_is_a_hole(string name, bool high, string piece)
    {
        var input = LaidOutJob.OfGallery(name).Plan.Input with { HangsHigh = high };
        var layout = Layout.Of(input, new());
        Assert.Empty(Check.Of(input, layout));
        Assert.True(layout.Width <= Layout.Of(Without(input, piece), new()).Width, $"{layout.Width} modules wide");
        Assert.True(Place(layout, piece) is var at && layout.Boxes.Any(b => b.X < at) && layout.Boxes.Any(b => b.X > at));
    }

    // Beneath and between the gauges there is no room for the engine: it stands beside them, last.
    [Fact]
    public void Without_a_hole_it_stands_beside_the_others()
    {
        var gauges = LaidOutJob.OfGallery("gauges");
        Assert.Equal("engine", gauges.Layout.Boxes.MaxBy(b => b.X)!.Id);
    }

    // One hole is far left, where the battery stands, the others are between the lamps: the engine goes to its alternator.
    [Fact]
    public void Metal_goes_into_the_hole_that_is_nearest_to_what_stands_on_it()
    {
        var input = Row(SignOf("lead", "block"));
        var plain = Row(SignOf("lead", ""));
        int load = Place(Layout.Of(input, new()), "load 4");
        int near = Math.Abs(Place(Layout.Of(input, new()), "block") - load), first = Math.Abs(Place(Layout.Of(plain, new()), "block") - load);
        Assert.True(near < first, $"{near} modules from what stands on it, {first} where nothing does");
        Assert.Empty(Check.Of(input, Layout.Of(input, new())));
    }

    [Theory]
    [InlineData("charging", false)]
    [InlineData("gauges", true)]
    public void A_drawing_with_a_piece_in_a_hole_is_drawn_again_as_it_was(string name, bool high)
    {
        var input = LaidOutJob.OfGallery(name).Plan.Input with { HangsHigh = high };
        var layout = Layout.Of(input, new());
        var again = Layout.Of(input, new(), layout);
        Assert.Equal(layout.Boxes.Select(b => b.ToString()), again.Boxes.Select(b => b.ToString()));
        Assert.Equal(layout.Wires.Select(w => w.Id + string.Join(' ', w.Points)), again.Wires.Select(w => w.Id + string.Join(' ', w.Points)));
    }

    // What stands left of another in one row and right of it in the next has no place in one order.
    [Theory]
    [InlineData(20, true)]
    [InlineData(5, false)]
    public void An_order_of_all_blocks_holds_in_all_rows_or_says_that_it_does_not(int second, bool holds)
    {
        var (places, hold) = Interleaving.Of([Upright(0, 10), Upright(5, second)], [[0, 0], [0, 0]]);
        Assert.Equal(holds, hold);
        Assert.Equal(2, places.SelectMany(p => p).Distinct().Count());
        if (holds) Assert.Equal([[0, 0], [1, 1]], places);

        // Two seats of one strand, one below the other or not quite.
        static PlannedBlock Upright(int upper, int lower) =>
            new(new([], []), new(2, [new(0, 1, SeenIn.Both, -1, 0), new(1, 2, SeenIn.Both, -1, 0)], [], [], [], 0), new([upper, lower], [], []), 0);
    }

    // A drawing that is stretched to fill a sheet grows evenly and not without end.
    [Theory]
    [InlineData(8)]
    [InlineData(500)]
    public void Channels_grow_alike_and_by_little(int more)
    {
        var bench = Bench.Read("hand-starter");
        var natural = Layout.Of(bench.Input, new());
        var filled = Layout.Of(bench.Input, new() { FillHeight = natural.Height + more });
        int[] growth = [.. natural.Memory!.Levels.ChannelHeight.Zip(filled.Memory!.Levels.ChannelHeight, (a, b) => b - a)];
        Assert.InRange(growth.Sum(), 1, more);
        Assert.InRange(growth.Max() - growth.Min(), 0, 1);
        Assert.InRange(growth.Max(), 1, 5);
    }

    private static int Place(Layout layout, string box) => layout.Boxes.First(b => b.Id == box).X;

    private static LayoutInput Without(LayoutInput input, string box) =>
        input with { Boxes = [.. input.Boxes.Where(b => b.Id != box)], Wires = [.. input.Wires.Where(w => w.From.Box != box && w.To.Box != box)] };

    private static LayoutWire SignOf(string id, string body) =>
        new(id, id, new(EndKind.Pin, "load 4", "case"), LayoutEnd.Chassis, SeenIn.Both) { HasOwnSign = true, SignOf = body, Short = true };

    // A wide switch with five loads on it, each some way from the next, and a block of metal with its strap; the lead of a case hangs on the last load.
    private static LayoutInput Row(LayoutWire lead)
    {
        LayoutBox[] loads = [.. Enumerable.Range(0, 5).Select(i => new LayoutBox($"load {i}", SeenIn.Both, 4, 4, [new("1", Side.Top, 2, 0), new("2", Side.Bottom, 1, 4), new("case", Side.Bottom, 3, 4)]))];
        LayoutBox wide = new("switch", SeenIn.Both, 92, 4, [new("in", Side.Top, 2, 0), .. Enumerable.Range(0, 5).Select(i => new LayoutPin($"{i}", Side.Bottom, 2 + (22 * i), 4))]);
        LayoutBox block = new("block", SeenIn.Both, 6, 2, [new("1", Side.Bottom, 3, 2)]) { IsBody = true };
        LayoutEnd Pin(string box, string pin) => new(EndKind.Pin, box, pin);
        LayoutWire Wire(LayoutEnd from, LayoutEnd to) => new($"{from.Box}.{from.Pin} {to.Box}", $"{from.Box}.{from.Pin} {to.Box}", from, to, SeenIn.Both);
        return new([block, wide, .. loads],
        [
            Wire(LayoutEnd.Feed, Pin("switch", "in")), .. loads.Select((l, i) => Wire(Pin("switch", $"{i}"), Pin(l.Id, "1"))), .. loads.Select(l => Wire(Pin(l.Id, "2"), LayoutEnd.Chassis)),
            Wire(Pin("block", "1"), LayoutEnd.Chassis), lead,
        ]) { HasSigns = true };
    }
}
