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
    private readonly HarmSearch search;
    private readonly ImmutableArray<(FoundHarm Harm, string Setting)>[] old, fresh;
    private readonly int[] after;

    /// <summary>Judges a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="study">The alteration, studied.</param>
    /// <param name="done">What is done before the first act of the plan's order.</param>
    public Verdicts(WorkPlan plan, Study study, bool[]? done = null)
    {
        this.plan = plan;
        search = new(plan, study);
        bool[] marks = done is null ? new bool[plan.Count] : (bool[])done.Clone();
        int count = plan.Order.Length + 1;
        (old, fresh, after) = (new ImmutableArray<(FoundHarm, string)>[count], new ImmutableArray<(FoundHarm, string)>[count], new int[plan.Steps.Length + 1]);
        // What was wrong with the vehicle as it came is not the work's doing.
        HashSet<(HarmKind, string)> inherited = search.HasNewBattery ? [.. search.Of(new bool[plan.Count], Battery.Old).Select(h => (h.Harm.Kind, h.Harm.Item))] : [];
        BatteryIn = count;
        for (int k = 0; k < count; k++)
        {
            int act = k == 0 ? -1 : plan.Order[k - 1];
            bool changes = act >= 0 && plan.Acts[act].ChangesCircuit;
            if (act >= 0 && act < plan.Count) marks[act] = true;
            if (BatteryIn == count && act >= 0 && plan.Acts[act].ChangesCircuit && plan.Acts[act].Words.Contains("battery")) BatteryIn = k;
            if (k > 0 && !changes)
            {
                (old[k], fresh[k]) = (old[k - 1], fresh[k - 1]);
                continue;
            }
            fresh[k] = search.Of(marks, Battery.New);
            old[k] = !search.HasNewBattery || k >= BatteryIn ? [] : [.. search.Of(marks, Battery.Old).Where(h => !inherited.Contains((h.Harm.Kind, h.Harm.Item)))];
        }
        for (int s = 0, k = 0; s < plan.Steps.Length; s++) after[s + 1] = k += plan.Steps[s].Length;
    }

    /// <summary>How many points were solved.</summary>
    public int Solved => search.Solved;

    /// <summary>The number of acts done when the new battery is in; beyond all where none comes.</summary>
    public int BatteryIn { get; }

    /// <summary>The step with which the new battery is in; <see langword="null"/> where none comes.</summary>
    public int? BatteryStep => BatteryIn > plan.Order.Length ? null : Enumerable.Range(0, after.Length).First(s => after[s] >= BatteryIn);

    /// <summary>After how many of the acts that change the circuit a battery would do harm, that of the battery itself left out.</summary>
    public int HarmfulStates(Battery battery) =>
        Enumerable.Range(0, plan.Order.Length + 1).Count(k => k < BatteryIn && (k == 0 || plan.Acts[plan.Order[k - 1]].ChangesCircuit) && IsUnsafe(battery == Battery.Old ? old[k] : fresh[k]));

    /// <summary>Whether a battery may be connected after a step; <see langword="null"/> for the old one once the new one is in, or where there is but one.</summary>
    public bool? IsSafe(Battery battery, int step) =>
        battery == Battery.New ? !IsUnsafe(fresh[after[step]]) : !search.HasNewBattery || after[step] >= BatteryIn ? null : !IsUnsafe(old[after[step]]);

    /// <summary>What would come to harm after a step: gravest first.</summary>
    public ImmutableArray<Harm> HarmsAfter(int step)
    {
        int k = after[step];
        return [.. fresh[k].Select(h => Told(h, Battery.New, step)).Concat(old[k].Select(h => Told(h, Battery.Old, step))).OrderByDescending(h => h.Severity)];
    }

    /// <summary>The first step after which, and from then on, the new battery does no harm.</summary>
    public int? NewBatteryFrom
    {
        get
        {
            int k = fresh.Length - 1;
            if (IsUnsafe(fresh[k])) return null;
            while (k > 0 && !IsUnsafe(fresh[k - 1])) k--;
            return Enumerable.Range(0, after.Length).First(s => after[s] >= k);
        }
    }

    /// <summary>The last step until which the old battery does no harm; <see langword="null"/> where there is none that goes.</summary>
    public int? OldBatteryUntil
    {
        get
        {
            if (!search.HasNewBattery) return null;
            int k = 0;
            while (k < BatteryIn && k < old.Length && !IsUnsafe(old[k])) k++;
            return Enumerable.Range(0, after.Length).Last(s => s == 0 || after[s] < Math.Min(k, BatteryIn));
        }
    }

    /// <summary>Harm that no act ends once the battery is in.</summary>
    public IEnumerable<Diagnostic> Problems()
    {
        HashSet<(HarmKind, string)> told = [];
        for (int s = 1; s < after.Length; s++)
            if (after[s] >= BatteryIn || s == after.Length - 1)
                foreach (var (harm, setting) in fresh[after[s]])
                    if (harm.IsUnsafe && told.Add((harm.Kind, harm.Item)))
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
        new(found.Harm.Kind, found.Harm.Item, found.Setting, battery, $"{found.Harm.What}{(found.Setting == "at rest" ? "" : " with " + found.Setting)}")
        {
            Severity = found.Harm.Severity, EndsWithStep = EndsWith(battery, step, found.Harm.Kind, found.Harm.Item),
        };

    private static bool IsUnsafe(ImmutableArray<(FoundHarm Harm, string Setting)> harms) => harms.Any(h => h.Harm.IsUnsafe);
}
