using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Studies;

namespace Hotside.Orders.Harms;

/// <summary>
/// Finds what would come to harm in each state between the acts of a plan, with the old and with the new battery. A state is judged in each setting once for each live piece: an act
/// that touches nothing live in a setting changes nothing there.
/// </summary>
internal sealed class HarmSearch
{
    private readonly WorkPlan plan;
    private readonly ImmutableArray<Setting> settings;
    private readonly StateContext context;
    private readonly Dictionary<string, ImmutableArray<FoundHarm>> known = new(StringComparer.Ordinal);
    private readonly HashSet<string> swapped;

    /// <summary>A search.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="study">The alteration, studied.</param>
    /// <param name="settings">The settings in which states are judged; <see langword="null"/>: the usual.</param>
    public HarmSearch(WorkPlan plan, Study study, ImmutableArray<Setting>? settings = null)
    {
        this.plan = plan;
        this.settings = settings ?? HarmSettings.Of(study);
        context = new(plan.Alteration);
        var own = plan.Acts.Take(plan.Count).ToArray();
        swapped = [.. own.Where(a => a.Type is WorkActType.Swap or WorkActType.Fit or WorkActType.Turn).Select(a => a.Item)];
        NoteSigns();
    }

    /// <summary>How many points were solved.</summary>
    public int Solved => context.Solved;

    /// <summary>What would come to harm with some acts done, gravest first, each thing once in its first setting of that gravity.</summary>
    /// <param name="done">A mark for each act that changes the circuit.</param>
    /// <param name="battery">The battery that is thought to be connected.</param>
    public ImmutableArray<(FoundHarm Harm, string Setting)> Of(bool[] done, Battery battery) => Judged(plan.Connected(done, battery), battery);

    private ImmutableArray<(FoundHarm Harm, string Setting)> Judged(bool[] done, Battery battery)
    {
        var system = battery == Battery.Old ? plan.Alteration.Before.System : plan.Alteration.After.System;
        List<(string Wire, End At)> loose = [];
        var circuit = plan.States.Of(done, system, (wire, side) =>
        {
            End end = End.At(wire, side == 0 ? "free end" : "other free end");
            loose.Add((wire, end));
            return end;
        });
        // A wire with both ends off is dead copper.
        var dead = loose.GroupBy(l => l.Wire).Where(g => g.Count() > 1).Select(g => g.Key).ToHashSet(StringComparer.Ordinal);
        loose.RemoveAll(l => dead.Contains(l.Wire) || IsInsulated(l.Wire, done));
        circuit = new(system, [.. circuit.Parts.Select(p => Rated(p, done))], [.. circuit.Conductors.Where(c => !dead.Contains(c.Id))], []);
        StateGraph graph = new(circuit, p => plan.States.IsAfter(p.Id, done) ? "+" : "-");
        StateJudge judge = new(graph, loose, context);
        context.IsNew = p => swapped.Contains(p.Id) && plan.States.IsAfter(p.Id, done);
        Dictionary<(HarmKind, string), (FoundHarm Harm, string Setting)> worst = [];
        List<(HarmKind, string)> order = [];
        foreach (var setting in settings)
        {
            string key = graph.KeyOf(setting);
            if (key.Length == 0) continue;
            key = (battery == Battery.Old ? "old\n" : "new\n") + (context.Notes is { } notes ? notes + "\n" : "") + key;
            if (!known.TryGetValue(key, out var found)) known[key] = found = judge.In(setting);
            foreach (var harm in found)
            {
                if (!worst.TryGetValue((harm.Kind, harm.Item), out var sofar)) order.Add((harm.Kind, harm.Item));
                else if (sofar.Harm.Severity >= harm.Severity) continue;
                worst[(harm.Kind, harm.Item)] = (harm, setting.Name);
            }
        }
        return [.. order.Select(o => worst[o]).OrderByDescending(h => h.Harm.Severity)];
    }

    // A job may say that an end is insulated: it is then no harm.
    private bool IsInsulated(string wire, bool[] done) =>
        plan.Acts.Take(plan.Count).Any(a => a.Type == WorkActType.Work && a.Item == wire && done[a.Index] && a.Said.Contains("insulat", StringComparison.OrdinalIgnoreCase));

    // What a part does not state it has of its own vehicle: a part of before that of before, whatever battery is connected.
    private Part Rated(Part part, bool[] done)
    {
        double was = plan.Alteration.Before.System.Volts[0], will = plan.Alteration.After.System.Volts[0];
        if (was == will || part.IsStandingSource || (plan.Alteration.Before.FindPart(part.Id) is not null && plan.Alteration.After.FindPart(part.Id) is not null && !swapped.Contains(part.Id))) return part;
        double volts = plan.Alteration.Before.FindPart(part.Id) is null || (swapped.Contains(part.Id) && plan.States.IsAfter(part.Id, done)) ? will : was;
        var rules = part.Kind.Elements.Where(e => e.IsConsumer && part.Rated(e.Name, Unit.Volt) is null).SelectMany(e => part.Kind.RulesOf(e.Name, Unit.Volt).Take(1)).DistinctBy(r => r.Name);
        return part with { Spec = part.Spec with { Ratings = [.. part.Spec.Ratings, .. rules.Select(r => new Rating(r.Name, new StatedValue(volts, Unit.Volt)))] } };
    }

    private void NoteSigns()
    {
        bool[] none = new bool[plan.Count], all = [.. Enumerable.Repeat(true, plan.Count)];
        context.Notes = false;
        Judged(none, Battery.Old);
        context.Notes = true;
        Judged(all, Battery.New);
        context.Notes = null;
    }
}
