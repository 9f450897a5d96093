using Hotside.Circuits;

namespace Hotside.Orders;

/// <summary>The vehicle as one finds it between two steps of a plan: with or without a battery, and its cables on the posts or off them.</summary>
internal sealed class StandingVehicle(WorkPlan plan)
{
    /// <summary>The circuit; what comes off a post hangs free.</summary>
    /// <param name="done">A mark for each act of the plan.</param>
    /// <param name="battery">Which battery is connected.</param>
    public Circuit Of(bool[] done, StandingBattery battery)
    {
        var (before, after) = (plan.Alteration.Before.System, plan.Alteration.After.System);
        bool[] own = done[..plan.Count];
        var circuit = battery switch
        {
            StandingBattery.Old => plan.States.Of(plan.Connected(own, Battery.Old), before),
            StandingBattery.New => plan.States.Of(plan.Connected(own, Battery.New), after),
            _ => plan.States.Of(own, plan.States.HasNewBattery(own) ? after : before),
        };
        if (battery == StandingBattery.Out) circuit = Without(circuit, (_, _) => true);
        if (battery == StandingBattery.AsOrdered && HasBegun(done)) circuit = Without(circuit, (wire, post) => IsOff(wire, post, done));
        return plan.States.Found(circuit);
    }

    /// <summary>Whether a battery is connected: a cable or bolt on both posts of each that is in the circuit.</summary>
    public static bool IsPowered(Circuit circuit)
    {
        var sources = circuit.Sources.Where(IsBattery).ToArray();
        bool IsHeld(End post) => circuit.ConductorsAt(post).Any() || circuit.Parts.Any(p => p.Joints.Any(j => j.On == post || End.At(p.Id, j.Terminal) == post));
        return sources.Length > 0 && sources.All(s => IsHeld(s.Feed) && IsHeld(s.Return));
    }

    private static bool IsBattery(SourcePoles source) => source.Part.IsStandingSource && !source.Element.TakesEitherPolarity;

    private bool HasBegun(bool[] done) => plan.Acts.Any(a => a.Type == WorkActType.CableOff && done[a.Index]);

    // Off is what came off before the work and is not on again, by an act of its own or by the line that lands it.
    private bool IsOff(string? wire, End post, bool[] done)
    {
        if (wire is not null && plan.Acts.Any(a => done[a.Index] && a.Type == WorkActType.WireOn && a.Item == wire && a.At == post)) return false;
        if (plan.Acts.Any(a => done[a.Index] && a.Type == WorkActType.CableOn && a.At == post)) return false;
        bool isOut = plan.Acts.All(a => a.Type is not (WorkActType.CableOff or WorkActType.BatteryOut) || done[a.Index]);
        if (!isOut) return plan.Acts.Any(a => done[a.Index] && a.Type == WorkActType.CableOff && a.At == post);
        // A post that bears no cable is bolted to what it stands on, and is on it when the battery is in its tray.
        return wire is not null || plan.Acts.Any(a => !done[a.Index] && (a.Type == WorkActType.PowerUp && a.Said == "battery-in" || a.Index < plan.Count && a.ChangesCircuit && a.Words.Contains("battery")));
    }

    private static Circuit Without(Circuit circuit, Func<string?, End, bool> isOff)
    {
        var batteries = circuit.Sources.Where(IsBattery).Select(s => s.Part.Id).ToHashSet(StringComparer.Ordinal);
        bool IsPost(End end) => end.Part is { } id && batteries.Contains(id);
        // What joins batteries to each other leaves and comes with them.
        End Left(Conductor wire, End end) => IsPost(end) && !wire.Ends.All(IsPost) && isOff(wire.Id, end) ? End.Free : end;
        Part Bolted(Part part) => part.Joints.IsEmpty ? part : part with
        {
            Spec = part.Spec with { Joints = [.. part.Joints.Where(j => !(IsPost(End.At(part.Id, j.Terminal)) && isOff(null, End.At(part.Id, j.Terminal))) && !(IsPost(j.On) && isOff(null, j.On)))] },
        };
        return new(circuit.System, [.. circuit.Parts.Select(Bolted)], [.. circuit.Conductors.Select(c => c with { From = Left(c, c.From), To = Left(c, c.To) })], circuit.Settings);
    }
}
