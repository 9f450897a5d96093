using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Alterations;

/// <summary>
/// The order in which groups of edits are done: the user's, but nothing before what it needs. What a wire or a part lands on is there first;
/// wires leave a part before it is taken out; a battery comes back last of all that changes the circuit.
/// </summary>
internal sealed record WorkOrder(ImmutableArray<int> Groups, ImmutableArray<(int Group, string Needs)> Deferred)
{
    private ImmutableArray<EditGroup> Edits { get; init; } = [];

    public static WorkOrder Of(ImmutableArray<EditGroup> groups, Circuit before, Workbench bench)
    {
        var needs = Enumerable.Range(0, groups.Length).Select(g => Needs(g, groups, before, bench)).ToArray();
        var done = new List<int>();
        var waiting = Enumerable.Range(0, groups.Length).ToList();
        while (waiting.Count > 0)
        {
            // Groups that need each other cannot be helped: they keep the user's order.
            int next = waiting.FindIndex(g => needs[g].Keys.All(done.Contains));
            int group = waiting[Math.Max(0, next)];
            waiting.Remove(group);
            done.Add(group);
        }
        var deferred = done.Select((g, place) => (Group: g, Passed: needs[g].Keys.Where(n => n > g && done.IndexOf(n) < place).ToArray()))
            .Where(d => d.Passed.Length > 0).OrderBy(d => d.Group).Select(d => (d.Group, needs[d.Group][d.Passed[0]]));
        return new([.. done], [.. deferred]) { Edits = groups };
    }

    /// <summary>What a group is about, for a message.</summary>
    public string Subject(int group) => string.Join(", ", IdsOf(Edits[group].Edits[0]));

    // The groups that must come before one, each with the thing that is needed from it.
    private static Dictionary<int, string> Needs(int group, ImmutableArray<EditGroup> groups, Circuit before, Workbench bench)
    {
        var needs = new Dictionary<int, string>();
        foreach (var edit in groups[group].Edits)
        {
            foreach (string part in LandsOn(edit, bench))
                Add(e => e is FitEdit fit ? fit.Ids.Contains(part) : e is ReplaceEdit replace && replace.Ids.Contains(part), part);
            if (edit is TakeOutEdit take)
                foreach (var wire in before.Conductors.Where(c => c.Ends.Any(e => e.Part is { } id && take.Ids.Contains(id)) && !take.Ids.Contains(c.Id)))
                    Add(e => e is TakeOutEdit other ? other.Ids.Contains(wire.Id) : e is MoveEdit move && move.Id == wire.Id, wire.Id);
            if (BringsBattery(edit, before)) Add(e => e is not DoEdit && !BringsBattery(e, before), "all other changes");
        }
        return needs;

        void Add(Func<Edit, bool> brings, string thing)
        {
            for (int other = 0; other < groups.Length; other++)
                if (other != group && groups[other].Edits.Any(brings))
                    needs.TryAdd(other, thing);
        }
    }

    private static IEnumerable<string> LandsOn(Edit edit, Workbench bench)
    {
        IEnumerable<End> ends = edit switch
        {
            RunEdit run => run.Conductor.Ends,
            MoveEdit move => move.Ends.Select(e => e.To),
            CutEdit cut => [cut.First, cut.Second],
            FitEdit fit => fit.Spec.Joints.Select(j => j.On).Concat(fit.Spec.Case?.On is { } on ? [on] : []),
            ReplaceEdit replace => replace.Spec.Joints.Select(j => j.On),
            RemountEdit { Case.On: { } on } => [on],
            _ => [],
        };
        // A rail that is bolted to a relay is there when the relay is; what lands on a battery lands on it as it is put back.
        return ends.Select(e => e.Part).OfType<string>().Where(id => bench.Parts.FirstOrDefault(p => p.Id == id) is { } part && !IsBattery(part.Kind));
    }

    private static bool BringsBattery(Edit edit, Circuit before) => edit switch
    {
        ReplaceEdit replace => IsBattery(replace.Spec.Kind),
        ReverseEdit reverse => before.FindPart(reverse.Id) is { } part && IsBattery(part.Kind),
        _ => false,
    };

    // A source that gives without a machine turning.
    private static bool IsBattery(PartKind kind) => kind.Elements.Any(e => e is { IsSource: true, When: null });

    private static IEnumerable<string> IdsOf(Edit edit) => edit switch
    {
        TakeOutEdit e => e.Ids,
        FitEdit e => e.Ids,
        ReplaceEdit e => e.Ids,
        RenewEdit e => e.Ids,
        ReverseEdit e => [e.Id],
        RemountEdit e => [e.Id],
        RunEdit e => [e.Conductor.Id],
        MoveEdit e => [e.Id],
        CutEdit e => [e.Id],
        DoEdit e => [e.Id],
        _ => [],
    };
}
