using Hotside.Layouts;
using Hotside.Layouts.Passes;
using Hotside.Symbols;

namespace Hotside.Tests.Layouts.Oracles;

public class CrossingOracleTests
{
    public static TheoryData<string> Small => [.. Bench.Names.Where(n => Bench.Read(n).Conductors <= 60)];

    public static TheoryData<string> Large => [.. Bench.Names.Where(n => Bench.Read(n).Conductors > 60)];

    [Theory]
    [MemberData(nameof(Small))]
    public void Up_to_sixty_conductors_the_order_is_within_one_crossing_of_the_fewest(string name)
    {
        var (bench, layout) = Bench.LaidOut(name);
        int least = 0;
        foreach (var block in Arrangement.Of(bench.Input).Ordered.Where(b => b.Order.Crossings > 0))
        {
            var (crossings, isProven) = CrossingOracle.Of(block.Lattice, 20);
            Assert.True(isProven, "not proven");
            Assert.True(crossings <= block.Order.Crossings, "fewer than the fewest");
            least += crossings;
        }
        Assert.InRange(BenchMeasure.Of(bench.Input, layout).Crossings, least, least + 1);
    }

    [Theory]
    [MemberData(nameof(Large))]
    public void Beyond_sixty_the_order_is_within_a_tenth_where_the_fewest_can_be_proven(string name)
    {
        foreach (var block in Arrangement.Of(Bench.Read(name).Input).Ordered.Where(b => b.Order.Crossings > 0))
            if (CrossingOracle.Of(block.Lattice, 1) is { IsProven: true } fewest)
                Assert.InRange(block.Order.Crossings, fewest.Crossings, fewest.Crossings + Math.Max(1, fewest.Crossings / 10));
    }

    // What an earlier model of the same question proved on these circuits (own measurement): an oracle that sees nothing would say 0.
    [Theory]
    [InlineData("gen-012", 1)]
    [InlineData("gen-016", 4)]
    [InlineData("gen-020", 3)]
    [InlineData("hand-headlamp", 5)]
    public void The_oracle_finds_the_fewest_that_are_known(string name, int fewest) =>
        Assert.Equal(fewest, Arrangement.Of(Bench.Read(name).Input).Ordered.Sum(b => CrossingOracle.Of(b.Lattice, 20).Crossings));

    [Fact]
    public void Circuits_that_nobody_tuned_it_to_are_within_one_crossing_of_the_fewest()
    {
        var random = new SplitMix(20);
        int crossing = 0;
        for (int circuit = 0; circuit < 60; circuit++)
            foreach (var block in Arrangement.Of(Random(random)).Ordered.Where(b => b.Order.Crossings > 0))
            {
                var (least, isProven) = CrossingOracle.Of(block.Lattice, 10);
                Assert.True(isProven, "not proven");
                Assert.InRange(block.Order.Crossings, least, least + 1);
                crossing++;
            }
        Assert.True(crossing > 10, "nothing crosses: that shows nothing");
    }

    // Up to seven boxes with pins above and below, and conductors at random between them and the rails.
    private static LayoutInput Random(SplitMix random)
    {
        LayoutBox[] boxes = [.. Enumerable.Range(0, 4 + random.Below(4)).Select(i => new LayoutBox($"P{i}", Seen(random), 4, 4,
            [new("a", Side.Top, 1, 0), new("b", Side.Top, 3, 0), new("c", Side.Bottom, 1, 4), new("d", Side.Bottom, 3, 4)]))];
        var wires = new List<LayoutWire>();
        for (int i = 0; i < 8 + random.Below(9); i++)
        {
            int upper = random.Below(boxes.Length + 1) - 1, lower = random.Below(boxes.Length + 1);
            if (upper >= lower) (upper, lower) = (lower - 1, upper + 1);
            var seen = (upper < 0 ? SeenIn.Both : boxes[upper].Seen) & (lower == boxes.Length ? SeenIn.Both : boxes[lower].Seen);
            if (seen == 0) continue;
            wires.Add(new($"w{i}", $"w{i}", upper < 0 ? LayoutEnd.Feed : LayoutEnd.At(boxes[upper].Id, random.Below(2) == 0 ? "c" : "d"),
                lower == boxes.Length ? LayoutEnd.Chassis : LayoutEnd.At(boxes[lower].Id, random.Below(2) == 0 ? "a" : "b"), seen));
        }
        return new([.. boxes], [.. wires]);
    }

    private static SeenIn Seen(SplitMix random) => random.Below(4) switch { 0 => SeenIn.Before, 1 => SeenIn.After, _ => SeenIn.Both };
}
