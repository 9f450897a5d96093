using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.Circuits;
using UnitsNet;
using static Hotside.Tests.Alterations.Lines;

namespace Hotside.Tests.Alterations;

/// <summary>The horn and the starter of an invented van, before and as altered.</summary>
internal static class Samples
{
    public static ElectricalSystem TwelveNegative { get; } = new([12], Ground.Negative) { SizesIn = Unit.Awg };

    public static Circuit Horn() => new CircuitBuilder(ElectricPotential.FromVolts(6), Ground.Positive)
        .Part("G1", TestKinds.Battery, Details("6 V, 90 Ah"))
        .Part("X1", TestKinds.FeedRail, new() { Name = "Battery feed" })
        .Part("F2", TestKinds.Fuse, Details("15 A", "1 on X1"))
        .Part("H1", TestKinds.Horn, Details("6 V, 8 A"))
        .Part("S1", TestKinds.PushButton, new() { Name = "Horn button" })
        .Wire("w1", "G1.neg", "X1", WireOf("2 BK 0.6 m"))
        .Wire("w2", "G1.pos", "chassis", WireOf("2 BK 0.5 m"))
        .Wire("w3", "F2.2", "H1.1", WireOf("14 BK 1.4 m"))
        .Wire("w4", "H1.2", "S1.1", WireOf("16 YE 1.1 m"))
        .Wire("w5", "S1.2", "chassis", WireOf("16 BK 0.2 m"))
        .Setting("horn pressed", ("S1", "pressed"))
        .Build();

    public static EditGroup[] HornLines() =>
    [
        TakeOut("w3"),
        Replace("F2", TestKinds.Fuse, "10 A"),
        Replace("H1", TestKinds.Horn, "12 V, 5 A"),
        Fit("K1", TestKinds.Relay, "12 V, 30 A, coil 0.15 A", "Horn relay") with { Reason = "S1 then carries 0.15 A, not 8 A" },
        Move("w4", "H1.2 to K1.85"),
        Run("w6", "H1.2", "chassis", "14 BK 0.4 m"),
        Run("w7", "K1.87", "H1.1", "14 GN 0.9 m"),
        Run("w8", "K1.30", "K1.86", "16 RD 0.1 m"),
        Run("w9", "F2.2", "K1.30", "14 RD 0.2 m"),
        ReplaceReversed("G1", TestKinds.Battery, "12 V, 60 Ah"),
    ];

    public static Alteration HornAltered() => Made(Horn(), TwelveNegative, HornLines());

    public static Circuit Starter() => new CircuitBuilder(ElectricPotential.FromVolts(6), Ground.Positive)
        .Part("G1", TestKinds.Battery, Details("6 V, 100 Ah"))
        .Part("engine", TestKinds.Metal, new() { Name = "Engine block" })
        .Part("K2", TestKinds.StarterRelayInternal, Details("6 V, coil 8 A") with { Name = "Starter relay" })
        .Part("M1", TestKinds.Starter, Details("6 V, 180 A") with { Case = "engine" })
        .Part("S2", TestKinds.PushButton, new() { Name = "Starter button" })
        .Part("F0", TestKinds.Fuse, Details("50 A") with { Name = "Main fuse" })
        .Part("A1", TestKinds.Elsewhere, new() { Name = "Fuse box" })
        .Wire("w1", "G1.neg", "K2.BAT", WireOf("1/0 BK 0.7 m"))
        .Wire("w2", "G1.pos", "chassis", WireOf("1/0 braid 0.4 m"))
        .Wire("w3", "K2.MOT", "M1.1", WireOf("1/0 BK 0.6 m"))
        .Wire("w4", "engine", "chassis", WireOf("1/0 braid 0.3 m 0.0004 ohm"))
        .Wire("w5", "K2.S", "S2.1", WireOf("16 YE 1.2 m"))
        .Wire("w6", "S2.2", "chassis", WireOf("16 BK 0.2 m"))
        .Wire("w7", "K2.BAT", "F0.1", WireOf("8 BN 0.15 m"))
        .Wire("w8", "F0.2", "A1.30", WireOf("8 BN 2.1 m"))
        .Setting("cranking", ("S2", "pressed"))
        .Build();

    public static EditGroup[] StarterLines() =>
    [
        Replace("K2", TestKinds.StarterRelay, "12 V, coil 4 A", "BAT = 30, MOT = 87, S = 85"),
        Fit("F1", TestKinds.Fuse, "5 A", joints: "1 on K2.30") with { Reason = "the coil feed is 16 AWG" },
        Run("w10", "F1.2", "K2.86", "16 RD 0.1 m"),
        Do("M1", "crank no longer than 10 s at a time, then let it cool"),
        ReplaceReversed("G1", TestKinds.Battery, "12 V, 60 Ah"),
    ];

    public static Alteration StarterAltered() => Made(Starter(), TwelveNegative, StarterLines());

    private static PartDetails Details(string ratings, string joints = "") => new()
    {
        Ratings = Spec(TestKinds.Fuse, ratings).Ratings.ToImmutableDictionary(r => r.Name, r => r.Quantity),
        Joints = Spec(TestKinds.Fuse, "", null, joints).Joints.ToImmutableDictionary(j => j.Terminal, j => j.On.ToString()),
    };
}
