using Hotside.Orders;
using Hotside.Tests.Support;

namespace Hotside.Tests.Orders;

/// <summary>The planned order beside all others that the hard rules allow.</summary>
public class BestOrderTests
{
    // Every order is looked at: none harms the one battery in fewer states without harming the other in more.
    [Theory]
    [InlineData("courtesy")]
    [InlineData("gauges")]
    [InlineData("fuel-pump")]
    [InlineData("horn")]
    public void No_order_is_better_with_both_batteries(string name)
    {
        var job = OrderJobs.OfGallery(name);
        Verdicts planned = new(job.Plan, job.Study);
        var best = new BestOrders(job, 60000).Pairs();
        Assert.NotEmpty(best);
        Assert.Contains((planned.HarmfulStates(Battery.New), planned.HarmfulStates(Battery.Old)), best);
    }

    // Larger ones are looked at by the benchmark "best"; what it found stands here, so that no rule makes it worse.
    [Theory]
    [InlineData("gauges", 8, 4)]
    [InlineData("gauges-each", 27, 4)]
    [InlineData("turn-signals", 22, 6)]
    [InlineData("trailer", 24, 9)]
    [InlineData("headlamps", 5, 2)]
    [InlineData("charging", 12, 1)]
    [InlineData("tractor", 1, 0)]
    [InlineData("van", 15, 1)]
    public void No_order_is_worse_than_it_was(string name, int fresh, int old)
    {
        var job = OrderJobs.OfGallery(name);
        Verdicts planned = new(job.Plan, job.Study);
        Assert.True(planned.HarmfulStates(Battery.New) <= fresh && planned.HarmfulStates(Battery.Old) <= old, $"{planned.HarmfulStates(Battery.New)}/{planned.HarmfulStates(Battery.Old)}");
    }

    // The reducer that stands on its case needs no ground wire: three acts less, and three states.
    [Fact]
    public void Gauges_whose_reducer_stands_on_metal_are_as_first_tried()
    {
        string text = File.ReadAllText(Repository.Path("gallery", "gauges", "job.yaml"));
        string[] lines = [.. text.Replace("case insulated, because", "case on chassis, because", StringComparison.Ordinal).Split('\n').Where(l => !l.Contains("run w14", StringComparison.Ordinal))];
        var job = Job.Read(string.Join('\n', lines)).OrThrow();
        Verdicts planned = new(job.Plan, job.Study);
        Assert.Equal((5, 4), (planned.HarmfulStates(Battery.New), planned.HarmfulStates(Battery.Old)));
    }

    // Where the sign stays, neither battery harms a part for its sign's sake: it is replaced with the rest, not last.
    [Theory]
    [InlineData("negative", "Swap E1, Swap E2, Swap G1")]
    [InlineData("positive", "Swap E2, Swap E1, Swap G1")]
    public void What_minds_polarity_comes_last_only_where_polarity_turns(string ground, string expected)
    {
        bool turns = ground == "positive";
        var job = Job.Read($"""
            hotside: 1
            title: Two lamps
            system: 6 V, {ground} ground, sizes in AWG
            parts:
              G1: battery, 6 V, 60 Ah
              F1: fuse, 5 A
              S1: switch, 10 A
              E1: lamp, 6 V, 5 W, 2 on chassis
              E2: lamp, 6 V, 5 W, 2 on chassis
            wires:
              w1: G1.{(turns ? "neg" : "pos")} to F1.1, 12 RD, 0.3 m
              w2: G1.{(turns ? "pos" : "neg")} to chassis, 2 BK, 0.4 m
              w3: F1.2 to S1.1, 16 RD, 1 m
              w4: S1.2 to E1.1, 16 BN, 1 m
              w5: E1.1 to E2.1, 16 BN, 1 m
            alteration:
              system: 12 V, negative ground
              changes:
                - replace E1: led-lamp, 12 V, 1 W
                - replace E2: lamp, 12 V, 5 W
                - replace G1{(turns ? " reversed" : "")}: battery, 12 V, 60 Ah
            """).OrThrow();
        Assert.Equal(expected, string.Join(", ", job.Plan.Order.Where(i => i < job.Plan.Count).Select(i => $"{job.Plan.Acts[i].Type} {job.Plan.Acts[i].Item}")));
    }

    [Fact]
    public void An_order_as_it_is_written_may_be_worse() 
    {
        var job = OrderJobs.OfGallery("fuel-pump");
        Verdicts written = new(job.Plan, job.Study, [.. Enumerable.Range(0, job.Plan.Count)]);
        Assert.DoesNotContain((written.HarmfulStates(Battery.New), written.HarmfulStates(Battery.Old)), new BestOrders(job, 60000).Pairs());
    }
}
