using Hotside.Circuits;
using Hotside.Proposals.Rules;
using Hotside.Sizing.Tables;
using Hotside.Studies.Figures.Budgets;

namespace Hotside.Proposals.Steps;

/// <summary>An alternator in the place of a generator: the old set out, the new one in, its size by the night's loads, its charge wire guarded at the battery's end.</summary>
internal static class AlternatorStep
{
    // Outputs that are sold, a battery's share while it is charged, and the part of the output that should suffice (common practice, no source).
    private static readonly double[] Outputs = [35, 45, 55, 65, 80, 100, 120];
    private const double Recharge = ChargingBudget.MostRecharge, UsableShare = ChargingBudget.UsableShare, FuseShare = 1.25;

    /// <summary>Takes the old set out and fits the alternator.</summary>
    public static AlternatorPlace Fit(Workbench work, ChargingSet set)
    {
        var draft = work.Draft;
        var ids = set.Ids;
        bool IsOf(End end) => end.Part is { } id && ids.Contains(id);
        var touching = draft.Before.Conductors.Where(c => c.Ends.Any(IsOf)).ToArray();
        var feeds = touching.Where(c => c.Ends.Any(e => set.Outputs.Contains(e)) && c.Ends.Any(e => !IsOf(e) && !e.IsChassis)).ToArray();
        var lamps = touching.Where(c => !feeds.Contains(c) && c.Ends.Any(e => e.Part is { } id && draft.Before.FindPart(id)!.Kind.Elements.Any(x => x.Type == ElementType.Lamp))).ToArray();
        End? outlet = feeds.Length == 0 ? null : feeds[0].Ends.First(e => !IsOf(e));
        double metres = touching.Except(lamps).Where(c => c.Ends.Any(e => set.Outputs.Contains(e)) || c.Ends.All(IsOf)).GroupBy(c => c.Ends.All(IsOf)).Sum(g => g.Max(c => c.Wire.LengthInMetres ?? 1));
        bool isExcited = work.Choices["alternator"] is var kind && (kind == "lamp-excited" || (kind == "by rule" && lamps.Length > 0));
        string reason = $"a machine of {Numbers.Brief(draft.Before.System.Volts.Max())} V cannot be regulated well at {Numbers.Brief(draft.System.Volts.Max())} V";
        foreach (var part in set.Machines.Concat(set.Regulators)) work.Decide(part.Id, DecisionKind.TakeOut, reason);
        // Lamps keep their wire and find a new end; other feeds that met at the regulator meet at the outlet.
        var kept = isExcited ? lamps : [];
        var others = feeds.Skip(1).ToArray();
        draft.TakeOut([.. touching.Except(kept).Except(others).Select(c => c.Id)], reason);
        End mount = set.Machines[0].CaseOn ?? work.Return;
        string id = draft.Fit(new(draft.KindOf(isExcited ? "alternator" : "alternator-one-wire"))
        {
            Name = "Alternator", Ratings = [new("V", new(draft.System.Volts.Max(), Unit.Volt)), new("A", new(Outputs[0], Unit.Ampere))], Case = new(mount), Place = set.Machines[0].Place,
        }, "it charges at idle and has its regulator built in");
        foreach (var wire in kept) draft.Move(wire.Id, wire.Ends.First(IsOf), End.At(id, "D+"), "the lamp excites the alternator");
        if (outlet is { } there) foreach (var wire in others) draft.Move(wire.Id, wire.Ends.First(IsOf), there, "it met the charge wire at the regulator");
        // What was bolted to the regulator's post is bolted to where its feed came from.
        if (outlet is { } post)
            foreach (var part in draft.Circuit.Parts.Where(p => p.Joints.Any(j => IsOf(j.On))).ToArray())
                draft.Replace(part.Id, part.Spec with { Joints = [.. part.Spec.Joints.Select(j => IsOf(j.On) ? j with { On = post } : j)] }, "what it was bolted to is out");
        draft.TakeOut(set.Machines.Concat(set.Regulators).Select(p => p.Id), reason);
        if (isExcited && kept.Length == 0) Lamp(work, id);
        if (!isExcited && !work.Choices.IsStated("alternator")) work.Ask(id, Workbench.Said(DecisionTable.Standard["no-charge-lamp"].Question!, ("how", KeyOf(draft.Circuit) is null ? "it needs a key switch, and none is in this file" : "alternator=lamp-excited fits one")));
        work.Decide(id, DecisionKind.Fit, "the old set is out");
        work.Comment(id, "the wrong polarity destroys its diodes at once; it is never polarised, never run off the battery, and fitted with the battery cables off" + (isExcited ? "" : "; it must be revved once to wake, and senses its own stud"));
        return new(id, outlet, metres > 0 ? metres : 1.5);
    }

    /// <summary>Sizes the alternator by the loads as they are now, and runs its charge wire behind a fuse.</summary>
    public static void Size(Workbench work, AlternatorPlace place)
    {
        var draft = work.Draft;
        double night = work.Now.Study.Budget.Loads.Sum(l => l.ByNight.Amperes), needed = (night + Recharge) / UsableShare;
        double output = Outputs.FirstOrDefault(o => o >= needed, Outputs[^1]);
        var part = draft.Part(place.Id);
        draft.Replace(place.Id, part.Spec with { Ratings = [part.Ratings[0], new("A", new(output, Unit.Ampere))] }, "");
        draft.Note(place.Id).Reason = $"{Numbers.Plain(night, 0)} A by night and {Numbers.Brief(Recharge)} A for the battery are to be 80 % of it";
        work.Ask(place.Id, $"amperes? {Numbers.Plain(needed, 0)} A at least by the loads in this file; {Numbers.Brief(output)} A taken; bracket and pulley decide");
        End outlet = Outlet(work, place, output);
        string fuse = draft.Fit(new(draft.KindOf("fuse"))
        {
            Name = "Charge lead", Ratings = [new("A", new(FuseFor(output), Unit.Ampere))], Joints = [new("1", outlet)],
        }, "the battery would feed a fault of the charge wire");
        work.Decide(fuse, DecisionKind.Fit, "the battery would feed a fault of the charge wire");
        if (FuseFor(output) < FuseShare * output)
            work.Ask(fuse, $"a bolted fuse? {Numbers.Plain(FuseShare * output, 0)} A at least are to be carried, and the blades listed here end at {Numbers.Plain(FuseFor(output), 0)} A");
        work.Run(End.At(fuse, "2"), End.At(place.Id, "B+"), Workbench.NewWire("RD", place.Metres), $"it carries {Numbers.Brief(output)} A");
    }

    // The largest that is made, where a machine gives more: a bolted fuse is asked for then.
    private static double FuseFor(double output) => FuseLadder.Ratings.FirstOrDefault(r => r >= FuseShare * output, FuseLadder.Ratings[^1]);

    // Through the ammeter as before, unless its scale or a wire on the way is too small; then straight from the battery.
    private static End Outlet(Workbench work, AlternatorPlace place, double output)
    {
        var feed = work.Draft.Circuit.Sources.First(s => s.Element.When is null).Feed;
        if (place.Outlet is not { } outlet) return feed;
        var way = FeedWay.Of(work.Now, outlet);
        string choice = work.Choices["ammeter"];
        Part[] meters = [.. way.Parts.Where(p => p.Kind.Elements.Any(e => e.Type == ElementType.Shunt))];
        bool carries = way.Wires.All(w => work.Now.Sizes.Conductor(w.Id).Allowed is not { } allowed || allowed.Amperes >= FuseFor(output))
            && meters.All(m => m.Rated(m.Kind.Elements[0].Name, Unit.Ampere) >= output);
        if (choice == "by rule" && carries) return outlet;
        if (way.Parts.Length + way.Wires.Length == 0) return outlet;
        foreach (var meter in meters) work.Comment(meter.Id, "the charge goes past it: it shows what the dash draws, never a charge; say so on the owner's page");
        return way.Stud ?? feed;
    }

    private static Part? KeyOf(Circuit circuit) => circuit.Parts.FirstOrDefault(p => p.Kind.TerminalNamed("15") is not null && p.Kind.Elements.Any(e => e.Type == ElementType.Contact));

    // The key's feed, a lamp, a diode against back-feed, D+.
    private static void Lamp(Workbench work, string alternator)
    {
        var draft = work.Draft;
        var key = KeyOf(draft.Circuit)
            ?? throw new ArgumentException("alternator=lamp-excited needs a key switch with terminal 15 in the file; take alternator=one-wire.");
        string lamp = draft.Fit(new(draft.KindOf("charge-lamp")) { Name = "Charge lamp", Ratings = [new("V", new(draft.System.Volts.Max(), Unit.Volt)), new("W", new(2, Unit.Watt))] }, "a weaker lamp may not excite the alternator");
        string diode = draft.Fit(new(draft.KindOf("diode")) { Name = "Exciter diode", Ratings = [new("A", new(1, Unit.Ampere))] }, "D+ would else feed the key's loads back while the engine turns");
        work.Run(End.At(key.Id, key.Kind.TerminalNamed("15")!), End.At(lamp, "15"), Workbench.NewWire("GN", 0.5));
        work.Run(End.At(lamp, "61"), End.At(diode, "A"), Workbench.NewWire("BU", 0.1));
        work.Run(End.At(diode, "K"), End.At(alternator, "D+"), Workbench.NewWire("BU", 1.5));
        work.Decide(lamp, DecisionKind.Fit, "it excites the alternator and shows that it charges");
        work.Decide(diode, DecisionKind.Fit, "the engine must stop with the key");
    }
}
