using Hotside.Circuits;
using Hotside.Drawings.Plans;

namespace Hotside.Drawings.Sets;

/// <summary>Which way current runs in conductors, as the ways that the study found for the loads tell it: a flag goes out where the supply comes from.</summary>
internal static class FlowOfLines
{
    /// <summary>By line, whether current runs from its first end to its last; nothing of lines that no way passes, or that ways pass both ways.</summary>
    public static Dictionary<string, bool> Of(DrawingPlan plan)
    {
        var found = new Dictionary<string, bool>(StringComparer.Ordinal);
        var both = new HashSet<string>(StringComparer.Ordinal);
        foreach (var study in new[] { plan.Study.After, plan.Study.Before })
            foreach (var way in study.Loads.SelectMany(l => l.Paths).SelectMany(p => new[] { p.HotWay, p.GroundWay }))
                for (int i = 1; i < way.Length; i++)
                    if (study.Circuit.FindConductor(way[i]) is { } conductor && IsFirst(conductor, way[i - 1]) is { } first && !found.TryAdd(conductor.Id, first) && found[conductor.Id] != first)
                        both.Add(conductor.Id);
        return plan.Lines.Where(l => l.Conductor is { } id && found.ContainsKey(id) && !both.Contains(id)).ToDictionary(l => l.Line, l => found[l.Conductor!], StringComparer.Ordinal);
    }

    // Whether the part before a conductor is at its first end.
    private static bool? IsFirst(Conductor conductor, string before) =>
        conductor.From.Part == before ? conductor.To.Part == before ? null : true : conductor.To.Part == before ? false : null;
}
