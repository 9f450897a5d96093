using Hotside.Alterations;
using Hotside.Circuits;
using static Hotside.Tests.Alterations.Lines;

namespace Hotside.Tests.Alterations;

public class EditRuleTests
{
    private static readonly Circuit Horn = Samples.Horn();

    [Fact]
    public void A_replacement_inherits_name_joints_and_mount_but_no_rating()
    {
        var after = Made(Samples.Starter(), Replace("F0", TestKinds.Fuse), Replace("M1", TestKinds.Starter, "12 V")).After;
        Assert.Equal("F0: fuse, Main fuse", CircuitText.Part(after, "F0"));
        Assert.Equal("M1: starter, V=12 V, case on engine.1", CircuitText.Part(after, "M1"));
    }

    [Fact]
    public void What_a_replacement_states_wins_over_what_it_would_inherit()
    {
        var after = Made(Horn, Fit("X2", TestKinds.FeedRail), Replace("F2", TestKinds.Fuse, "10 A", name: "Horn", joints: "1 on X2")).After;
        Assert.Equal("F2: fuse, Horn, A=10 A, 1 on X2.1", CircuitText.Part(after, "F2"));
    }

    [Fact]
    public void A_terminal_left_free_gives_up_the_inherited_joint()
    {
        var edit = new ReplaceEdit(["F2"], Spec(TestKinds.Fuse, "10 A") with { FreeTerminals = ["1"] }, Reversed: false, []);
        Assert.Equal("F2: fuse, A=10 A", CircuitText.Part(Made(Horn, One(edit)).After, "F2"));
    }

    [Fact]
    public void A_mount_that_only_the_old_kind_brought_is_not_inherited()
    {
        var before = Made(Horn, Replace("H1", TestKinds.HornCase, "6 V", "2 = case")).After;
        Assert.Equal("H1: horn-case, V=6 V, case on chassis", CircuitText.Part(before, "H1"));
        Assert.Equal("w4: H1.case to S1.1, 16 YE, 1.1 m", CircuitText.Wire(before, "w4"));
    }

    [Fact]
    public void Wires_stay_by_alias_where_names_differ()
    {
        var after = Made(Samples.Starter(), Replace("K2", TestKinds.StarterRelay, "12 V", "S = 85")).After;
        Assert.Equal("w1: G1.neg to K2.30, 1/0 BK, 0.7 m", CircuitText.Wire(after, "w1"));
        Assert.Equal("w3: K2.87 to M1.1, 1/0 BK, 0.6 m", CircuitText.Wire(after, "w3"));
    }

    [Fact]
    public void A_reversed_part_trades_wires_and_joints_which_count_as_left()
    {
        var before = Made(Horn, Fit("P1", TestKinds.Ammeter, "30 A"), Fit("F3", TestKinds.Fuse, joints: "1 on P1.2"), Run("w8", "X1", "P1.1"), Run("w9", "P1.2", "S1.1")).After;
        var turned = Made(before, Reverse("P1"));
        Assert.Equal("w8: X1.1 to P1.2", CircuitText.Wire(turned.After, "w8"));
        Assert.Equal("w9: P1.1 to S1.1", CircuitText.Wire(turned.After, "w9"));
        Assert.Equal("F3: fuse, 1 on P1.1", CircuitText.Part(turned.After, "F3"));
        Assert.Equal(ConductorState.LeftAsIs, turned.StateOfConductor("w8"));
        Assert.Equal(PartState.Reversed, turned.StateOf("P1"));
    }

    [Fact]
    public void A_moved_end_may_be_named_as_before_or_as_mapped()
    {
        var map = Samples.StarterLines()[0];
        foreach (string name in new[] { "K2.S", "K2.85" })
            Assert.Equal("w5: F0.2 to S2.1, 16 YE, 1.2 m", CircuitText.Wire(Made(Samples.Starter(), map, Move("w5", $"{name} to F0.2")).After, "w5"));
    }

    [Fact]
    public void A_cut_wire_keeps_its_first_end_and_neither_half_its_length()
    {
        var made = Made(Samples.Starter(), Fit("F1", TestKinds.Fuse, "60 A"), Cut("w4", "F1.1", "F1.2", "w20"));
        Assert.Equal("w4: engine.1 to F1.1, 1/0 braid", CircuitText.Wire(made.After, "w4"));
        Assert.Equal("w20: F1.2 to chassis, 1/0 braid", CircuitText.Wire(made.After, "w20"));
        Assert.Equal((ConductorState.Moved, ConductorState.RunNew), (made.StateOfConductor("w4"), made.StateOfConductor("w20")));
        Assert.Equal([2], made.NumbersOf("w20"));
    }

    [Fact]
    public void A_move_with_another_size_is_moved_and_renewed_and_loses_what_was_measured()
    {
        var made = Made(Samples.Starter(), Move("w4", "engine to M1.case", "2 BK"));
        Assert.Equal("w4: M1.case to chassis, 2 BK, 0.3 m", CircuitText.Wire(made.After, "w4"));
        Assert.Equal(ConductorState.MovedAndRenewed, made.StateOfConductor("w4"));
    }

    [Fact]
    public void A_wire_moved_at_both_ends_is_used_elsewhere_under_one_number()
    {
        var made = Made(Horn, Move("w4", "H1.2 to F2.2, S1.1 to X1"));
        Assert.Equal("w4: F2.2 to X1.1, 16 YE, 1.1 m", CircuitText.Wire(made.After, "w4"));
        Assert.Equal(ConductorState.UsedElsewhere, made.StateOfConductor("w4"));
        Assert.Equal("1 Move w4 H1.2>F2.2, S1.1>X1.1", ChangeDump.Of(made));
    }

    [Fact]
    public void A_renewed_wire_keeps_what_its_line_leaves_out_but_not_its_bad_state()
    {
        var before = Made(Horn, Run("w9", "X1", "H1.1", "14 BK 1 m brittle")).After;
        var made = Made(before, Renew("w9", "12 RD"));
        Assert.Equal("w9: X1.1 to H1.1, 12 RD, 1 m", CircuitText.Wire(made.After, "w9"));
        Assert.Equal(ConductorState.Renewed, made.StateOfConductor("w9"));
    }

    [Fact]
    public void A_case_put_on_something_else_changes_the_mount_alone()
    {
        var made = Made(Samples.Starter(), Remount("M1", "chassis"));
        Assert.Equal("M1: starter, A=180 A, V=6 V, case on chassis", CircuitText.Part(made.After, "M1"));
        Assert.Equal(PartState.Remounted, made.StateOf("M1"));
    }

    [Fact]
    public void An_empty_list_leaves_the_circuit_itself()
    {
        var made = Made(Horn);
        Assert.Same(made.Before, made.After);
        Assert.Empty(made.Changes);
    }

    [Fact]
    public void The_state_of_what_neither_circuit_has_is_not_to_be_asked()
    {
        var horn = Samples.HornAltered();
        Assert.Equal("There is no part \"K11\" before or after; did you mean \"K1\"? (Parameter 'partId')",
            Assert.Throws<ArgumentException>(() => horn.StateOf("K11")).Message);
        Assert.Equal("There is no conductor \"w44\" before or after; did you mean \"w4\"? (Parameter 'conductorId')",
            Assert.Throws<ArgumentException>(() => horn.StateOfConductor("w44")).Message);
    }
}
