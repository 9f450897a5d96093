using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using Hotside.Circuits;
using Hotside.Studies;
using Hotside.Wording;

namespace Hotside.Orders;

/// <summary>Puts a plan and what was found of its states into words.</summary>
internal static class OrderWriting
{
    /// <summary>The work order of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="verdicts">What a battery would do in between.</param>
    /// <param name="study">The alteration, studied.</param>
    /// <param name="title">What the job is called.</param>
    /// <param name="words">Whose words.</param>
    public static WorkOrder Of(WorkPlan plan, Verdicts verdicts, Study study, string title, Vocabulary words)
    {
        ActText text = new(study, words);
        bool[] sofar = new bool[plan.Count];
        var circuit = plan.States.Of(sofar, plan.Alteration.Before.System);
        var steps = ImmutableArray.CreateBuilder<WorkStep>();
        HashSet<(string?, string)> told = [];
        foreach (var indices in plan.Steps)
        {
            var acts = ImmutableArray.CreateBuilder<WorkAct>();
            foreach (int i in indices)
            {
                var (act, before) = (plan.Acts[i], circuit);
                if (i < plan.Count)
                {
                    sofar[i] = true;
                    circuit = plan.States.Of(sofar, plan.Alteration.Before.System);
                }
                acts.Add(new(act.Type, act.Item, act.Change > 0 ? act.Change : null, text.Of(act, before, circuit)) { Label = act.Label, At = AtOf(act, plan), IsDone = plan.IsDone(i) });
            }
            var first = plan.Acts[indices[0]];
            int number = steps.Count + 1;
            steps.Add(new(number, plan.Book.Phases[first.Phase].Name, indices.Select(i => plan.Acts[i].Place).FirstOrDefault(p => p is not null), acts.ToImmutable())
            {
                Remarks = [.. indices.Select(i => text.Remark(plan.Acts[i])).Where(r => r.Length > 0).Distinct(StringComparer.Ordinal)],
                StandsUnderPhase = plan.Book.Phases[first.Phase].IsHeading,
                Circuit = first.Way,
                Reasons = [.. ReasonsOf(plan, indices, told).Distinct(StringComparer.Ordinal)],
                Caution = StepCautions.Of([.. indices.Select(i => plan.Acts[i])], plan, words),
                SafeWithOld = verdicts.IsSafeWithOld(number),
                SafeWithNew = verdicts.IsSafeWithNew(number),
                Harms = verdicts.HarmsAfter(number),
            });
        }
        return new(title, steps.ToImmutable())
        {
            Cautions = [.. StepCautions.Of(plan, words)], Findings = [.. plan.Problems, .. verdicts.Problems()], Mark = MarkOf(plan),
            NewBatteryFrom = verdicts.NewBatteryFrom, OldBatteryUntil = verdicts.OldBatteryUntil, BatteryStep = verdicts.BatteryStep,
        };
    }

    private static string? AtOf(HandAct act, WorkPlan plan) => act.Type switch
    {
        WorkActType.WireOff or WorkActType.CableOff => plan.Alteration.Before.TextOf(act.At),
        WorkActType.WireOn or WorkActType.CableOn => plan.Alteration.After.TextOf(act.At),
        _ => null,
    };

    // What an act waited for; each reason once at a place, what holds for the whole work once.
    private static IEnumerable<string> ReasonsOf(WorkPlan plan, ImmutableArray<int> step, HashSet<(string?, string)> told)
    {
        foreach (int i in step)
        foreach (var (_, rule) in plan.Graph.WaitsOf(i))
            if (rule.IsTold && told.Add((rule.Same == Common.None ? null : plan.Acts[i].Place, rule.Id)))
                yield return rule.Reason;
    }

    /// <summary>A short mark of a plan's steps.</summary>
    public static string MarkOf(WorkPlan plan)
    {
        StringBuilder text = new();
        foreach (var step in plan.Steps)
        {
            foreach (var act in step.Select(i => plan.Acts[i]))
                text.AppendJoin(' ', act.Type.ToString(), act.Item, act.At.ToString(), Numbers.Whole(act.Change), act.Said).Append('\n');
            text.Append('\n');
        }
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text.ToString())))[..8];
    }
}
