namespace Hotside.Tests.Sizing;

/// <summary>The worked example of the solver with its insulation, and with three more live wires in the loom of two of its wires, fed by a battery of their own.</summary>
internal static class TwoLamps
{
    public static string Text(string insulation = ", insulation GPT", string loom = "") => $"""
        hotside: 1
        title: Two lamps
        system: 12 V, negative ground, sizes in AWG{insulation}
        kinds:
          measured-switch:
            like: switch
            ratings:
              ohm: contact
        parts:
          G1: battery, 12 V, 8 mohm
          F1: fuse, 10 A
          S1: measured-switch, 10 mohm
          J1: splice
          E1: lamp, 12 V, 35 W
          E2: lamp, 12 V, 35 W
          G9: battery, 12 V, 8 mohm, neg on chassis
          E7: lamp, 12 V, 5 W, 2 on chassis
          E8: lamp, 12 V, 5 W, 2 on chassis
          E9: lamp, 12 V, 5 W, 2 on chassis
        wires:
          w1: G1.pos to F1.1, 10 RD, 0.4 m
          w2: F1.2 to S1.1, 14 RD, 2.6 m{loom}
          w3: S1.2 to J1, 14 RD, 3.1 m{loom}
          w4: J1 to E1.1, 16 RD, 0.9 m
          w5: J1 to E2.1, 16 RD, 0.9 m
          w6: E1.2 to chassis, 16 BK, 0.5 m
          w7: E2.2 to chassis, 16 BK, 0.5 m
          w8: chassis to G1.neg, 4 BK, 0.3 m
          w17: G9.pos to E7.1, 16 BU, 1 m{loom}
          w18: G9.pos to E8.1, 16 BU, 1 m{loom}
          w19: G9.pos to E9.1, 16 BU, 1 m{loom}
        settings:
          lights: S1 on
        """;
}
