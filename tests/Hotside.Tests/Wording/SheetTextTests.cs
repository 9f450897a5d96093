using Hotside.Circuits;
using Hotside.Studies;
using Hotside.Tests.Alterations;
using Hotside.Wording;
using UnitsNet;
using static Hotside.Tests.Alterations.Lines;

namespace Hotside.Tests.Wording;

public class SheetTextTests
{
    [Fact]
    public void A_headline_names_supply_and_ground_in_the_words_asked_for()
    {
        var system = Samples.Horn().System;
        Assert.Equal("6 V, positive ground", SheetText.Supply(system, Words.American));
        Assert.Equal("6 V, positive earth", SheetText.Supply(system, Words.British));
        Assert.Equal("12 V and 6 V, negative ground", SheetText.Supply(new([12, 6], Ground.Negative), Words.American));
    }

    [Fact]
    public void A_rail_stands_below_chassis_before_and_above_it_after()
    {
        var horn = Samples.HornAltered();
        Assert.Equal("−6 V", SheetText.FeedPotential(horn.Before));
        Assert.Equal("+12 V", SheetText.FeedPotential(horn.After));
        Assert.Null(SheetText.FeedPotential(new CircuitBuilder(ElectricPotential.FromVolts(6), Ground.Positive).Build()));
    }

    [Fact]
    public void The_list_head_says_when_the_battery_is_off_and_defers_to_the_manual()
    {
        Assert.Equal("Changes, in order of work. Battery off before 1, back on after 10. The workshop manual and local rules take precedence.",
            SheetText.ListHead(Samples.HornAltered()));
        Assert.Equal("No changes.", SheetText.ListHead(Made(Samples.Horn())));
        var without = new CircuitBuilder(ElectricPotential.FromVolts(6), Ground.Positive).Part("X1", TestKinds.FeedRail).Build();
        Assert.Equal("Changes, in order of work. The workshop manual and local rules take precedence.",
            SheetText.ListHead(Made(without, Fit("X2", TestKinds.FeedRail))));
    }

    [Fact]
    public void A_legend_explains_a_wire_label_by_an_example()
    {
        Assert.Equal("AWG 14, black (IEC 60757)", LegendText.WireLabel(WireOf("14 BK"), Words.American));
        Assert.Equal("AWG 14, gray with white tracer (IEC 60757)", LegendText.WireLabel(WireOf("14 GY/WH"), Words.American));
        Assert.Equal("AWG 14, grey with white tracer (IEC 60757)", LegendText.WireLabel(WireOf("14 GY/WH"), Words.British));
        Assert.Equal("AWG 1/0, bare braid", LegendText.WireLabel(WireOf("1/0 braid"), Words.American));
        Assert.Equal("2.5 mm²", LegendText.WireLabel(new Wire { Size = WireSize.SquareMillimetres(2.5) }, Words.American));
    }

    [Fact]
    public void Every_legend_entry_has_words_of_its_own()
    {
        foreach (var words in Enum.GetValues<Words>())
        {
            string[] all = [.. Enum.GetValues<LegendEntry>().Select(e => LegendText.Of(e, words))];
            Assert.All(all, text => Assert.False(string.IsNullOrWhiteSpace(text)));
            Assert.Equal(all.Length, all.Distinct().Count());
        }
        Assert.Equal("switched on the live side", LegendText.Of(LegendEntry.HotSide, Words.British));
        Assert.Equal("line n of the change list", LegendText.Of(LegendEntry.Number, Words.American));
    }

    [Fact]
    public void A_description_says_who_switches_what_before_and_after()
    {
        var horn = Samples.HornAltered();
        LoadStudy[] before = [CaptionTests.Load(TestKinds.Horn, "H1", SwitchedSide.GroundSwitched) with { SwitchedBy = ["S1"] }];
        LoadStudy[] after =
        [
            CaptionTests.Load(TestKinds.Horn, "H1", SwitchedSide.HotSwitched) with { Chain = ["K1"] },
            CaptionTests.Load(TestKinds.Relay, "K1", SwitchedSide.GroundSwitched, "", "Horn relay") with { SwitchedBy = ["S1"] },
        ];
        Assert.Equal(
            "Before: 6 V, positive ground. The horn H1 is ground-switched by Horn button S1. "
            + "After: 12 V, negative ground. The horn H1 is hot-switched by Horn relay K1, whose coil is ground-switched by Horn button S1. 10 changes, in order of work.",
            Description.Of(horn, [.. before], [.. after], Words.American));
    }

    [Fact]
    public void A_description_of_many_loads_lists_them_by_verdict()
    {
        var loads = Enumerable.Range(1, 7).Select(i => CaptionTests.Load(TestKinds.Lamp, $"E{i}", i < 3 ? SwitchedSide.GroundSwitched : SwitchedSide.HotSwitched));
        Assert.Equal("After: 12 V, negative earth. Live-switched: E3, E4, E5, E6 and E7. Earth-switched: E1 and E2.",
            Description.Of(Samples.HornAltered().After, Moment.After, [.. loads], Words.British));
    }

    [Fact]
    public void A_relay_that_holds_itself_is_told_of_once()
    {
        var horn = Samples.HornAltered().After;
        var coil = CaptionTests.Load(TestKinds.Relay, "K1", SwitchedSide.HotSwitched) with { Chain = ["K1"], SwitchedBy = ["S1"] };
        var lamp = CaptionTests.Load(TestKinds.Horn, "H1", SwitchedSide.HotSwitched) with { Chain = ["K1"] };
        Assert.Equal("horn H1 is hot-switched by Horn relay K1, whose coil is hot-switched by Horn relay K1 and Horn button S1",
            LoadSentence.Of(lamp, [lamp, coil], horn, Words.American));
    }
}
