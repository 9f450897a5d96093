using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Orders;
using Hotside.Orders.Harms;

namespace Hotside.Tests.Orders;

/// <summary>Laws of what a battery would harm in between.</summary>
public class HarmLawTests
{
    // Counted with a throw-away prototype in another language and with a solver of its own, before this was written: new battery, old battery. There a cut was one act with both its
    // ends; here it is three, so that the headlamps have one state more. An act between two that harm harms either the one battery or the other, wherever it stands: it is put where it
    // harms the new one, which stays out until the end anyway, and the old one may go back the longer.
    [Theory]
    [InlineData("horn", 1, 0)]
    [InlineData("starter", 1, 0)]
    [InlineData("gauges", 5, 4)]
    [InlineData("signals", 16, 17)]
    [InlineData("headlamps", 13, 2 + 1)]
    [InlineData("van", 38, 8)]
    public void No_more_states_are_harmful_than_in_the_prototype(string name, int fresh, int old)
    {
        var job = OrderJobs.OfFile(name);
        Verdicts verdicts = new(new(job.Alteration), job.Study);
        Assert.True(verdicts.HarmfulStates(Battery.Old) <= old, $"old: {verdicts.HarmfulStates(Battery.Old)}");
        Assert.True(verdicts.HarmfulStates(Battery.New) + verdicts.HarmfulStates(Battery.Old) <= fresh + old, $"new: {verdicts.HarmfulStates(Battery.New)}");
        Assert.Empty(verdicts.Problems());
    }

    // As counted once for each: no later rule may make it worse.
    [Theory]
    [InlineData("charging", 12, 1)]
    [InlineData("headlamps", 5, 2)]
    [InlineData("trailer", 24, 9)]
    [InlineData("turn-signals", 24, 6)]
    [InlineData("tractor", 1, 0)]
    [InlineData("gauges-each", 27, 4)]
    public void No_more_states_are_harmful_than_there_were(string name, int fresh, int old)
    {
        var job = OrderJobs.OfGallery(name);
        Verdicts verdicts = new(job.Plan, job.Study);
        Assert.True(verdicts.HarmfulStates(Battery.Old) <= old, $"old: {verdicts.HarmfulStates(Battery.Old)}");
        Assert.True(verdicts.HarmfulStates(Battery.New) <= fresh, $"new: {verdicts.HarmfulStates(Battery.New)}");
    }

    [Theory]
    [InlineData("horn")]
    [InlineData("gauges")]
    [InlineData("headlamps")]
    [InlineData("signals")]
    public void More_settings_never_take_a_harm_away(string name)
    {
        var job = OrderJobs.OfFile(name);
        WorkPlan plan = new(job.Alteration);
        var settings = HarmSettings.Of(job.Study);
        HarmSearch few = new(plan, job.Study, [.. settings.Where((_, i) => i % 2 == 0)]), all = new(plan, job.Study, settings);
        foreach (var (done, battery) in States(plan))
        {
            var found = all.Of(done, battery).ToDictionary(h => (h.Harm.Kind, h.Harm.Item), h => h.Harm.Severity);
            // Which sign is right is learnt from the settings themselves.
            foreach (var (harm, setting) in few.Of(done, battery).Where(h => h.Harm.Kind is not (HarmKind.Reversed or HarmKind.RunsBackward)))
                Assert.True(found.TryGetValue((harm.Kind, harm.Item), out var severity) && severity >= harm.Severity, $"{harm} in {setting}");
        }
    }

    // The settings that are chosen miss nothing that settings drawn by lot find.
    [Theory]
    [InlineData("horn")]
    [InlineData("gauges")]
    [InlineData("signals")]
    [InlineData("headlamps")]
    [InlineData("starter")]
    public void Settings_drawn_by_lot_find_no_other_harm(string name)
    {
        var job = OrderJobs.OfFile(name);
        WorkPlan plan = new(job.Alteration);
        var chosen = HarmSettings.Of(job.Study);
        HarmSearch own = new(plan, job.Study), drawn = new(plan, job.Study, [.. chosen.Take(1), .. Drawn(job, 20)]);
        foreach (var (done, battery) in States(plan))
        {
            var known = own.Of(done, battery).Select(h => (h.Harm.Kind, h.Harm.Item)).ToHashSet();
            foreach (var (harm, setting) in drawn.Of(done, battery).Where(h => h.Harm.IsUnsafe))
                Assert.True(known.Contains((harm.Kind, harm.Item)), $"{harm.What} in {setting}, {battery}");
        }
    }

    [Theory]
    [InlineData("horn")]
    [InlineData("gauges")]
    [InlineData("headlamps")]
    [InlineData("charging")]
    [InlineData("turn-signals")]
    [InlineData("trailer")]
    [InlineData("tractor")]
    public void Every_harm_of_the_new_battery_names_the_step_that_ends_it(string name)
    {
        var order = OrderJobs.OfGallery(name).WorkOrder;
        foreach (var step in order.Steps)
        foreach (var harm in step.Harms.Where(h => h is { Battery: Battery.New, Severity: >= Severity.Error }))
        {
            Assert.True(harm.EndsWithStep > step.Number, $"step {step.Number}: {harm.Text}");
            Assert.DoesNotContain(order.Steps[harm.EndsWithStep!.Value - 1].Harms, h => h.Battery == Battery.New && h.Kind == harm.Kind && h.Item == harm.Item);
        }
    }

    [Theory]
    [InlineData("horn")]
    [InlineData("headlamps")]
    [InlineData("launch")]
    [InlineData("charging")]
    public void Between_the_steps_that_are_named_each_battery_does_what_is_said(string name)
    {
        var order = OrderJobs.OfGallery(name).WorkOrder;
        Assert.NotNull(order.NewBatteryFrom);
        Assert.All(order.Steps.Where(s => s.Number >= order.NewBatteryFrom), s => Assert.True(s.SafeWithNew));
        Assert.All(order.Steps.Where(s => s.Number <= order.OldBatteryUntil), s => Assert.True(s.SafeWithOld));
        if (order.NewBatteryFrom > 1) Assert.Contains(order.Steps.Take(order.NewBatteryFrom.Value), s => s.SafeWithNew == false);
        Assert.True(order.BatteryStep is null || order.NewBatteryFrom < order.BatteryStep);
    }

    // A piece that an act does not touch is not solved again: the same harms, whether states are judged one after the other or each by itself.
    [Theory]
    [InlineData("headlamps")]
    [InlineData("signals")]
    public void What_is_remembered_of_a_piece_is_what_would_be_found_anew(string name)
    {
        var job = OrderJobs.OfFile(name);
        WorkPlan plan = new(job.Alteration);
        HarmSearch one = new(plan, job.Study);
        foreach (var (done, battery) in States(plan).Where((_, i) => i % 5 == 0))
            Assert.Equal(new HarmSearch(plan, job.Study).Of(done, battery).Select(h => h.ToString()), one.Of(done, battery).Select(h => h.ToString()));
    }

    private static IEnumerable<(bool[] Done, Battery Battery)> States(WorkPlan plan)
    {
        bool[] done = new bool[plan.Count];
        yield return (done, Battery.New);
        foreach (int i in plan.Order.Where(i => i < plan.Count))
        {
            done[i] = true;
            yield return (done, Battery.New);
            yield return (done, Battery.Old);
        }
    }

    // Numerical Recipes' linear congruential generator (from memory): the same everywhere. Engines stand.
    private static IEnumerable<Setting> Drawn(Job job, int count)
    {
        uint state = 1;
        int Next(int below)
        {
            state = (state * 1664525u) + 1013904223u;
            return (int)((state >> 8) % (uint)below);
        }
        Variable[] variables = [.. job.Alteration.Before.Variables.Concat(job.Alteration.After.Variables).Distinct().Where(v => v.Part is not null && v.Actuator.Drive != ActuatorDrive.Driven && !v.Actuator.Cycles)];
        for (int n = 0; n < count; n++)
            yield return new($"drawn {n}", [.. variables.Where(_ => Next(2) == 0).Select(v => new SetPosition(v.Part, v.Actuator.Name, v.Actuator.Positions[Next(v.Actuator.Positions.Length)]))], ImmutableArray<SetValue>.Empty);
    }
}
