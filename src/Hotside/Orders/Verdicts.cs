using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Orders.Harms;
using Hotside.Studies;

namespace Hotside.Orders;

/// <summary>What each battery would do to the vehicle after each act of a plan, and between which steps it has to stay out.</summary>
internal sealed class Verdicts
{
    public static readonly DiagnosticKind HarmAtTheEnd = new("HS4202", Severity.Error, "Harm after the battery is in",
        "with step {0} done and the new battery in, {1}");

    private readonly WorkPlan plan;
    private readonly ImmutableArray<int> order;
    private readonly ImmutableArray<(FoundHarm Harm, string Setting)>[] old, fresh;
    private readonly int[] after;
    private readonly bool hasNewBattery;

    /// <summary>Judges a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="study">The alteration, studied.</param>
    /// <param name="other">Another order of the same acts, to compare; left out: the plan's own.</param>
    public Verdicts(WorkPlan plan, Study study, ImmutableArray<int>? other = null)
    {
        this.plan = plan;
        order = other ?? plan.Order;
        int first = order.IndexOf(order.FirstOrDefault(i => plan.Acts[i].ChangesCircuit && plan.Acts[i].Words.Contains("battery"), -1));
        BatteryIn = first < 0 ? order.Length + 1 : first + 1;
        hasNewBattery = first >= 0;
        after = new int[plan.Steps.Length + 1];
        for (int s = 0, k = 0; s < plan.Steps.Length; s++) after[s + 1] = k += plan.Steps[s].Length;
        // The two batteries have nothing in common but what never changes.
        var judged = Task.Run(() => hasNewBattery ? Judged(study, Battery.Old) : ([.. Enumerable.Repeat(ImmutableArray<(FoundHarm, string)>.Empty, order.Length + 1)], 0));
        (fresh, int solved) = Judged(study, Battery.New);
        (old, int also) = judged.GetAwaiter().GetResult();
        Solved = solved + also;
    }

    private (ImmutableArray<(FoundHarm Harm, string Setting)>[] Harms, int Solved) Judged(Study study, Battery battery)
    {
        HarmSearch search = new(plan, study);
        // What was wrong with the vehicle as it came is not the work's doing.
        HashSet<(HarmKind, string)> inherited = battery == Battery.Old ? [.. search.Of(new bool[plan.Count], Battery.Old).Select(h => (h.Harm.Kind, h.Harm.Item))] : [];
        bool[] marks = new bool[plan.Count];
        var harms = new ImmutableArray<(FoundHarm Harm, string Setting)>[order.Length + 1];
        for (int k = 0; k < harms.Length; k++)
        {
            int act = k == 0 ? -1 : order[k - 1];
            if (act >= 0 && act < plan.Count) marks[act] = true;
            harms[k] = battery == Battery.Old && k >= BatteryIn ? []
                : k > 0 && !plan.Acts[act].ChangesCircuit ? harms[k - 1]
                : [.. search.Of(marks, battery).Where(h => !inherited.Contains((h.Harm.Kind, h.Harm.Item)))];
        }
        return (harms, search.Solved);
    }

    /// <summary>How many points were solved.</summary>
    public int Solved { get; }

    /// <summary>The number of acts done when the new battery is in; beyond all where none comes.</summary>
    public int BatteryIn { get; }

    /// <summary>The step with which the new battery is in; <see langword="null"/> where none comes.</summary>
    public int? BatteryStep => BatteryIn > order.Length ? null : Enumerable.Range(0, after.Length).First(s => after[s] >= BatteryIn);

    /// <summary>After how many of the acts that change the circuit a battery would do harm, that of the battery itself left out.</summary>
    public int HarmfulStates(Battery battery) =>
        Enumerable.Range(0, order.Length + 1).Count(k => k < BatteryIn && (k == 0 || plan.Acts[order[k - 1]].ChangesCircuit) && IsUnsafe(battery == Battery.Old ? old[k] : fresh[k]));

    /// <summary>Whether the new battery, or the one there is, may be connected after a step.</summary>
    public bool IsSafeWithNew(int step) => !IsUnsafe(fresh[after[step]]);

    /// <summary>Whether the old battery may be connected after a step; <see langword="null"/> once the new one is in, or where there is but one.</summary>
    public bool? IsSafeWithOld(int step) => !hasNewBattery || after[step] >= BatteryIn ? null : !IsUnsafe(old[after[step]]);

    /// <summary>What would come to harm after a step: gravest first.</summary>
    public ImmutableArray<Harm> HarmsAfter(int step)
    {
        int k = after[step];
        return [.. fresh[k].Select(h => Told(h, Battery.New, step)).Concat(old[k].Select(h => Told(h, Battery.Old, step))).OrderByDescending(h => h.Severity)];
    }

    /// <summary>The first step after which, and after each from then on, the new battery does no harm. In the middle of a step none is connected.</summary>
    public int? NewBatteryFrom
    {
        get
        {
            int step = after.Length - 1;
            if (IsUnsafe(fresh[after[step]])) return null;
            while (step > 0 && !IsUnsafe(fresh[after[step - 1]])) step--;
            return step;
        }
    }

    /// <summary>The last step until which the old battery does no harm; <see langword="null"/> where there is none that goes.</summary>
    public int? OldBatteryUntil
    {
        get
        {
            if (!hasNewBattery) return null;
            int step = 0;
            while (step + 1 < after.Length && after[step + 1] < BatteryIn && !IsUnsafe(old[after[step + 1]])) step++;
            return step;
        }
    }

    /// <summary>Harm that no act ends once the battery is in.</summary>
    public IEnumerable<Diagnostic> Problems()
    {
        HashSet<(HarmKind, string)> told = [];
        for (int s = 1; s < after.Length; s++)
            if (after[s] >= BatteryIn || s == after.Length - 1)
                foreach (var (harm, setting) in fresh[after[s]])
                    // What the vehicle came with, and keeps with its battery, is a matter of the check.
                    if (harm.IsUnsafe && (hasNewBattery || fresh[0].All(h => h.Harm.Kind != harm.Kind || h.Harm.Item != harm.Item)) && told.Add((harm.Kind, harm.Item)))
                        yield return HarmAtTheEnd.Of([harm.Item], Numbers.Whole(s), $"{harm.What} ({setting})") with { Hint = "the check of the finished circuit says what to do; change the list so that this ends before the battery goes in" };
    }

    /// <summary>The act that ends a harm: the first after which it is not there.</summary>
    public int? EndsWith(Battery battery, int step, HarmKind kind, string item)
    {
        var states = battery == Battery.Old ? old : fresh;
        for (int s = step + 1; s < after.Length; s++)
            if (states[after[s]].All(h => h.Harm.Kind != kind || h.Harm.Item != item))
                return s;
        return null;
    }

    private Harm Told((FoundHarm Harm, string Setting) found, Battery battery, int step) =>
        new(found.Harm.Kind, found.Harm.Item, found.Setting, battery, $"{found.Harm.What} ({found.Setting})")
        {
            Severity = found.Harm.Severity, EndsWithStep = EndsWith(battery, step, found.Harm.Kind, found.Harm.Item),
        };

    private static bool IsUnsafe(ImmutableArray<(FoundHarm Harm, string Setting)> harms) => harms.Any(h => h.Harm.IsUnsafe);
}
