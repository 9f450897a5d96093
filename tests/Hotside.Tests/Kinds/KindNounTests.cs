using Hotside.Circuits;
using Hotside.Drawings.Plans;
using Hotside.Kinds;
using Hotside.Wording;

namespace Hotside.Tests.Kinds;

/// <summary>What the data of a kind decides about its words and its drawing, an own kind's too.</summary>
public class KindNounTests
{
    [Fact]
    public void The_noun_of_a_kind_is_its_datas()
    {
        Assert.Equal("starter relay", Catalogue.Standard.Find("starter-relay-internal")!.Noun);
        var own = Catalogue.Standard.WithKind("kind: fog-relay-2\nlike: relay\nnoun: fog-lamp relay\n").Find("fog-relay-2")!;
        Assert.Equal("fog-lamp relay", own.Noun);
        Assert.Equal("Fog-lamp relay", new Part("K1", new(own)).Title);
    }

    [Fact]
    public void A_kind_like_another_is_not_called_as_that_one() =>
        Assert.Equal("heater blower", Catalogue.Standard.WithKind("kind: heater-blower\nlike: generator\n").Find("heater-blower") is { BritishNoun: null } kind ? kind.Noun : "");

    // American and British, trade usage from memory.
    [Theory]
    [InlineData("generator-field-inside", "generator", "dynamo")]
    [InlineData("splice", "splice", "joint")]
    [InlineData("dimmer", "dimmer switch", "dip switch")]
    [InlineData("horn-button", "horn button", "horn push")]
    [InlineData("horn-relay", "horn relay", "horn relay")]
    public void Each_side_of_the_ocean_has_its_word(string id, string american, string british)
    {
        var kind = Catalogue.Standard.Find(id)!;
        Assert.Equal((american, british), (Vocabulary.Of(Words.American).Noun(kind), Vocabulary.Of(Words.British).Noun(kind)));
    }

    [Theory]
    [InlineData("rail", "feed-rail")]
    [InlineData("splice", "splice")]
    [InlineData("stud", "stud")]
    public void An_own_kind_is_a_node_where_its_symbol_says_so(string symbol, string standard)
    {
        var own = Catalogue.Standard.WithKind($"kind: own\nletter: X\nsymbol: {symbol}\nterminals:\n  1: any\n").Find("own")!;
        var role = PlannedRoles.Of(new Part("X1", new(own)));
        Assert.NotEqual(PlannedRole.Symbol, role);
        Assert.Equal(PlannedRoles.Of(new Part("X1", new(Catalogue.Standard.Find(standard)!))), role);
        // Two terminals are two nodes, which one dot would join.
        var two = Catalogue.Standard.WithKind($"kind: own\nsymbol: {symbol}\nterminals:\n  1: any\n  2: any\n").Find("own")!;
        Assert.Equal(PlannedRole.Symbol, PlannedRoles.Of(new Part("X1", new(two))));
    }

    [Fact]
    public void A_job_with_an_own_rail_is_drawn_with_a_rail_and_no_box()
    {
        const string text = """
            hotside: 1
            system: 6 V, positive ground, sizes in AWG
            kinds:
              busbar:
                letter: X
                symbol: rail
                terminals:
                  1: any
            parts:
              G1: battery, 6 V
              X1: busbar
              E1: lamp, 6 V
              E2: lamp, 6 V
            wires:
              w1: G1.neg to X1, 2 BK
              w2: G1.pos to chassis, 2 BK
              w3: X1 to E1.1, 14 BK
              w4: X1 to E2.1, 14 BK
              w5: E1.2 to chassis, 14 BK
              w6: E2.2 to chassis, 14 BK

            """;
        string svg = Job.Read(text).OrThrow().Draw(View.Before).ToSvg();
        string same = Job.Read(text.Replace("symbol: rail", "like: feed-rail", StringComparison.Ordinal)).OrThrow().Draw(View.Before).ToSvg();
        Assert.Equal(same, svg);
    }
}
