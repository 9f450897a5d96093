using Hotside.Alterations;
using Hotside.Circuits;
using UnitsNet;
using static Hotside.Tests.Alterations.Lines;

namespace Hotside.Tests.Alterations;

public class BetweenTests
{
    [Fact]
    public void Comparing_before_and_after_gives_the_list_that_made_after()
    {
        var seen = new SortedSet<string>(StringComparer.Ordinal);
        for (int seed = 0; seed < 500; seed++)
        {
            var (before, groups) = GeneratedAlterations.Of(seed);
            var made = Made(before, groups);
            var compared = Alteration.Between(before, made.After, "Test");
            Assert.True(ChangeDump.Of(made) == ChangeDump.Of(compared), $"seed {seed}\n{ChangeDump.Of(made)}\n--\n{ChangeDump.Of(compared)}");
            seen.UnionWith(made.Changes.Select(c => c.Acts[0].GetType().Name));
        }
        Assert.Equal("Cut Fit Move Renew Replace Reverse Run TakeOut", string.Join(' ', seen));
    }

    [Fact]
    public void Every_number_is_on_an_item_and_every_changed_item_has_a_number()
    {
        var all = Enumerable.Range(0, 200).Select(GeneratedAlterations.Of).Select(g => Made(g.Before, g.Groups));
        foreach (var alteration in all.Append(Samples.HornAltered()).Append(Samples.StarterAltered()))
        {
            string[] ids = [.. Ids(alteration.Before).Concat(Ids(alteration.After)).Distinct()];
            Assert.Equal(alteration.Changes.Select(c => c.Number), ids.SelectMany(i => alteration.NumbersOf(i)).Distinct().Order());
            foreach (string id in ids)
                Assert.True(!IsChanged(alteration, id) || !alteration.NumbersOf(id).IsEmpty, $"{id} has no number:\n{ChangeDump.Of(alteration)}");
        }
    }

    [Fact]
    public void The_horn_circuits_compared_give_the_horn_list_in_the_fixed_order()
    {
        var horn = Samples.HornAltered();
        Assert.Equal(
            """
            1 TakeOut w3
            2 Replace F2
            3 Replace H1
            4 Fit K1
            5 Move w4 H1.2>K1.85
            6 Run w6
            7 Run w7
            8 Run w8
            9 Run w9
            10 Replace G1 reversed
            """, ChangeDump.Of(Alteration.Between(horn.Before, horn.After, "Horn")));
    }

    [Fact]
    public void A_wire_written_the_other_way_round_is_the_same_wire()
    {
        var before = Lamp("E1.1", "X1");
        Assert.Empty(Alteration.Between(before, Lamp("X1", "E1.1"), "Test").Changes);
    }

    [Fact]
    public void A_wire_cut_with_nothing_measured_is_compared_as_cut()
    {
        var before = Samples.Horn();
        var cut = Made(before, Fit("F1", TestKinds.Fuse, "10 A"), Cut("w3", "F1.1", "F1.2", "w20"));
        Assert.Equal("1 Fit F1\n2 Cut w3,w20 F1.1|F1.2", ChangeDump.Of(Alteration.Between(before, cut.After, "Test")));
    }

    [Fact]
    public void A_wire_cut_whose_halves_were_measured_is_compared_as_moved_and_run()
    {
        var before = Samples.Horn();
        var cut = Made(before, Fit("F1", TestKinds.Fuse, "10 A"), Move("w3", "H1.1 to F1.1", "0.4 m"), Run("w20", "F1.2", "H1.1", "14 BK 1 m"));
        Assert.Equal("1 Fit F1\n2 Move w3 H1.1>F1.1\n3 Run w20", ChangeDump.Of(Alteration.Between(before, cut.After, "Test")));
    }

    [Fact]
    public void Pairs_of_ids_make_two_circuits_written_apart_one_alteration()
    {
        var horn = Samples.HornAltered();
        var apart = CircuitRenaming.Of(horn.After, horn.After, []);
        apart = new(apart.System, [.. apart.Parts.Select(p => p.Id == "H1" ? new Part("H7", p.Spec) : p)],
            [.. apart.Conductors.Select(c => c.Id == "w4" ? c with { Id = "w40" } : c).Select(c => c with { From = H7(c.From), To = H7(c.To) })], apart.Settings);
        var joined = Alteration.Between(horn.Before, apart, "Horn", ("H1", "H7"), ("w4", "w40"));
        Assert.Equal(ChangeDump.Of(Alteration.Between(horn.Before, horn.After, "Horn")), ChangeDump.Of(joined));
        Assert.Equal(CircuitText.Sorted(horn.After), CircuitText.Sorted(joined.After));

        static End H7(End end) => end.Part == "H1" ? End.At("H7", end.Terminal) : end;
    }

    [Fact]
    public void Pairs_that_make_no_sense_are_refused_with_the_nearest_name()
    {
        var horn = Samples.HornAltered();
        Assert.Equal("There is no \"S11\" before; did you mean \"S1\"? (Parameter 'same')",
            Assert.Throws<ArgumentException>(() => Alteration.Between(horn.Before, horn.After, "T", ("S11", "H1"))).Message);
        Assert.Equal("\"S1\" is something else after; pair it too, or give it another id. (Parameter 'same')",
            Assert.Throws<ArgumentException>(() => Alteration.Between(horn.Before, horn.After, "T", ("S1", "K1"))).Message);
        Assert.Equal("\"H1 = w6\" makes a part of a wire. (Parameter 'same')",
            Assert.Throws<ArgumentException>(() => Alteration.Between(horn.Before, horn.After, "T", ("H1", "w6"))).Message);
    }

    [Fact]
    public void A_case_on_something_else_is_a_remount_and_a_joint_elsewhere_a_replacement()
    {
        var before = Samples.Starter();
        var after = Made(before, Remount("M1", null), Replace("F0", TestKinds.Fuse, "50 A", joints: "1 on engine")).After;
        Assert.Equal("1 Remount M1\n2 Replace F0", ChangeDump.Of(Alteration.Between(before, after, "Test")));
    }

    [Fact]
    public void A_brittle_wire_renewed_like_for_like_is_renewed()
    {
        var before = Lamp("X1", "E1.1", "14 BK brittle");
        Assert.Equal("1 Renew w1", ChangeDump.Of(Alteration.Between(before, Lamp("X1", "E1.1", "14 BK"), "Test")));
        Assert.Equal("1 Renew w1", ChangeDump.Of(Made(before, Renew("w1", "14 BK"))));
    }

    private static Circuit Lamp(string from, string to, string wire = "14 BK") => new CircuitBuilder(ElectricPotential.FromVolts(12), Ground.Negative)
        .Part("X1", TestKinds.FeedRail).Part("E1", TestKinds.Lamp).Wire("w1", from, to, WireOf(wire)).Build();

    private static IEnumerable<string> Ids(Circuit circuit) => circuit.Parts.Select(p => p.Id).Concat(circuit.Conductors.Select(c => c.Id));

    private static bool IsChanged(Alteration alteration, string id)
    {
        if (alteration.Before.FindPart(id) is { } oldPart && alteration.After.FindPart(id) is { } newPart)
            return oldPart.Kind.Id != newPart.Kind.Id || !oldPart.Ratings.SequenceEqual(newPart.Ratings);
        if (alteration.Before.FindConductor(id) is { } old && alteration.After.FindConductor(id) is { } now)
            return old.Wire != now.Wire || (old != now && old.Ends.Concat(now.Ends).All(e => e.Part is null || alteration.StateOf(e.Part) == PartState.Left));
        return true;
    }
}
