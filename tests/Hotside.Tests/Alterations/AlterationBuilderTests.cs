using Hotside.Alterations;
using Hotside.Circuits;
using UnitsNet;
using static UnitsNet.ElectricPotential;

namespace Hotside.Tests.Alterations;

public class AlterationBuilderTests
{
    private static readonly PartDetails TwelveVolts = new() { Voltage = FromVolts(12) };

    [Fact]
    public void The_horn_alteration_built_in_code_is_the_one_read_from_lines()
    {
        var built = Samples.Horn().Alter("12 V negative ground, with a horn relay")
            .System(FromVolts(12), Ground.Negative)
            .TakeOut("w3")
            .Replace("F2", TestKinds.Fuse, new() { Current = ElectricCurrent.FromAmperes(10) })
            .Replace("H1", TestKinds.Horn, TwelveVolts with { Current = ElectricCurrent.FromAmperes(5) })
            .Fit("K1", TestKinds.Relay, TwelveVolts with { Name = "Horn relay", Current = ElectricCurrent.FromAmperes(30), CoilCurrent = ElectricCurrent.FromAmperes(0.15) },
                because: "S1 then carries 0.15 A, not 8 A")
            .Move("w4", "H1.2", "K1.85")
            .Run("w6", "H1.2", "chassis", new(WireSize.Awg(14), "BK", Length.FromMeters(0.4)))
            .Run("w7", "K1.87", "H1.1", new(WireSize.Awg(14), "GN", Length.FromMeters(0.9)))
            .Run("w8", "K1.30", "K1.86", new(WireSize.Awg(16), "RD", Length.FromMeters(0.1)))
            .Run("w9", "F2.2", "K1.30", new(WireSize.Awg(14), "RD", Length.FromMeters(0.2)))
            .ReplaceReversed("G1", TestKinds.Battery, TwelveVolts with { Capacity = ElectricCharge.FromAmpereHours(60) })
            .Build();
        var read = Samples.HornAltered();
        Assert.Equal(ChangeDump.Of(read), ChangeDump.Of(built));
        Assert.Equal(CircuitText.Of(read.After), CircuitText.Of(built.After));
        Assert.Equal("12 V negative ground, with a horn relay", built.Title);
    }

    [Fact]
    public void A_wrong_line_throws_at_once_and_names_its_argument_and_the_nearest_right_name()
    {
        var builder = Samples.Horn().Alter("Test");
        Refuses("There is no w33 before the alteration (did you mean w3?). (Parameter 'id')", () => builder.TakeOut("w33"));
        Refuses("There is no part K1 to end on (fit it too, or name a part that is there). (Parameter 'to')", () => builder.Move("w4", "H1.2", "K1.85"));
        Refuses("w4 has no end on H1.1; it runs from H1.2 to S1.1 (the first end of a pair is the one that moves, named as it was). (Parameter 'from')", () => builder.Move("w4", "H1.1", "X1"));
        Refuses("H1 exists already; what is new needs an id of its own (another part in its place is `replace H1: …`). (Parameter 'id')", () => builder.Fit("H1", TestKinds.Relay));
        Refuses("\"K 1\" is no id: ids are letters, digits, - and _. (Parameter 'id')", () => builder.Fit("K 1", TestKinds.Relay));
        Refuses("A relay has no rating \"W\". (Parameter 'details')", () => builder.Fit("K1", TestKinds.Relay, new() { Power = Power.FromWatts(5) }));
        Refuses("H1 has no terminal \"3\" (a horn has 1, 2). (Parameter 'from')", () => builder.Run("w6", "H1.3", "X1"));
        Refuses("Both ends of w6 are on H1.2. (Parameter 'to')", () => builder.Run("w6", "H1.2", "H1.2"));
        Refuses("w3 is renewed, but nothing about it is new (say what is new, such as size, colour or length). (Parameter 'wire')", () => builder.Renew("w3", new()));
        Refuses("w5 exists already; what is new needs an id of its own. (Parameter 'newId')", () => builder.Cut("w3", "S1.1", "S1.2", "w5"));
        Refuses("the new H1 has no terminal \"3\" (a relay has 86, 85, 30, 87; did you mean \"30\"?). (Parameter 'map')",
            () => builder.Replace("H1", TestKinds.Relay, map: new Dictionary<string, string> { ["1"] = "3" }));
        Refuses("H1 cannot be remounted: a horn has no case. (Parameter 'id')", () => builder.Remount("H1", "insulated"));
        Refuses("S1 has no position \"presed\"; it has released, pressed; did you mean \"pressed\"? (Parameter 'position')", () => builder.Setting("horn", ("S1", "presed")));
        Assert.Empty(builder.Build().Changes);
    }

    [Fact]
    public void What_a_later_line_cures_is_no_error_until_the_end()
    {
        var builder = Samples.Horn().Alter("Test").TakeOut("H1").TakeOut("w3");
        Refuses("H1 is taken out, but w4 still ends on it (take w4 out as well, or move what ends there). (Parameter 'H1')", () => builder.Build());
        Assert.Equal("1 TakeOut w3\n2 Move w4 H1.2>X1.1\n3 TakeOut H1", ChangeDump.Of(builder.Move("w4", "H1.2", "X1").Build()));
    }

    [Fact]
    public void Settings_stay_but_for_what_they_say_of_parts_that_are_gone()
    {
        var altered = Samples.Horn().Alter("Test").TakeOut(["S1", "w4", "w5"]).Fit("S2", TestKinds.PushButton).Setting("second horn", ("S2", "pressed")).Build();
        Assert.Equal(["horn pressed:", "second horn: S2 pressed"],
            altered.After.Settings.Select(s => $"{s.Name}: {string.Join(", ", s.Positions.Select(p => p.Part + " " + p.Position))}".TrimEnd()));
    }

    [Fact]
    public void All_other_lines_can_be_built_too()
    {
        var altered = Samples.Starter().Alter("Test")
            .Fit("F1", TestKinds.Fuse)
            .Cut("w4", "F1.1", "F1.2", "w20")
            .Renew("w7", new() { Size = WireSize.Awg(6) })
            .Remount("M1", "insulated", because: "new mounts")
            .Reverse("F0")
            .Move("w5", ("K2.S", "F1.1"), ("S2.1", "F1.2"))
            .Do("M1", "let it cool")
            .Build();
        Assert.Equal(
            """
            1 Fit F1
            2 Cut w4,w20 F1.1|F1.2
            3 Renew w7
            4 Remount M1 because new mounts
            5 Reverse F0
            6 Move w5 K2.S>F1.1, S2.1>F1.2
            7 Work M1: let it cool
            """, ChangeDump.Of(altered));
    }

    private static void Refuses(string message, Action line) => Assert.Equal(message, Assert.Throws<ArgumentException>(line).Message);
}
