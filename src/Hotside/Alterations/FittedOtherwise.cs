using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Alterations;

/// <summary>What was done otherwise than planned: change lines applied to the planned after circuit, with numbers of their own.</summary>
internal static class FittedOtherwise
{
    /// <summary>The alteration from the before circuit to what was fitted. Planned numbers stay; what a line of the list did otherwise is told under its own number.</summary>
    /// <param name="plan">The alteration as planned.</param>
    /// <param name="groups">What stands under one number each.</param>
    public static EditResult Apply(Alteration plan, ImmutableArray<EditGroup> groups)
    {
        var result = EditList.Apply(plan.After, plan.Title, plan.After.System, groups);
        if (result.Alteration is not { } fitted) return result;
        HashSet<string> touched = [.. fitted.Changes.SelectMany(c => c.Acts).Where(a => a is not Work).SelectMany(a => a.Items)];
        // A cut that is touched at one half is told anew with both.
        foreach (var cut in plan.Changes.SelectMany(c => c.Acts).OfType<Cut>().Where(c => c.Items.Any(touched.Contains))) touched.UnionWith(cut.Items);
        var acts = CircuitComparison.Acts(plan.Before, fitted.After).SelectMany(g => g).ToArray();
        HashSet<Act> told = [];
        var later = fitted.Changes.Select(c => new Change(plan.Changes.Length + c.Number, [.. c.Acts.SelectMany(a => Told(a, acts, told, plan.Before, fitted.After))], c.Reason)
        {
            Label = "A" + Numbers.Whole(c.Number),
        }).ToArray();
        var planned = plan.Changes.Select(c => c with { Acts = [.. c.Acts.SelectMany(a => Left(a, touched, later))] });
        return result with { Alteration = new(plan.Title, plan.Before, fitted.After, [.. planned, .. later]) { Plan = plan, Otherwise = fitted } };
    }

    // What comes of a line when before and after are compared; of what is in neither, or as it was, that alone is told.
    private static IEnumerable<Act> Told(Act line, Act[] acts, HashSet<Act> told, Circuit before, Circuit after)
    {
        if (line is Work)
        {
            yield return line;
            yield break;
        }
        foreach (string id in line.Items)
        {
            if (acts.FirstOrDefault(a => a.Items.Contains(id)) is { } act)
            {
                if (told.Add(act)) yield return act;
                continue;
            }
            bool isThere = after.FindPart(id) is not null || after.FindConductor(id) is not null;
            yield return new Work([id], isThere ? "stays as it was" : "is left out") { IsRemark = true };
        }
    }

    private static IEnumerable<Act> Left(Act act, HashSet<string> touched, Change[] later)
    {
        if (act is Work || !act.Items.Any(touched.Contains))
        {
            yield return act;
            yield break;
        }
        ImmutableArray<string> items = [.. act.Items.Where(i => !touched.Contains(i))];
        if (!items.IsEmpty && act is TakeOut or Fit or Replace or Renew) yield return act with { Items = items };
        foreach (string id in act.Items.Where(touched.Contains))
            if (later.FirstOrDefault(c => c.Acts.Any(a => a.Items.Contains(id))) is { } change)
                yield return new Work([id], $"done otherwise, see {change.Label}") { IsRemark = true };
    }
}
