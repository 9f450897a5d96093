namespace Hotside.Tests.Sizing;

/// <summary>The worked example of the solver with its insulation, and with three more live wires in the loom of two of its wires, fed by a battery of their own.</summary>
internal static class TwoLamps
{
    public static string Text(string insulation = ", insulation GPT", string loom = "") => Solving.WorkedExampleTests.Text
        .Replace("sizes in AWG", "sizes in AWG" + insulation, StringComparison.Ordinal)
        .Replace("RD, 2.6 m", "RD, 2.6 m" + loom, StringComparison.Ordinal).Replace("RD, 3.1 m", "RD, 3.1 m" + loom, StringComparison.Ordinal)
        .Replace("wires:\n", "  G9: battery, 12 V, 8 mohm, neg on chassis\n" + string.Concat(Lamps.Select(n => $"  E{n}: lamp, 12 V, 5 W, 2 on chassis\n")) + "wires:\n", StringComparison.Ordinal)
        .Replace("settings:\n", string.Concat(Lamps.Select(n => $"  w1{n}: G9.pos to E{n}.1, 16 BU, 1 m{loom}\n")) + "settings:\n", StringComparison.Ordinal);

    private static readonly int[] Lamps = [7, 8, 9];
}
