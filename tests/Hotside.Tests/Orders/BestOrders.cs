using Hotside.Orders;
using Hotside.Orders.Harms;

namespace Hotside.Tests.Orders;

/// <summary>
/// All orders of a plan's acts that no hard rule forbids, judged by how many states in between a battery would harm: the best pairs of both counts. By the sets of acts that can be done,
/// each looked at once, so that no order is left out.
/// </summary>
/// <remarks>
/// To lay a wire and to pull one whose ends are off changes nothing that is live: such an act repeats the verdict of the state in which it is done. So it is left out of the sets, and
/// counts at the end: nothing where the order has a state that neither battery harms, one state of either count elsewhere. That may flatter an order, never blacken it.
/// </remarks>
internal sealed class BestOrders
{
    private readonly WorkPlan plan;
    private readonly HarmSearch search;
    private readonly HashSet<(HarmKind, string)> inherited;
    private readonly int[] acts;
    private readonly ulong[] before;
    private readonly int[] partner;
    private readonly ulong idle;
    private readonly int most;

    public BestOrders(Job job, int most)
    {
        this.most = most;
        plan = job.Plan;
        search = new(plan, job.Study);
        inherited = [.. search.Of(new bool[plan.Count], Battery.Old).Select(h => (h.Harm.Kind, h.Harm.Item))];
        // What changes no circuit takes no part; the battery comes last by rule.
        acts = [.. Enumerable.Range(0, plan.Count).Where(i => plan.Acts[i].ChangesCircuit && !plan.Acts[i].Words.Contains("battery"))];
        before = [.. acts.Select(a => plan.Graph.WaitsOf(a).Where(w => w.Rule.IsHard).Select(w => Array.IndexOf(acts, w.First)).Where(i => i >= 0).Aggregate(0UL, (sum, i) => sum | 1UL << i))];
        partner = [.. acts.Select(a => Array.IndexOf(acts, plan.Acts[a].Partner))];
        idle = Enumerable.Range(0, acts.Length).Where(i => plan.Acts[acts[i]].Type is WorkActType.Lay or WorkActType.Pull).Aggregate(0UL, (sum, i) => sum | 1UL << i);
    }

    /// <summary>How many sets of acts were looked at.</summary>
    public int Seen { get; private set; }

    /// <summary>The best pairs, new battery and old, none of which is beaten in both; empty where there are more sets than may be looked at.</summary>
    public List<(int New, int Old)> Pairs()
    {
        ulong start = WithIdle(0);
        Dictionary<ulong, List<Count>> level = new() { [start] = [default(Count).With(Cost(start))] };
        int steps = acts.Length - Bits(idle);
        for (int k = 0; k < steps; k++)
        {
            Dictionary<ulong, List<Count>> next = [];
            foreach (var (set, counts) in level)
            foreach (int act in Ready(set))
            {
                ulong with = WithIdle(set | 1UL << act);
                if (!next.TryGetValue(with, out var known))
                {
                    if (++Seen > most) return [];
                    next[with] = known = [];
                }
                known.AddRange(counts);
            }
            foreach (var (set, counts) in next)
            {
                var cost = Cost(set);
                var sums = counts.Distinct().Select(c => c.With(cost)).ToList();
                counts.Clear();
                counts.AddRange(sums.Where(c => !sums.Any(o => o != c && o.New <= c.New && o.Old <= c.Old && (o.HasFree || !c.HasFree))));
            }
            level = next;
        }
        int left = Bits(idle);
        var pairs = level.Values.SelectMany(c => c).SelectMany(c => c.HasFree ? [(c.New, c.Old)] : Enumerable.Range(0, left + 1).Select(i => (New: c.New + i, Old: c.Old + left - i))).Distinct().ToList();
        return [.. pairs.Where(p => !pairs.Any(o => o != p && o.New <= p.New && o.Old <= p.Old)).Order()];
    }

    // How many states harm, and whether there is one that harms with neither.
    private readonly record struct Count(int New, int Old, bool HasFree)
    {
        public Count With((bool New, bool Old) harmed) => new(New + (harmed.New ? 1 : 0), Old + (harmed.Old ? 1 : 0), HasFree || harmed is (false, false));
    }

    private static int Bits(ulong set) => System.Numerics.BitOperations.PopCount(set);

    // A set with what can be done in it and changes nothing.
    private ulong WithIdle(ulong set)
    {
        for (ulong last = ~set; last != set;)
        {
            last = set;
            for (int i = 0; i < acts.Length; i++)
                if ((idle >> i & 1) == 1 && (before[i] & ~set) == 0)
                    set |= 1UL << i;
        }
        return set;
    }

    // What came off to go on elsewhere goes on before anything else.
    private IEnumerable<int> Ready(ulong set)
    {
        int open = Enumerable.Range(0, acts.Length).FirstOrDefault(i => partner[i] >= 0 && (set >> partner[i] & 1) == 1 && (set >> i & 1) == 0, -1);
        for (int i = 0; i < acts.Length; i++)
        {
            if ((set >> i & 1) == 1 || (set & before[i]) != before[i] || (open >= 0 && partner[i] != partner[open])) continue;
            int on = Array.IndexOf(partner, i);
            if (on >= 0 && (before[on] & ~(set | 1UL << i)) != 0) continue;
            yield return i;
        }
    }

    private (bool New, bool Old) Cost(ulong set)
    {
        bool[] done = new bool[plan.Count];
        for (int i = 0; i < acts.Length; i++) done[acts[i]] = (set >> i & 1) == 1;
        bool IsHarmed(Battery battery) => search.Of(done, battery).Any(h => h.Harm.IsUnsafe && !(battery == Battery.Old && inherited.Contains((h.Harm.Kind, h.Harm.Item))));
        return (IsHarmed(Battery.New), IsHarmed(Battery.Old));
    }
}
