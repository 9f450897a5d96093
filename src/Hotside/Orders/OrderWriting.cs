using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using Hotside.Circuits;
using Hotside.Wording;

namespace Hotside.Orders;

/// <summary>Puts a plan into words.</summary>
internal static class OrderWriting
{
    /// <summary>The work order of a plan.</summary>
    public static WorkOrder Of(WorkPlan plan, string title, Vocabulary words)
    {
        ActText text = new(plan.Alteration, words);
        bool[] done = new bool[plan.Count];
        var circuit = plan.States.Of(done, plan.Alteration.Before.System);
        var steps = ImmutableArray.CreateBuilder<WorkStep>();
        HashSet<(string?, string)> told = [];
        foreach (var indices in plan.Steps)
        {
            var acts = ImmutableArray.CreateBuilder<WorkAct>();
            foreach (int i in indices)
            {
                var (act, before) = (plan.Acts[i], circuit);
                if (act.ChangesCircuit || act.Type == WorkActType.Work)
                {
                    done[i] = true;
                    circuit = plan.States.Of(done, plan.Alteration.Before.System);
                }
                acts.Add(new(act.Type, act.Item, act.Change > 0 ? act.Change : null, text.Of(act, before, circuit))
                {
                    At = act.Type is WorkActType.WireOff or WorkActType.WireOn ? (act.Type == WorkActType.WireOff ? plan.Alteration.Before : plan.Alteration.After).TextOf(act.At) : null,
                });
            }
            var first = plan.Acts[indices[0]];
            steps.Add(new(steps.Count + 1, plan.Book.Phases[first.Phase].Name, first.Place, acts.ToImmutable()) { Circuit = first.Way, Reasons = [.. ReasonsOf(plan, indices, told)] });
        }
        return new(title, steps.ToImmutable()) { Cautions = [.. Cautions.Of(plan.Alteration, words)], Findings = [.. plan.Problems], Mark = MarkOf(plan) };
    }

    // What an act waited for in another step; each reason once at a place.
    private static IEnumerable<string> ReasonsOf(WorkPlan plan, ImmutableArray<int> step, HashSet<(string?, string)> told)
    {
        foreach (int i in step)
        foreach (var (first, rule) in plan.Graph.WaitsOf(i))
            if (rule.IsTold && told.Add((plan.Acts[i].Place, rule.Id)))
                yield return rule.Reason;
    }

    private static string MarkOf(WorkPlan plan)
    {
        StringBuilder text = new();
        foreach (var step in plan.Steps)
        {
            foreach (int i in step) text.Append(plan.Acts[i].Type).Append(' ').Append(plan.Acts[i].Item).Append(' ').Append(plan.Acts[i].At).Append(' ').Append(plan.Acts[i].Change).Append(' ').Append(plan.Acts[i].Said).Append('\n');
            text.Append('\n');
        }
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text.ToString())))[..8];
    }
}
