using Hotside.Circuits;
using UnitsNet;
using static Hotside.Tests.Alterations.Lines;

namespace Hotside.Tests.Alterations;

public class OrderOfWorkTests
{
    [Fact]
    public void A_relay_is_fitted_before_a_wire_moves_onto_it() =>
        // The fault that a reader found in sheets drawn by hand: "a wire is moved onto a relay that is fitted later".
        Expect(Samples.Horn(), "TakeOut w3|Fit K1|Move w4|Replace G1",
            [TakeOut("w3"), Move("w4", "H1.2 to K1.85"), Fit("K1", TestKinds.Relay), ReplaceReversed("G1", TestKinds.Battery, "12 V")],
            "2.1 Note HS4112: line 2 of the list is number 3: w4 lands on K1, which has to be there first");

    [Fact]
    public void A_feed_goes_to_a_fuse_only_when_the_fuse_is_there() =>
        // The other one: "a feed goes to a fuse not yet there".
        Expect(Samples.Starter(), "Fit F1|Move w7|Run w20",
            [Move("w7", "F0.1 to F1.1"), Run("w20", "F1.2", "F0.1"), Fit("F1", TestKinds.Fuse, "50 A")],
            "1.1 Note HS4112: line 1 of the list is number 2: w7 lands on F1, which has to be there first",
            "2.1 Note HS4112: line 2 of the list is number 3: w20 lands on F1, which has to be there first");

    [Fact]
    public void The_battery_goes_in_last() =>
        Expect(Samples.Horn(), "Replace H1|Run w6|Replace G1",
            [ReplaceReversed("G1", TestKinds.Battery, "12 V"), Replace("H1", TestKinds.Horn, "12 V"), Run("w6", "H1.2", "chassis")],
            "1.1 Note HS4111: line 1 of the list is number 3: G1 is a source, and sources go in last, after w6");

    [Fact]
    public void A_battery_that_is_fitted_goes_in_last_too_with_its_wires_lying_ready() =>
        // Otherwise the list would have cables bolted to a live battery (common practice, no source).
        Expect(Samples.Horn(), "Fit F5|Run w20|Run w21|Fit G5",
            [Fit("G5", TestKinds.Battery, "12 V"), Fit("F5", TestKinds.Fuse, "30 A", joints: "1 on G5.pos"), Run("w20", "F5.2", "F2.1"), Run("w21", "G5.neg", "chassis")],
            "1.1 Note HS4111: line 1 of the list is number 4: G5 is a source, and sources go in last, after w21");

    [Fact]
    public void A_wire_on_the_post_of_a_replaced_battery_does_not_wait_for_it() =>
        Expect(Samples.Horn(), "Run w6|Replace G1", [Run("w6", "G1.pos", "F2.1"), Replace("G1", TestKinds.Battery, "12 V")]);

    [Fact]
    public void A_machine_that_stands_is_no_source_that_waits() =>
        Expect(Samples.Horn(), "Fit G3|Run w6|Replace H1", [Fit("G3", TestKinds.Alternator, "12 V"), Run("w6", "G3.B+", "X1"), Replace("H1", TestKinds.Horn, "12 V")]);

    [Fact]
    public void Wires_are_off_a_part_before_it_comes_out() =>
        Expect(Samples.Horn(), "TakeOut w3|Move w4|TakeOut H1",
            [TakeOut("H1"), TakeOut("w3"), Move("w4", "H1.2 to X1")],
            "1.1 Note HS4114: line 1 of the list is number 3: H1 comes out once w4 is off it");

    [Fact]
    public void A_part_that_is_bolted_to_another_waits_for_it() =>
        Expect(Samples.Starter(), "Replace K2|Fit F1|Fit F2",
            [Fit("F1", TestKinds.Fuse, joints: "1 on K2.30"), Samples.StarterLines()[0], Fit("F2", TestKinds.Fuse)],
            "1.1 Note HS4113: line 1 of the list is number 2: F1 is bolted to K2, which has to be there first");

    [Fact]
    public void A_part_leaves_its_rail_before_the_rail_comes_out() =>
        Expect(Samples.Horn(), "TakeOut w1|TakeOut w3|TakeOut F2|TakeOut X1",
            [TakeOut("w1"), TakeOut("X1"), TakeOut("w3"), TakeOut("F2")],
            "2.1 Note HS4114: line 2 of the list is number 4: X1 comes out once F2 is off it");

    [Fact]
    public void A_wire_leaves_a_terminal_before_a_part_without_that_terminal_comes() =>
        Expect(Samples.Starter(), "Move w5|Replace K2",
            [Replace("K2", TestKinds.StarterRelay, "12 V"), Move("w5", "K2.S to F0.2")],
            "1.1 Note HS4114: line 1 of the list is number 2: K2 comes out once w5 is off it");

    [Fact]
    public void A_reducer_is_grounded_before_it_is_fed() =>
        Expect(Samples.Horn(), "Fit N1|Run w7|Run w6",
            [Fit("N1", TestKinds.Reducer, "12 V", on: "insulated"), Run("w6", "F2.2", "N1.in"), Run("w7", "N1.case", "chassis")],
            "2.1 Note HS4115: line 2 of the list is number 3: w6 feeds a part that w7 has to ground first");

    // Else the list names a terminal that is not there yet, and the old part gets the new lead.
    [Fact]
    public void A_wire_is_renewed_once_the_part_at_its_end_is_replaced() =>
        Expect(Samples.Starter(), "Replace F0|Replace K2|Renew w7",
            [Renew("w7", "6 BN"), Replace("F0", TestKinds.Fuse, "60 A"), Samples.StarterLines()[0]],
            "1.1 Note HS4112: line 1 of the list is number 3: w7 lands on K2, which has to be there first");

    [Fact]
    public void A_renewed_wire_does_not_wait_for_the_battery() =>
        Expect(Samples.Starter(), "Renew w2|Replace G1", [Renew("w2", "2 BK"), ReplaceReversed("G1", TestKinds.Battery, "12 V")]);

    [Fact]
    public void Leads_are_swapped_once_they_are_renewed() =>
        Expect(Samples.Starter(), "Renew w7|Reverse F0",
            [Reverse("F0"), Renew("w7", "6 BN")],
            "1.1 Note HS4116: line 1 of the list is number 2: the leads of F0 are swapped once w7 is renewed");

    [Fact]
    public void Leads_that_stay_are_swapped_where_the_user_has_it() =>
        Expect(Samples.Starter(), "Reverse F0|Renew w3", [Reverse("F0"), Renew("w3", "2 BK")]);

    [Fact]
    public void Work_stays_where_the_user_put_it_even_behind_the_battery() =>
        Expect(Samples.Horn(), "Work G1|Replace H1|Replace G1|Work H1",
            [Do("G1", "measure it"), Replace("H1", TestKinds.Horn, "12 V"), ReplaceReversed("G1", TestKinds.Battery, "12 V"), Do("H1", "sound it")]);

    [Fact]
    public void What_no_order_can_meet_is_noted_and_left_in_the_users_order() =>
        Expect(Samples.Horn(), "Fit K1|Fit K2",
            [Many(Fit("K1", TestKinds.Relay), Run("w6", "K2.85", "chassis")), Many(Fit("K2", TestKinds.Relay), Run("w7", "K1.85", "chassis"))],
            "1.1 Note HS4110: line 1 of the list and line 2 need each other: w6 waits for K2");

    [Fact]
    public void Many_lamps_and_their_wires_under_one_number_need_no_order()
    {
        var before = new CircuitBuilder(ElectricPotential.FromVolts(6), Ground.Positive).Part("G2", TestKinds.Generator).Part("X1", TestKinds.FeedRail)
            .Wire("w5", "X1", "G2.A").Build();
        Expect(before, "TakeOut G2,w5", [TakeOut("G2", "w5")]);
    }

    private static void Expect(Circuit before, string order, Hotside.Alterations.EditGroup[] groups, params string[] notes)
    {
        var result = Apply(before, groups);
        Assert.Equal(notes, Problems(result).Where(p => !p.Contains("HS4101", StringComparison.Ordinal)));
        Assert.Equal(order, string.Join('|', result.Alteration!.Changes.Select(c => c.Acts[0].GetType().Name + " " + string.Join(',', c.Acts[0].Items))));
    }
}
