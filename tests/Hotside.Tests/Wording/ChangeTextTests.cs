using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Tests.Alterations;
using Hotside.Wording;
using UnitsNet;
using static Hotside.Tests.Alterations.Lines;

namespace Hotside.Tests.Wording;

public class ChangeTextTests
{
    [Fact]
    public void The_horn_list_reads_as_the_reference_sheet_means_it() =>
        Assert.Equal(
            """
            take out H1 feed wire w3, 14 BK
            replace F2: fuse, 10 A
            replace H1: horn, 12 V, 5 A
            fit relay K1, Horn relay, 12 V, 30 A, coil 0.15 A, because S1 then carries 0.15 A, not 8 A
            move w4, 16 YE, from H1.2 to K1.85
            run w6 from H1.2 to chassis, 14 BK, 0.4 m
            run w7 from K1.87 to H1.1, 14 GN, 0.9 m
            run w8 from K1.30 to K1.86, 16 RD, 0.1 m
            run w9 from F2.2 to K1.30, 14 RD, 0.2 m
            replace G1: battery, 12 V, 60 Ah; leads swapped, minus pole to chassis
            """, Full(Samples.HornAltered()));

    [Fact]
    public void The_starter_list_tells_where_mapped_wires_go() =>
        Assert.Equal(
            """
            replace K2: starter relay, 12 V, coil 4 A; wires from BAT to 30, MOT to 87 and S to 85
            fit fuse F1, 5 A, 1 on K2.30, because the coil feed is 16 AWG
            run w10 from F1.2 to K2.86, 16 RD, 0.1 m
            M1: crank no longer than 10 s at a time, then let it cool
            replace G1: battery, 12 V, 60 Ah; leads swapped, minus pole to chassis
            """, Full(Samples.StarterAltered()));

    [Fact]
    public void A_crowded_sheet_gets_the_short_forms() =>
        Assert.Equal(
            """
            take out w3
            replace F2: fuse, 10 A
            replace H1: horn, 12 V
            fit relay K1, 12 V
            move w4 to K1.85
            run w6 from H1.2 to chassis
            run w7 from K1.87 to H1.1
            run w8 from K1.30 to K1.86
            run w9 from F2.2 to K1.30
            replace G1: battery, 12 V, leads swapped
            """, string.Join('\n', Texts(Samples.HornAltered()).Select(t => t.Short)));

    [Fact]
    public void A_line_takes_the_longest_form_that_fits()
    {
        var fit = Texts(Samples.HornAltered())[3];
        Assert.Equal(fit.WithReason, fit.Within(200));
        Assert.Equal("fit relay K1, Horn relay, 12 V, 30 A, coil 0.15 A", fit.Within(60));
        Assert.Equal("fit relay K1, 12 V", fit.Within(10));
        Assert.Equal("S1 then carries 0.15 A, not 8 A", fit.Reason);
    }

    [Theory]
    [InlineData("take out wire w4 from H1.2 to S1.1, 16 YE", "take out w4")]
    [InlineData("swap the leads of fuse F2", "swap the leads of F2")]
    [InlineData("fit fuses F3 and F4, 7.5 A, 1 on X1", "fit fuses F3 and F4, 7.5 A")]
    [InlineData("cut w3, 14 BK: it now ends on F3.1; the rest is w20, from F3.2 to H1.1", "cut w3 for F3")]
    [InlineData("run w21 from X1 to chassis", "run w21 from X1 to chassis")]
    [InlineData("run w22 from X1, other end free, 18 GY, 0.3 m, spare", "run w22 from X1, other end free")]
    [InlineData("move w5, 16 BK, from S1.2 to F4.2 and from chassis to X1", "move w5 to F4.2 and X1")]
    [InlineData("move w2, 2 BK, from chassis to F4.1; renew it as 1/0 RD", "move w2 to F4.1")]
    [InlineData("renew w1 as 6 BN", "renew w1 as 6 BN")]
    public void Each_act_reads_as_an_order(string full, string shortly)
    {
        var before = Samples.Horn();
        EditGroup[] lines =
        [
            TakeOut("w4"), Reverse("F2"), Fit("F3, F4", TestKinds.Fuse, "7.5 A", joints: "1 on X1"), Cut("w3", "F3.1", "F3.2", "w20"),
            Run("w21", "X1", "chassis"), Run("w22", "X1", "free", "18 GY 0.3 m spare"), Move("w5", "S1.2 to F4.2, chassis to X1"),
            Move("w2", "chassis to F4.1", "1/0 RD"), Renew("w1", "6 BN"),
        ];
        var found = Texts(Made(before, lines)).Single(t => t.Full == full);
        Assert.Equal(shortly, found.Short);
    }

    [Fact]
    public void Parts_and_wires_taken_out_under_one_number_are_told_apart()
    {
        var before = new CircuitBuilder(ElectricPotential.FromVolts(6), Ground.Positive)
            .Part("G2", TestKinds.Generator).Part("X5", TestKinds.Splice).Wire("w5", "X5", "G2.A").Wire("w6", "X5", "chassis").Build();
        var made = Made(before, TakeOut("G2", "X5", "w5", "w6"));
        Assert.Equal("take out generator G2, splice X5 and wires w5 and w6", Full(made));
        Assert.Equal("take out dynamo G2, joint X5 and wires w5 and w6", Full(made, Words.British));
    }

    [Fact]
    public void Several_acts_under_one_number_are_one_line() =>
        Assert.Equal("take out wire w4 from H1.2 to S1.1, 16 YE; replace H1: horn, 12 V", Full(Made(Samples.Horn(), Many(TakeOut("w4"), Replace("H1", TestKinds.Horn, "12 V")))));

    [Fact]
    public void A_mount_reads_as_an_order()
    {
        Assert.Equal("insulate the case of M1", Full(Made(Samples.Starter(), Remount("M1", null))));
        Assert.Equal("put the case of M1 on chassis", Full(Made(Samples.Starter(), Remount("M1", "chassis"))));
    }

    [Fact]
    public void Wires_are_called_by_what_they_do_where_the_circuit_tells()
    {
        var starter = Samples.Starter();
        string Called(string id, Words words = Words.American) => WireNaming.Of(starter.FindConductor(id)!, starter, words);
        Assert.Equal("battery cable w1", Called("w1"));
        Assert.Equal("battery ground cable w2", Called("w2"));
        Assert.Equal("ground strap w4", Called("w4"));
        Assert.Equal("earth strap w4", Called("w4", Words.British));
        // Behind a contact: whether it feeds is for the study to say.
        Assert.Equal("wire w3", Called("w3"));
        Assert.Equal("wire w5", Called("w5"));
    }

    private static ChangeText[] Texts(Alteration alteration, Words words = Words.American) =>
        [.. alteration.Changes.Select(c => ChangeText.Of(c, alteration, words))];

    private static string Full(Alteration alteration, Words words = Words.American) =>
        string.Join('\n', Texts(alteration, words).Select(t => t.WithReason));
}
