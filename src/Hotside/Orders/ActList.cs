using Hotside.Alterations;
using Hotside.Circuits;

namespace Hotside.Orders;

/// <summary>The acts of an alteration's changes, in the order of the changes, and what they do to each wire and part.</summary>
internal sealed class ActList
{
    private readonly Alteration alteration;
    private readonly List<HandAct> acts = [];
    private readonly string label = "";

    /// <summary>The acts of an alteration.</summary>
    public ActList(Alteration alteration)
    {
        this.alteration = alteration;
        foreach (var wire in alteration.Before.Conductors.Concat(alteration.After.Conductors))
            if (!Wires.ContainsKey(wire.Id))
            {
                var history = HistoryOf(wire.Id);
                Wires.Add(wire.Id, history);
            }
        foreach (var change in alteration.Changes)
        foreach (var act in change.Acts)
        {
            label = change.Label;
            Add(act, change.Number);
        }
    }

    /// <summary>The acts that the changes ask for.</summary>
    public IReadOnlyList<HandAct> All => acts;

    /// <summary>What becomes of each wire.</summary>
    public Dictionary<string, WireHistory> Wires { get; } = new(StringComparer.Ordinal);

    /// <summary>The act that changes a part.</summary>
    public Dictionary<string, int> Parts { get; } = new(StringComparer.Ordinal);

    private WireHistory HistoryOf(string id)
    {
        Conductor? was = alteration.Before.FindConductor(id), now = alteration.After.FindConductor(id);
        bool isFlipped = was is not null && now is not null && Likeness(was.From, now.To) + Likeness(was.To, now.From) > Likeness(was.From, now.From) + Likeness(was.To, now.To);
        WireHistory history = new(id) { Was = was?.Wire, Will = now?.Wire, IsFlipped = isFlipped };
        if (was is not null) (history.Start[isFlipped ? 1 : 0], history.Start[isFlipped ? 0 : 1]) = (was.From, was.To);
        if (now is not null) (history.Final[0], history.Final[1]) = (now.From, now.To);
        return history;
    }

    private static int Likeness(End old, End now) => old == now ? 3 : old.Part is not null && old.Part == now.Part ? 2 : 0;

    private void Add(Act act, int change)
    {
        switch (act)
        {
            case TakeOut: foreach (string id in act.Items) Out(id, change); break;
            case Fit: foreach (string id in act.Items) Part(WorkActType.Fit, id, change); break;
            case Replace: foreach (string id in act.Items) Part(WorkActType.Swap, id, change); break;
            case Reverse: Part(WorkActType.Turn, act.Items[0], change); break;
            case Remount: Part(WorkActType.Remount, act.Items[0], change); break;
            case Run: Lay(Wires[act.Items[0]], change, "run"); break;
            case Move move when move.IsRenewed: Anew(Wires[act.Items[0]], change); break;
            case Move move: Move(Wires[act.Items[0]], move, change); break;
            case Renew: foreach (string id in act.Items) Anew(Wires[id], change); break;
            case Alterations.Cut cut: Cut(cut, change); break;
            case Work { IsRemark: true }: break;
            case Work work: Put(new(WorkActType.Work, work.Items[0], change) { Said = work.Sentence }); break;
            default: throw new ArgumentOutOfRangeException(nameof(act), act.GetType().Name, "There are no acts for this change.");
        }
    }

    private int Put(HandAct act)
    {
        acts.Add(act with { Index = acts.Count, Label = label });
        return acts.Count - 1;
    }

    private void Part(WorkActType type, string id, int change) => Parts[id] = Put(new(type, id, change));

    private void Out(string id, int change)
    {
        if (Wires.TryGetValue(id, out var wire))
        {
            Off(wire, change, "take-out");
            wire.Pull = Put(new(WorkActType.Pull, id, change) { Purpose = "take-out" });
        }
        else
        {
            Part(WorkActType.PartOut, id, change);
        }
    }

    private void Off(WireHistory wire, int change, string purpose)
    {
        for (int side = 0; side < 2; side++) OffEnd(wire, side, change, purpose);
    }

    private void OffEnd(WireHistory wire, int side, int change, string purpose)
    {
        if (wire.Start[side] is not { IsFree: false } at) return;
        wire.Off[side] = Put(new(WorkActType.WireOff, wire.Id, change) { Side = side, At = at, Other = wire.Start[1 - side]!.Value, Purpose = purpose });
    }

    private void OnEnd(WireHistory wire, int side, int change, string purpose)
    {
        if (wire.Final[side] is not { IsFree: false } at) return;
        wire.On[side] = Put(new(WorkActType.WireOn, wire.Id, change) { Side = side, At = at, Other = wire.Final[1 - side]!.Value, Purpose = purpose });
    }

    private void Lay(WireHistory wire, int change, string purpose)
    {
        wire.Lay = Put(new(WorkActType.Lay, wire.Id, change) { Purpose = purpose });
        for (int side = 0; side < 2; side++) OnEnd(wire, side, change, purpose);
    }

    private void Anew(WireHistory wire, int change)
    {
        Off(wire, change, "renew");
        wire.Pull = Put(new(WorkActType.Pull, wire.Id, change) { Purpose = "renew" });
        Lay(wire, change, "renew");
    }

    private void Move(WireHistory wire, Move move, int change)
    {
        foreach (var moved in move.Ends)
        {
            int side = wire.Start[0] == moved.From && wire.Off[0] < 0 ? 0 : 1;
            OffEnd(wire, side, change, "move");
            OnEnd(wire, side, change, "move");
            // With both ends elsewhere the copper is laid anew between; one end is put over in one go.
            if (move.Ends.Length == 1 && wire.On[side] is >= 0 and var on && wire.Off[side] >= 0) acts[on] = acts[on] with { Partner = wire.Off[side] };
        }
    }

    private void Cut(Alterations.Cut cut, int change)
    {
        WireHistory wire = Wires[cut.Items[0]], half = Wires[cut.Items[1]];
        int side = wire.Final[1] == cut.First ? 1 : 0, near = half.Final[0] == cut.Second ? 0 : 1;
        int at = Put(new(WorkActType.Cut, wire.Id, change) { Said = half.Id, Purpose = "cut", At = wire.Start[side]!.Value, Other = wire.Start[1 - side]!.Value });
        wire.Off[side] = half.Lay = at;
        half.Start[1 - near] = wire.Start[side];
        OnEnd(wire, side, change, "cut");
        OnEnd(half, near, change, "cut");
        foreach (int on in new[] { wire.On[side], half.On[near] }.Where(on => on >= 0)) acts[on] = acts[on] with { Partner = at };
    }
}
