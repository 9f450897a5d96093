using Hotside.Studies;

namespace Hotside.Tests.Studies;

/// <summary>Fuses from the battery outward.</summary>
public class FuseOrderTests
{
    // F3 is the main fuse, F2 stands behind it and F1 behind both; F4 feeds nothing, F5 is on a short way of its own.
    private const string Text = """
        hotside: 1
        title: Fuses behind fuses
        system: 12 V, negative ground
        parts:
          G1: battery, 12 V, 60 Ah
          F1: fuse, 5 A
          F2: fuse, 10 A
          F3: fuse, 30 A
          F4: fuse, 5 A
          F5: fuse, 5 A
          S1: switch
          E1: lamp, 12 V, 5 W
          E2: lamp, 12 V, 21 W
          E3: lamp, 12 V, 5 W
        wires:
          w1: G1.neg to chassis, 10 mm2, 0.5 m
          w2: G1.pos to F3.1, 10 mm2, 0.5 m
          w3: F3.2 to F2.1, 4 mm2, 0.5 m
          w4: F2.2 to S1.1, 4 mm2, 0.5 m
          w5: S1.2 to E2.1, 4 mm2, 0.5 m
          w6: S1.2 to F1.1, 4 mm2, 0.5 m
          w7: F1.2 to E1.1, 1.5 mm2, 0.5 m
          w8: E1.2 to chassis, 1.5 mm2, 0.5 m
          w9: E2.2 to chassis, 1.5 mm2, 0.5 m
          w10: F3.2 to F4.1, 1.5 mm2, 0.5 m
          w11: G1.pos to F5.1, 1.5 mm2, 0.5 m
          w12: F5.2 to E3.1, 1.5 mm2, 0.5 m
          w13: E3.2 to chassis, 1.5 mm2, 0.5 m
        """;

    [Fact]
    public void A_fuse_has_as_many_before_it_as_feed_it()
    {
        FuseOrder order = new(Job.Read(Text).OrThrow().Study.After);
        Assert.Equal([2, 1, 0, int.MaxValue, 0], new[] { "F1", "F2", "F3", "F4", "F5" }.Select(order.Before));
    }

    [Fact]
    public void The_check_sheet_and_the_work_order_put_them_in_alike()
    {
        var job = Job.Read(Text + "\nalteration:\n  title: Another battery\n  changes:\n    - replace G1: battery, 12 V, 70 Ah\n").OrThrow();
        Assert.Contains("from the battery outward: F3, F5, F2, F1, F4.", string.Join('\n', job.WorkOrder.Steps.SelectMany(s => s.Acts).Select(a => a.Text)), StringComparison.Ordinal);
        Assert.Contains(job.CheckSheet().Rows, r => r.Setting.StartsWith("F3, F5, F2, F1, F4 in one by one", StringComparison.Ordinal));
    }
}
