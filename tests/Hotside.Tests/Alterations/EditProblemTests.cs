using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.Circuits;
using UnitsNet;
using static Hotside.Tests.Alterations.Lines;

namespace Hotside.Tests.Alterations;

public class EditProblemTests
{
    private static readonly Circuit Horn = Samples.Horn();

    [Fact]
    public void What_does_not_exist_is_reported_with_the_nearest_name() =>
        Expect([TakeOut("w33"), Replace("H11", TestKinds.Horn), Renew("w44", "14 BK"), TakeOut("K1"), Fit("K1", TestKinds.Relay), Do("S9", "look")],
            "1.1 Error HS4001: there is no w33 before the alteration | did you mean w3?",
            "2.1 Error HS4001: there is no H11 before the alteration | did you mean H1?",
            "3.1 Error HS4001: there is no w44 before the alteration | did you mean w4?",
            "4.1 Error HS4001: there is no K1 before the alteration | it is new: give its own line what it needs",
            "6.1 Error HS4001: there is no S9 before the alteration | did you mean S1?");

    [Fact]
    public void A_wire_cannot_be_replaced_nor_a_part_moved() =>
        Expect([Replace("w3", TestKinds.Fuse), Move("H1", "H1.1 to X1"), Reverse("w4"), Remount("w5", null), Cut("S1", "X1", "F2.2", "w9")],
            "1.1 Error HS4002: w3 is a wire; only a part can be replaced",
            "2.1 Error HS4002: H1 is a part; only a wire can be moved",
            "3.1 Error HS4002: w4 is a wire; only a part can be reversed",
            "4.1 Error HS4002: w5 is a wire; only a part can be remounted",
            "5.1 Error HS4002: S1 is a part; only a wire can be cut");

    [Fact]
    public void Two_lines_about_one_item_are_reported_with_the_one_line_that_says_both() =>
        Expect([Reverse("H1"), Replace("H1", TestKinds.Horn, "12 V"), Renew("w3", "12 RD"), Move("w3", "H1.1 to X1"), Move("w4", "H1.2 to X1"), Move("w4", "S1.1 to X1"), TakeOut("w5", "w5")],
            "2.1 Error HS4003: H1 is changed twice | write one line: `replace H1 reversed: …`",
            "4.1 Error HS4003: w3 is changed twice | write one line: `move w3: A to B, 14 RD`",
            "6.1 Error HS4003: w4 is changed twice | write one line: `move w4: A to B, C to D`",
            "7.1 Error HS4003: w5 is changed twice");

    [Fact]
    public void A_replacement_and_a_remount_of_one_part_belong_on_one_line() =>
        Expect(Samples.Starter(), [Replace("M1", TestKinds.Starter, "12 V"), Remount("M1", null)],
            "2.1 Error HS4003: M1 is changed twice | write one line: `replace M1: …, case on …`");

    [Fact]
    public void A_new_id_must_be_new() =>
        Expect([Fit("H1", TestKinds.Horn), Run("w3", "X1", "F2.1"), Fit("K1", TestKinds.Relay), Run("K1", "X1", "F2.2"), Cut("w4", "K1.30", "K1.87", "w5"), Fit("chassis", TestKinds.Metal)],
            "1.1 Error HS4004: H1 exists already; what is new needs an id of its own | another part in its place is `replace H1: …`",
            "2.1 Error HS4004: w3 exists already; what is new needs an id of its own | the old wire is `move w3: …` or `renew w3: …`",
            "4.1 Error HS4004: K1 exists already; what is new needs an id of its own",
            "5.1 Error HS4004: w5 exists already; what is new needs an id of its own",
            "6.1 Error HS4004: chassis exists already; what is new needs an id of its own");

    [Fact]
    public void A_new_end_must_be_there_after_the_alteration() =>
        Expect([Run("w6", "K1.85", "chassis"), Run("w7", "H3.2", "chassis"), Run("w8", "H1.3", "X1"), Run("w9", "H1", "X1"), Move("w4", "H1.2 to S1.pos")],
            "1.1 Error HS4010: there is no part K1 to end on | fit it too, or name a part that is there",
            "2.1 Error HS4010: there is no part H3 to end on | did you mean H1?",
            "3.1 Error HS4011: H1 has no terminal \"3\" | a horn has 1, 2",
            "4.1 Error HS4012: H1 has several terminals | a horn has 1, 2",
            "5.1 Error HS4011: S1 has no terminal \"pos\" | a push-button has 1, 2");

    [Fact]
    public void A_new_end_is_named_by_the_new_part() =>
        Expect(Samples.Starter(), [Samples.StarterLines()[0], Run("w20", "K2.S", "F0.2")],
            "2.1 Error HS4011: K2 has no terminal \"S\" | a starter-relay has 30, 87, 86, 85");

    [Fact]
    public void Only_a_part_with_two_terminals_can_be_reversed() =>
        Expect(Samples.Starter(), [Reverse("K2"), ReplaceReversed("M1", TestKinds.Starter, "12 V")],
            "1.1 Error HS4020: K2 cannot be reversed: only a part with two terminals can, and a starter-relay-internal has 3",
            "2.1 Error HS4020: M1 cannot be reversed: only a part with two terminals can, and a starter has 1");

    [Fact]
    public void A_part_without_a_case_cannot_be_remounted() =>
        Expect([Remount("H1", null)], "1.1 Error HS4021: H1 cannot be remounted: a horn has no case");

    [Fact]
    public void What_is_bolted_to_a_part_or_stands_on_it_or_is_in_it_does_not_outlive_it() =>
        Expect(Bolted(), [TakeOut("X1", "engine", "A1"), Fit("F9", TestKinds.Fuse, joints: "1 on X1"), Fit("M2", TestKinds.Starter, on: "engine")],
            "1.1 Error HS4022: F2.1 is bolted to X1.1, which is taken out",
            "1.1 Error HS4023: M1 stands on engine, which is taken out",
            "1.1 Error HS4024: F2 is in A1, which is taken out");

    [Fact]
    public void A_new_part_cannot_be_bolted_to_one_that_is_taken_out() =>
        Expect(Bolted(), [TakeOut("F2"), TakeOut("X1"), Fit("F9", TestKinds.Fuse, joints: "1 on X1")],
            "3.1 Error HS4022: F9.1 is bolted to X1, which is taken out");

    [Fact]
    public void A_replacement_without_the_old_terminal_says_what_stood_there() =>
        Expect(Samples.Starter(), [Replace("K2", TestKinds.StarterRelay, "12 V")],
            "1.1 Error HS4030: the new K2 has no terminal \"S\", on which w5 was | say where it goes, as in \"S = …\"; a starter-relay has 30, 87, 86, 85");

    [Fact]
    public void A_moved_end_needs_no_counterpart() =>
        Assert.Empty(Problems(Apply(Samples.Starter(), Replace("K2", TestKinds.StarterRelay, "12 V"), Move("w5", "K2.S to K2.85"))));

    [Fact]
    public void A_map_names_terminals_of_the_old_and_the_new_part() =>
        Expect(Samples.Starter(), [Replace("K2", TestKinds.StarterRelay, "12 V", "SS = 85, S = 88")],
            "1.1 Error HS4011: the old K2 has no terminal \"SS\" | a starter-relay-internal has BAT, MOT, S; did you mean \"S\"?",
            "1.1 Error HS4011: the new K2 has no terminal \"88\" | a starter-relay has 30, 87, 86, 85");

    [Fact]
    public void A_part_taken_out_leaves_no_wire_hanging() =>
        Expect([TakeOut("H1"), Move("w4", "H1.2 to X1")],
            "1.1 Error HS4031: H1 is taken out, but w3 still ends on it | take w3 out as well, or move what ends there");

    [Fact]
    public void All_wires_left_on_a_part_taken_out_are_named_at_once() =>
        Expect([TakeOut("H1")], "1.1 Error HS4031: H1 is taken out, but w3 and w4 still end on it | take w3 and w4 out as well, or move what ends there");

    [Fact]
    public void The_moved_end_must_be_there() =>
        Expect([Move("w4", "H1.1 to X1"), Move("w3", "F2.2 to X1, F2.2 to H1.2"), Move("w1", "X1 to X1"), Move("w5", "K9.1 to X1")],
            "1.1 Error HS4040: w4 has no end on H1.1; it runs from H1.2 to S1.1 | the first end of a pair is the one that moves, named as it was",
            "2.1 Error HS4041: both pairs move the end of w3 that is on F2.2",
            "3.1 Error HS4042: w1 is on X1 already",
            "4.1 Error HS4040: w5 has no end on K9.1; it runs from S1.2 to chassis | the first end of a pair is the one that moves, named as it was");

    [Fact]
    public void A_wire_has_two_ends_and_only_a_spare_hangs() =>
        Expect([Run("w6", "H1.2", "H1.2"), Move("w4", "H1.2 to S1.1"), Run("w7", "X1", "free"), Run("w8", "X1", "free", "spare")],
            "1.1 Error HS4043: both ends of w6 are on H1.2",
            "2.1 Error HS4043: both ends of w4 are on S1.1",
            "3.1 Error HS4045: w7 hangs free at one end, and is no spare | say `spare` if it is to be one");

    [Fact]
    public void A_renewed_wire_has_something_new() =>
        Expect([Renew("w3", ""), Renew("w4", "16 YE")],
            "1.1 Error HS4044: w3 is renewed, but nothing about it is new | say what is new, such as size, colour or length",
            "2.1 Error HS4044: w4 is renewed, but nothing about it is new | say what is new, such as size, colour or length");

    [Fact]
    public void No_wire_lands_on_a_part_that_is_taken_out() =>
        Expect([TakeOut("H1", "w3", "w4"), Run("w6", "X1", "H1.1")], "2.1 Error HS4046: w6 lands on H1, which is taken out");

    [Fact]
    public void A_new_end_on_a_reversed_part_is_noted_as_named_after()
    {
        var result = Apply(Horn, Run("w6", "G1.pos", "F2.1", "14 RD"), ReplaceReversed("G1", TestKinds.Battery, "12 V"));
        Assert.Equal(["1.1 Note HS4101: w6 ends on G1.pos, and G1 is reversed: the end is named as it is after"], Problems(result));
        Assert.Equal("w6: G1.pos to F2.1, 14 RD", CircuitText.Wire(result.Alteration!.After, "w6"));
    }

    [Fact]
    public void Work_on_one_part_that_names_another_is_noted()
    {
        var result = Apply(Horn, Do("G1", "measure at F2 first"), Do("F2", "label it Horn button"), Do("H1", "listen to the Horn buttons"), Do("S1", "clean the S1 contacts"));
        Assert.Equal(
            ["1.1 Note HS4102: the work on G1 names F2, which is another part", "2.1 Note HS4102: the work on F2 names S1 (Horn button), which is another part"],
            Problems(result));
        Assert.NotNull(result.Alteration);
    }

    [Fact]
    public void What_a_line_that_could_not_be_read_would_have_brought_is_not_missed()
    {
        var result = Apply(Horn, One(new UnreadEdit(["K1"])), Move("w4", "H1.2 to K1.85"), Run("w6", "H1.2", "chassis"));
        Assert.Empty(result.Problems);
        Assert.Null(result.Alteration);
    }

    [Fact]
    public void Errors_in_one_line_do_not_hide_those_in_another()
    {
        var result = Apply(Horn, TakeOut("w9"), Many(Run("w6", "H9.1", "X1"), Renew("w3", "")));
        Assert.Equal([(0, 0), (1, 0), (1, 1)], result.Problems.Select(p => (p.Group, p.Edit)));
    }

    private static Circuit Bolted()
    {
        var circuit = new CircuitBuilder(ElectricPotential.FromVolts(6), Ground.Negative)
            .Part("A1", TestKinds.Assembly).Part("X1", TestKinds.FeedRail).Part("engine", TestKinds.Metal)
            .Part("F2", TestKinds.Fuse, new() { Joints = new Dictionary<string, string> { ["1"] = "X1" }.ToImmutableDictionary() })
            .Part("M1", TestKinds.Starter, new() { Case = "engine" }).Build();
        var parts = circuit.Parts.Select(p => p.Id == "F2" ? p with { Spec = p.Spec with { Assembly = "A1" } } : p);
        return new(circuit.System, [.. parts], circuit.Conductors, circuit.Settings);
    }

    private static void Expect(EditGroup[] groups, params string[] problems) => Expect(Horn, groups, problems);

    private static void Expect(Circuit before, EditGroup[] groups, params string[] problems)
    {
        var result = Apply(before, groups);
        Assert.Equal(problems, Problems(result));
        Assert.Null(result.Alteration);
    }
}
