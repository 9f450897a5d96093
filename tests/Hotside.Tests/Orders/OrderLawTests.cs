using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Orders;
using Hotside.Reading;
using Hotside.Tests.Alterations;

namespace Hotside.Tests.Orders;

/// <summary>Laws over generated alterations and over the gallery.</summary>
public class OrderLawTests
{
    private const int Many = 1000;

    private static IEnumerable<(string Name, Alteration Alteration)> Generated(int count) =>
        Enumerable.Range(0, count).Select(seed => (Circuits: GeneratedAlterations.Of(seed), seed)).Select(g => ($"seed {g.seed}", Lines.Made(g.Circuits.Before, g.Circuits.Groups)));

    private static IEnumerable<(string Name, Alteration Alteration)> All(int count) =>
        OrderJobs.Gallery.Select(g => (g, OrderJobs.OfGallery(g).Alteration)).Concat(Generated(count));

    [Fact]
    public void No_hard_edge_is_broken_and_no_rules_go_in_a_circle()
    {
        foreach (var (name, alteration) in All(Many))
        {
            WorkPlan plan = new(alteration);
            Assert.True(plan.Problems.IsEmpty, $"{name}: {string.Join('\n', plan.Problems)}");
            Assert.Equal(Enumerable.Range(0, plan.Acts.Length), plan.Order.Order());
            int[] at = new int[plan.Acts.Length];
            for (int k = 0; k < plan.Order.Length; k++) at[plan.Order[k]] = k;
            foreach (var act in plan.Acts)
                foreach (var (first, rule) in plan.Graph.WaitsOf(act.Index))
                    Assert.True(at[first] < at[act.Index], $"{name}: {rule.Id}: {plan.Acts[first]} comes after {act}");
        }
    }

    // What a hand cannot do, told from the states themselves and not from the rules.
    [Fact]
    public void Nothing_lands_on_what_is_not_there_and_nothing_leaves_with_wires_on_it()
    {
        foreach (var (name, alteration) in All(300))
        {
            WorkPlan plan = new(alteration);
            bool[] done = new bool[plan.Count];
            foreach (int i in plan.Order.Where(i => i < plan.Count))
            {
                var act = plan.Acts[i];
                var before = plan.States.Of(done, alteration.Before.System);
                done[i] = true;
                var after = plan.States.Of(done, alteration.Before.System);
                foreach (var wire in after.Conductors)
                foreach (var end in wire.Ends.Where(e => e.Part is not null))
                    Assert.True(after.FindPart(end.Part!) is { } part && part.Kind.TerminalNamed(end.Terminal) is not null, $"{name}: after {act.Type} {act.Item}, {wire.Id} ends on {end}");
                if (act.Type == WorkActType.PartOut) Assert.DoesNotContain(before.Conductors, c => c.Ends.Any(e => e.Part == act.Item));
                if (act.Type == WorkActType.Pull) Assert.All(before.FindConductor(act.Item)!.Ends, e => Assert.True(e.IsFree, $"{name}: {act.Item} is pulled with an end on {e}"));
                if (act.Type == WorkActType.WireOn) Assert.Equal(act.At, act.Side == 0 ? after.FindConductor(act.Item)!.From : after.FindConductor(act.Item)!.To);
                if (act.Type == WorkActType.Swap && !alteration.After.FindPart(act.Item)!.IsStandingSource)
                    Assert.Equal(before.Conductors.SelectMany(c => c.Ends).Count(e => e.Part == act.Item), after.Conductors.SelectMany(c => c.Ends).Count(e => e.Part == act.Item));
            }
        }
    }

    [Fact]
    public void With_all_acts_done_the_vehicle_is_the_after_circuit_byte_for_byte()
    {
        foreach (var (name, alteration) in All(300))
        {
            WorkPlan plan = new(alteration);
            Assert.True(Text(alteration.After) == Text(plan.States.Of([.. Enumerable.Repeat(true, plan.Count)], alteration.After.System)), name);
        }
    }

    [Fact]
    public void Undoing_what_is_done_gives_each_state_back_and_at_last_the_before_circuit()
    {
        foreach (var (name, alteration) in All(100))
        {
            WorkPlan plan = new(alteration);
            Assert.True(Text(alteration.Before) == Text(plan.States.Of(new bool[plan.Count], alteration.Before.System)), name);
            bool[] done = new bool[plan.Count];
            List<string> forward = [State()];
            int[] own = [.. plan.Order.Where(i => i < plan.Count)];
            foreach (int i in own)
            {
                done[i] = true;
                forward.Add(State());
            }
            for (int k = own.Length - 1; k >= 0; k--)
            {
                done[own[k]] = false;
                Assert.True(forward[k] == State(), $"{name}, act {k}");
            }

            string State() => CircuitText.Of(plan.States.Of(done, alteration.Before.System));
        }
    }

    [Fact]
    public void The_same_alteration_has_the_same_order_and_mark()
    {
        foreach (string name in new[] { "horn", "headlamps", "tractor" })
            Assert.Equal(OrderWriting.MarkOf(new(OrderJobs.OfGallery(name).Alteration)), OrderWriting.MarkOf(new(OrderJobs.OfGallery(name).Alteration)));
    }

    // What is done is history: the rest is planned from there, and what is done already may be in any order.
    [Fact]
    public void Resuming_after_any_step_leaves_the_order_of_the_rest_sound()
    {
        foreach (string name in new[] { "horn", "headlamps", "charging" })
        {
            var alteration = OrderJobs.OfGallery(name).Alteration;
            WorkPlan whole = new(alteration);
            for (int steps = 1; steps < whole.Steps.Length; steps++)
            {
                bool[] done = whole.DoneAfter(steps)[..whole.Count];
                string progress = string.Join(", ", whole.Acts.Take(whole.Count).Where(a => done[a.Index]).Select(Progress.Named));
                WorkPlan rest = new(alteration, null, progress);
                Assert.Empty(rest.Problems);
                Assert.Equal(done, rest.Done);
                Assert.Equal(done.Count(d => d), rest.Order.Where(i => i < rest.Count).TakeWhile(i => done[i]).Count());
            }
        }
    }

    private static string Text(Circuit circuit) => JobWriter.Text(new(circuit.System, circuit.Parts, circuit.Conductors, []));
}
