using Hotside.Circuits;
using UnitsNet;
using static Hotside.Circuits.WireSize;

namespace Hotside.Tests.Circuits;

public class CircuitBuilderTests
{
    private static readonly PartKind Battery = new("battery")
    {
        Terminals = [new("pos", TerminalSide.Top) { Aliases = ["+"] }, new("neg", TerminalSide.Bottom) { Aliases = ["-"] }],
        Elements = [new("cells", ElementType.Source, "pos", "neg")],
        Ratings = [new("V", Unit.Volt, ["cells"], false)],
    };

    private static readonly PartKind Lamp = new("lamp")
    {
        Terminals = [new("1", TerminalSide.Top), new("2", TerminalSide.Bottom) { IsCase = true }],
        Elements = [new("lamp", ElementType.Lamp, "1", "2")],
        Ratings = [new("V", Unit.Volt, ["lamp"], false), new("W", Unit.Watt, ["lamp"], false)],
    };

    private static readonly PartKind Connector = new("connector")
    {
        Terminals = [new("a(n)", TerminalSide.Top), new("b(n)", TerminalSide.Bottom)],
        Elements = [new("way(n)", ElementType.Contact, "a(n)", "b(n)")],
        Ratings = [new("A", Unit.Ampere, ["way(n)"], false)],
        Ways = (1, 60),
    };

    private static CircuitBuilder Begin(Ground ground = Ground.Negative) =>
        new CircuitBuilder(ElectricPotential.FromVolts(12), ground).Part("G1", Battery).Part("E1", Lamp);

    [Fact]
    public void A_tapped_bank_has_both_its_voltages_the_highest_first()
    {
        var circuit = new CircuitBuilder(ElectricPotential.FromVolts(6), Ground.Negative).AlsoAt(ElectricPotential.FromVolts(12)).Part("G1", Battery).Build();
        Assert.Equal("12 V and 6 V, negative ground", circuit.System.ToString());
    }

    [Fact]
    public void A_terminal_is_called_by_the_mark_that_is_written_first()
    {
        var circuit = Begin().Wire("w1", "G1.+", "E1.1").Wire("w2", "G1.pos", "E1.1").Build();
        Assert.Equal(["G1.+", "G1.+"], circuit.Conductors.Select(c => c.From.ToString()));
        Assert.Equal(("+", "+", "neg"), (circuit.FindPart("G1")!.Kind.TerminalNamed("pos"), circuit.FindPart("G1")!.Kind.TerminalNamed("+"), circuit.FindPart("G1")!.Kind.TerminalNamed("-")));
        Assert.Equal("pos", Battery.TerminalNamed("+"));
    }

    [Fact]
    public void The_shell_of_a_lamp_is_its_second_terminal()
    {
        var circuit = Begin().Wire("w1", "E1.case", "chassis", new(Awg(14), "black", Length.FromMeters(1))).Build();
        Assert.Equal("E1.2", circuit.FindConductor("w1")!.From.ToString());
        Assert.Equal("14 BK", circuit.FindConductor("w1")!.Wire.Label);
    }

    [Fact]
    public void An_unknown_terminal_is_named_with_the_right_ones()
    {
        var e = Assert.Throws<ArgumentException>(() => Begin().Wire("w1", "G1.pso", "E1.1"));
        Assert.StartsWith("G1 has no terminal \"pso\"; a battery has pos, neg; did you mean \"pos\"?", e.Message, StringComparison.Ordinal);
        Assert.Equal("from", e.ParamName);
    }

    [Fact]
    public void An_unknown_part_is_named_with_the_nearest() =>
        Assert.StartsWith("There is no part \"E2\" so far; a part comes before what ends on it; did you mean \"E1\"?",
            Assert.Throws<ArgumentException>(() => Begin().Wire("w1", "G1.pos", "E2.1")).Message, StringComparison.Ordinal);

    [Fact]
    public void Parts_and_conductors_share_one_space_of_ids() =>
        Assert.Equal("id", Assert.Throws<ArgumentException>(() => Begin().Wire("G1", "G1.pos", "E1.1")).ParamName);

    [Fact]
    public void A_rating_that_the_kind_lacks_is_refused() =>
        Assert.StartsWith("A lamp has no rating \"Ah\"", Assert.Throws<ArgumentException>(() =>
            Begin().Part("E2", Lamp, new() { Capacity = ElectricCharge.FromAmpereHours(5) })).Message, StringComparison.Ordinal);

    [Fact]
    public void A_connector_repeats_its_terminals_for_each_way()
    {
        var details = new PartDetails { Ratings = System.Collections.Immutable.ImmutableDictionary<string, StatedValue>.Empty.Add("ways", new(3, Unit.Ways)) };
        var circuit = Begin().Part("X1", Connector, details).Wire("w1", "X1.b3", "E1.1").Build();
        Assert.Equal("a1 a2 a3 b1 b2 b3", string.Join(' ', circuit.FindPart("X1")!.Kind.Terminals.Select(t => t.Name)));
        Assert.Equal("way1 way2 way3", string.Join(' ', circuit.FindPart("X1")!.Kind.Ratings[0].Elements));
    }

    [Theory]
    [InlineData(Ground.Negative, "pos")]
    [InlineData(Ground.Positive, "neg")]
    public void The_pole_that_stands_on_the_chassis_is_the_return_whatever_the_job_says(Ground said, string feed)
    {
        string grounded = feed == "pos" ? "neg" : "pos";
        var right = Begin(said).Wire("w1", "G1." + grounded, "chassis").Build();
        var contrary = Begin(said).Wire("w1", "G1." + feed, "chassis").Build();
        Assert.Equal("G1." + feed, right.Sources[0].Feed.ToString());
        Assert.Equal("G1." + grounded, contrary.Sources[0].Feed.ToString());
    }

    [Fact]
    public void A_stacked_battery_takes_its_poles_from_the_job_s_word()
    {
        var circuit = Begin(Ground.Positive).Part("G2", Battery)
            .Wire("w1", "G1.pos", "chassis").Wire("w2", "G1.neg", "G2.pos").Build();
        Assert.Equal("G2.neg", circuit.Sources[1].Feed.ToString());
    }
}
