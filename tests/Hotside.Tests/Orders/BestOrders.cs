using Hotside.Orders;
using Hotside.Orders.Harms;

namespace Hotside.Tests.Orders;

/// <summary>
/// All orders of a plan's acts that no hard rule forbids, judged by how many states in between a battery would harm: the best pairs of both counts. By the sets of acts that can be done,
/// each looked at once, so that no order is left out.
/// </summary>
internal sealed class BestOrders
{
    private readonly WorkPlan plan;
    private readonly HarmSearch search;
    private readonly HashSet<(HarmKind, string)> inherited;
    private readonly int[] acts;
    private readonly ulong[] before;
    private readonly int[] partner;
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
    }

    /// <summary>The best pairs, new battery and old, none of which is beaten in both; empty where there are more sets than may be looked at.</summary>
    public List<(int New, int Old)> Pairs()
    {
        Dictionary<ulong, List<(int New, int Old)>> level = new() { [0] = [Cost(0)] };
        int seen = 0;
        for (int k = 0; k < acts.Length; k++)
        {
            Dictionary<ulong, List<(int New, int Old)>> next = [];
            foreach (var (set, pairs) in level)
            foreach (int act in Ready(set))
            {
                ulong with = set | 1UL << act;
                if (!next.TryGetValue(with, out var known))
                {
                    if (++seen > most) return [];
                    next[with] = known = [];
                }
                known.AddRange(pairs);
            }
            foreach (var (set, pairs) in next)
            {
                var (fresh, old) = Cost(set);
                var sums = pairs.Distinct().Select(p => (New: p.New + fresh, Old: p.Old + old)).ToList();
                pairs.Clear();
                pairs.AddRange(sums.Where(p => !sums.Any(o => o != p && o.New <= p.New && o.Old <= p.Old)));
            }
            level = next;
        }
        return [.. level.Values.SelectMany(p => p).Order()];
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

    private (int New, int Old) Cost(ulong set)
    {
        bool[] done = new bool[plan.Count];
        for (int i = 0; i < acts.Length; i++) done[acts[i]] = (set >> i & 1) == 1;
        bool IsHarmed(Battery battery) => search.Of(done, battery).Any(h => h.Harm.IsUnsafe && !(battery == Battery.Old && inherited.Contains((h.Harm.Kind, h.Harm.Item))));
        return (IsHarmed(Battery.New) ? 1 : 0, IsHarmed(Battery.Old) ? 1 : 0);
    }
}
