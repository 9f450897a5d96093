using Hotside.Orders;

namespace Hotside.Tests.Orders;

/// <summary>The planned order beside all others that the hard rules allow.</summary>
public class BestOrderTests
{
    // Every order is looked at: none harms the one battery in fewer states without harming the other in more.
    [Theory]
    [InlineData("courtesy")]
    [InlineData("gauges")]
    [InlineData("fuel-pump")]
    public void No_order_is_better_with_both_batteries(string name)
    {
        var job = OrderJobs.OfGallery(name);
        Verdicts planned = new(job.Plan, job.Study);
        var best = new BestOrders(job, 60000).Pairs();
        Assert.NotEmpty(best);
        Assert.Contains((planned.HarmfulStates(Battery.New), planned.HarmfulStates(Battery.Old)), best);
    }

    [Fact]
    public void An_order_as_it_is_written_may_be_worse() 
    {
        var job = OrderJobs.OfGallery("fuel-pump");
        Verdicts written = new(job.Plan, job.Study, [.. Enumerable.Range(0, job.Plan.Count)]);
        Assert.DoesNotContain((written.HarmfulStates(Battery.New), written.HarmfulStates(Battery.Old)), new BestOrders(job, 60000).Pairs());
    }
}
