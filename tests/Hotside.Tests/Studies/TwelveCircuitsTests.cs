using Hotside.Studies;

namespace Hotside.Tests.Studies;

/// <summary>The verdicts here were worked out by hand.</summary>
public class TwelveCircuitsTests
{
    private static void Is(LoadStudy load, SwitchedSide side, string control)
    {
        Assert.Equal((load.Name, side, control), (load.Name, load.Side, load.Control.ToString()));
        Assert.False(load.IsApproximate);
    }

    private static string[] Codes(CircuitStudy study) => [.. study.Findings.Select(f => f.Code)];

    [Fact]
    public void A_coil_behind_a_ballast_is_switched_where_its_button_is()
    {
        var study = TestCircuit.Study(TwelveCircuits.RelayBehindBallast);
        Is(study.Load("K1"), SwitchedSide.GroundSwitched, "S1 pressed");
        Is(study.Load("E1"), SwitchedSide.HotSwitched, "S1 pressed");
        Is(study.Load("E2"), SwitchedSide.HotSwitched, "S1 released");
        Assert.Equal(["K1"], study.Load("E1").Chain);
        Assert.Equal(["K1"], study.Load("E2").Chain);
        Assert.Empty(study.Findings);
    }

    [Fact]
    public void A_pilot_between_two_feeds_is_in_series_and_dark_with_both()
    {
        var study = TestCircuit.Study(TwelveCircuits.PilotBetweenTwoFeeds);
        Is(study.Load("E1"), SwitchedSide.HotSwitched, "S1 left or both");
        Is(study.Load("E2"), SwitchedSide.HotSwitched, "S1 right or both");
        Is(study.Load("E3"), SwitchedSide.InSeries, "S1 left or right");
        Assert.Equal(["E1", "E2"], study.Load("E3").InSeriesWith);
        Assert.Equal("S1 left", study.Load("E2").Sneaks!.ToString());
        Assert.Equal("S1 right", study.Load("E1").Sneaks!.ToString());
        Assert.Equal(["HS3013", "HS3016"], Codes(study));
    }

    [Fact]
    public void A_charge_lamp_is_in_series_with_the_generator_that_stands()
    {
        var study = TestCircuit.Study(TwelveCircuits.ChargeLamp);
        Is(study.Load("T1"), SwitchedSide.BothSides, "S1 on and B1 closed");
        Is(study.Load("E1"), SwitchedSide.InSeries, "G2 stopped and S1 on");
        Assert.Equal(["G2"], study.Load("E1").InSeriesWith);
        Assert.Null(study.Load("T1").Sneaks);
    }

    [Fact]
    public void Without_its_diode_a_charge_lamp_feeds_the_ignition_back()
    {
        var study = TestCircuit.Study(TwelveCircuits.ChargeLampWithoutDiode);
        Is(study.Load("E1"), SwitchedSide.InSeries, "G2 stopped and S1 on, or G2 running and S1 off and B1 closed");
        Assert.Equal(["G2", "T1"], study.Load("E1").InSeriesWith);
        Assert.Equal("G2 running and S1 off and B1 closed", study.Load("T1").Sneaks!.ToString());
        Assert.Contains(study.Findings, f => f.Code is "HS3011" or "HS3013" && f.Items[0] == "T1" && f.Items.Contains("E1"));
    }

    [Fact]
    public void A_limiter_and_a_sender_control_nothing()
    {
        var study = TestCircuit.Study(TwelveCircuits.GaugeAndOilLamp);
        Is(study.Load("P1"), SwitchedSide.HotSwitched, "S1 on");
        Is(study.Load("E1"), SwitchedSide.BothSides, "S1 on and B2 none");
        Assert.Empty(study.Findings);
    }

    [Fact]
    public void A_pull_in_winding_is_in_series_for_a_moment()
    {
        var study = TestCircuit.Study(TwelveCircuits.SolenoidWithTwoWindings);
        Is(study.Load("K1.hold-in"), SwitchedSide.HotSwitched, "S1 pressed");
        Is(study.Load("M1"), SwitchedSide.HotSwitched, "S1 pressed");
        Assert.Equal(["K1"], study.Load("M1").Chain);
        var pullIn = study.Load("K1.pull-in");
        Is(pullIn, SwitchedSide.InSeries, "S1 pressed");
        Assert.Equal(["M1"], pullIn.InSeriesWith);
        Assert.True(pullIn.IsMomentary);
        Assert.Equal(("K1", "plunger", "pulled"), (pullIn.Until!.Part, pullIn.Until.Actuator, pullIn.Until.Position));
        Assert.Empty(study.Findings);
    }

    [Fact]
    public void A_wiper_that_parks_is_fed_until_home_and_braked_there()
    {
        var motor = TestCircuit.Study(TwelveCircuits.WiperThatParks).Load("M1");
        Is(motor, SwitchedSide.HotSwitched, "S1 on, or M1 away");
        Assert.Equal("S1 off and M1 parked", motor.Braked!.ToString());
    }

    [Fact]
    public void A_relay_that_feeds_its_own_coil_holds()
    {
        var study = TestCircuit.Study(TwelveCircuits.RelayThatHoldsItself);
        foreach (string name in new[] { "K1", "E1" })
        {
            var load = study.Load(name);
            Is(load, SwitchedSide.HotSwitched, "S5 released and S6 pressed");
            Assert.Equal(("K1", "first", "S5 released", "S5 pressed"), (load.Holds!.Relay, load.Holds.Element, load.Holds.While.ToString(), load.Holds.Released.ToString()));
        }
        Assert.Equal(["K1"], study.Load("E1").Chain);
    }

    [Fact]
    public void A_buzzer_never_settles()
    {
        var study = TestCircuit.Study(TwelveCircuits.Buzzer);
        Is(study.Load("K1"), SwitchedSide.HotSwitched, "S1 pressed");
        Assert.Equal("error HS3002: K1 never comes to rest when S1 pressed: every position lets it move again", Assert.Single(study.Findings).ToString().Split('\n')[0]);
    }

    [Fact]
    public void Two_relays_that_shut_each_other_out_race()
    {
        var study = TestCircuit.Study(TwelveCircuits.Race);
        foreach (var load in study.Loads)
        {
            Is(load, SwitchedSide.HotSwitched, "S2 on");
            Assert.True(load.IsInRace);
        }
        var race = Assert.Single(study.Findings);
        Assert.Equal("HS3003", race.Code);
        Assert.Equal(["K2", "K3"], race.Items);
    }

    [Fact]
    public void An_isolator_in_the_return_lead_counts_on_the_hot_side()
    {
        var study = TestCircuit.Study(TwelveCircuits.Isolator);
        Is(study.Load("E1"), SwitchedSide.HotSwitched, "Q1 on and S1 on");
        Is(study.Load("P1"), SwitchedSide.Unswitched, "always");
        Assert.Empty(study.Findings);
    }

    [Fact]
    public void What_hangs_between_equal_feeds_is_dead()
    {
        var study = TestCircuit.Study(TwelveCircuits.TwoBatteries);
        Is(study.Load("E2"), SwitchedSide.HotSwitched, "S2 one or all or other");
        Is(study.Load("P2"), SwitchedSide.Dead, "never");
        Assert.Equal("both ends on equal feeds", study.Load("P2").DeadBecause);
    }

    [Fact]
    public void A_tap_is_a_feed_and_a_return()
    {
        var study = TestCircuit.Study(TwelveCircuits.TappedBank);
        Is(study.Load("E1"), SwitchedSide.Unswitched, "always");
        Is(study.Load("E2"), SwitchedSide.HotSwitched, "S1 on");
        Is(study.Load("E3"), SwitchedSide.GroundSwitched, "S2 on");
        Assert.Equal([["E2", "G1"], ["E3", "G2"]], study.Findings.Select(f => f.Items.ToArray()));
        Assert.All(study.Findings, f => Assert.Equal("HS3008", f.Code));
    }

    [Fact]
    public void Lamps_in_a_string_are_in_series_and_the_string_has_a_side()
    {
        var study = TestCircuit.Study(TwelveCircuits.LampsInSeries);
        Is(study.Load("E1"), SwitchedSide.InSeries, "S1 on");
        Is(study.Load("E2"), SwitchedSide.InSeries, "S1 on");
        Assert.Equal(["E2"], study.Load("E1").InSeriesWith);
        Assert.Equal(["E1"], study.Load("E2").InSeriesWith);
        Assert.All(study.Loads, l => Assert.Equal(SwitchedSide.GroundSwitched, l.StringSide));
    }

    [Fact]
    public void A_lamp_that_a_contact_shorts_is_unswitched_and_shorted()
    {
        var study = TestCircuit.Study(TwelveCircuits.ShortedLamp);
        Is(study.Load("E3"), SwitchedSide.Unswitched, "S2 open");
        Assert.Equal(["S2"], study.Load("E3").ShortedBy);
        Assert.Empty(study.Findings);
    }

    [Fact]
    public void A_motor_between_two_changeovers_is_reversed_and_braked_by_them()
    {
        var study = TestCircuit.Study(TwelveCircuits.ReversingMotor);
        var motor = study.Load("M1");
        Is(motor, SwitchedSide.BothSides, "S2 rest and S3 pressed, or S2 pressed and S3 rest");
        Assert.Equal(["S2", "S3"], motor.ReversedBy);
        Assert.Equal("S2 rest and S3 rest, or S2 pressed and S3 pressed", motor.Braked!.ToString());
        Is(study.Load("E1"), SwitchedSide.Dead, "never");
        Assert.Equal("polarity", study.Load("E1").DeadBecause);
        Is(study.Load("E2"), SwitchedSide.Unswitched, "always");
        Assert.Equal(["stop HS3001: feed and return are one point when S5 closed: a short circuit",
            "error HS3006: E1 lets current through one way only and is connected the other way round"], study.Findings.Select(f => f.ToString().Split('\n')[0]));
    }
}
