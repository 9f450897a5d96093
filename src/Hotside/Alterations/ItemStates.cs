using System.Collections.Immutable;

namespace Hotside.Alterations;

/// <summary>What the changes of an alteration do to each part and conductor; made once, when first asked for.</summary>
internal sealed class ItemStates
{
    private readonly Dictionary<string, PartState> parts = new(StringComparer.Ordinal);
    private readonly Dictionary<string, ConductorState> conductors = new(StringComparer.Ordinal);
    private readonly Dictionary<string, ImmutableArray<int>> numbers = new(StringComparer.Ordinal);

    public ItemStates(Alteration alteration)
    {
        foreach (var change in alteration.Changes)
        foreach (var act in change.Acts)
        foreach (string id in act.Items)
        {
            var sofar = NumbersOf(id);
            if (!sofar.Contains(change.Number)) numbers[id] = sofar.Add(change.Number);
            if (act is Work) continue;
            if (alteration.Before.FindPart(id) is not null || alteration.After.FindPart(id) is not null) parts[id] = PartStateAfter(act);
            else conductors[id] = ConductorStateAfter(act, id);
        }
    }

    public PartState OfPart(string id) => parts.GetValueOrDefault(id, PartState.Left);

    public ConductorState OfConductor(string id) => conductors.GetValueOrDefault(id, ConductorState.LeftAsIs);

    public ImmutableArray<int> NumbersOf(string id) => numbers.TryGetValue(id, out var found) ? found : [];

    private static PartState PartStateAfter(Act act) => act switch
    {
        TakeOut => PartState.TakenOut,
        Fit => PartState.Fitted,
        Replace { Reversed: true } => PartState.ReplacedReversed,
        Replace => PartState.Replaced,
        Reverse => PartState.Reversed,
        Remount => PartState.Remounted,
        _ => PartState.Left,
    };

    private static ConductorState ConductorStateAfter(Act act, string id) => act switch
    {
        TakeOut => ConductorState.TakenOut,
        Run => ConductorState.RunNew,
        Move { Ends.Length: > 1 } => ConductorState.UsedElsewhere,
        Move { IsRenewed: true } => ConductorState.MovedAndRenewed,
        Move => ConductorState.Moved,
        Renew => ConductorState.Renewed,
        Cut cut => cut.Items[0] == id ? ConductorState.Moved : ConductorState.RunNew,
        _ => ConductorState.LeftAsIs,
    };
}
