using Hotside.Checks;
using Hotside.Circuits;
using Hotside.Studies;

namespace Hotside.Proposals.Steps;

/// <summary>Which contacts are to be relieved by a relay, and which stay as they are, ground-switched ones too.</summary>
internal static class RelayStep
{
    // What rounding is worth.
    private const double Tolerance = 1.02, More = 1.05;

    // Below that no contact needs help (own choice, no source).
    private const double LeastAmperes = 1;

    /// <summary>Relieves contacts of the loads as they are drafted.</summary>
    public static void Run(Workbench work)
    {
        var bench = work.Now;
        foreach (var part in bench.Circuit.Parts.Where(p => work.Draft.Before.FindPart(p.Id) is not null))
        {
            var loads = bench.Study.Loads.Where(l => !l.Element.IsInternal && !l.Paths.IsEmpty && l.SwitchedBy.Contains(part.Id) && !IsForStarter(bench.Study, l)).ToArray();
            foreach (var contact in part.Kind.Elements.Where(e => IsByHand(part, e)))
            {
                var (feed, _) = (part.Kind.TerminalNamed(contact.From) ?? contact.From, contact.To);
                var fed = loads.Where(l => l.Paths.Any(p => Passes(work, p, part, contact, feed))).ToArray();
                if (fed.Length == 0) continue;
                if (ReasonFor(work, part, contact, fed) is { } reason) Insert(work, part, contact, fed, reason);
                else if (work.Scope.IsWhole) KeepRated(work, part, contact, fed);
            }
        }
        foreach (var load in work.Now.Study.Loads.Where(l => l.Side == SwitchedSide.GroundSwitched && !l.Element.IsInternal && l.OwnSwitches.Any(s => s != l.Part.Id) && work.Draft.Before.FindPart(l.Part.Id) is not null))
            work.Comment(load.Part.Id, $"it stays ground-switched by {string.Join(", ", work.Draft.Before.Parts.Select(p => p.Id).Where(p => p != load.Part.Id && load.OwnSwitches.Contains(p)))}, which is sound while its case touches no metal; both its terminals are hot at rest");
    }

    // What a rating bears it bears at other volts, too, as long as the power is the same; that is said, for relays are so often fitted by habit.
    private static void KeepRated(Workbench work, Part part, Element contact, LoadStudy[] fed)
    {
        if (part.Rated(contact.Name, Unit.Ampere) is not { } rating || work.IsDecided(part.Id) || work.Target.Factor == 1 || fed.All(l => l.Element.Type == ElementType.Coil)) return;
        double now = Math.Abs(work.Now.Greatest(part, contact).Amperes), was = Math.Abs(work.Before.Greatest(part, contact).Amperes);
        if (now < LeastAmperes || now > was) return;
        work.DecideBy("rated-contact", part.Id, ("now", Numbers.Plain(now, 1)), ("was", Numbers.Plain(was, 1)), ("rating", Numbers.Brief(rating)));
    }

    private static bool IsByHand(Part part, Element contact) =>
        contact is { Type: ElementType.Contact, When: { } when, IsNoControl: false }
        && part.Kind.Current != "carries" && part.Kind.Elements.All(e => !e.IsSource)
        && when.Tests.Any(t => part.Kind.Actuators.First(a => a.Name == t.Actuator) is { IsNoControl: false, Cycles: false, Drive: ActuatorDrive.Hand or ActuatorDrive.Foot or ActuatorDrive.Automatic });

    private static bool Passes(Workbench work, LoadPath path, Part part, Element contact, string feed)
    {
        var way = path.HotWay.Contains(part.Id) ? path.HotWay : path.GroundWay;
        int at = way.IndexOf(part.Id);
        if (at < 0) return false;
        // The wires before and behind tell which of several contacts is passed.
        string[] ends = [part.Kind.TerminalNamed(contact.From) ?? contact.From, part.Kind.TerminalNamed(contact.To) ?? contact.To];
        bool Touches(int index) => way.ElementAtOrDefault(index) is not { } id || !work.Draft.HasWire(id) || work.Draft.Wire(id).Ends.Any(e => e.Part == part.Id && ends.Contains(e.Terminal));
        return Touches(at - 1) && Touches(at + 1);
    }

    private static bool IsForStarter(CircuitStudy study, LoadStudy load) =>
        load.Part.IsStarter(load.Element) || load.Part.Kind.Voltage == "brief" || study.Loads.Any(l => l.Part.IsStarter(l.Element) && l.Chain.Contains(load.Part.Id));

    private static string? ReasonFor(Workbench work, Part part, Element contact, LoadStudy[] fed)
    {
        double amperes = Math.Abs(work.Now.Greatest(part, contact).Amperes), before = Math.Abs(work.Before.Greatest(part, contact).Amperes);
        double? rating = part.Rated(contact.Name, Unit.Ampere);
        string now = Numbers.Plain(amperes, 1), volts = Numbers.Brief(work.Draft.System.Volts.Max()), was = Numbers.Plain(before, 1), old = Numbers.Brief(work.Draft.Before.System.Volts.Max());
        bool isNamed = fed.Any(l => work.Scope.Names(l.Part.Id)) || work.Scope.Names(part.Id);
        bool isCoil = fed.All(l => l.Element.Type == ElementType.Coil);
        if (isCoil || amperes < (isNamed ? 0.05 : LeastAmperes)) return null;
        if (!work.Scope.IsWhole) return isNamed && fed.Any(l => IsNearest(l, part)) ? $"{part.Id} then carries a coil's current, not {now} A" : null;
        string choice = work.Choices["relay"];
        if (rating is { } most && amperes > most * Tolerance && (work.Target.Factor != 1 || amperes > before * More)) return $"{part.Id} would carry {now} A, and is made for {Numbers.Brief(most)} A";
        if (rating is null && amperes > before * More) return $"{part.Id} has no rating and would carry {now} A, {was} A before";
        if (work.Target.Factor == 1 && choice != "always") return null;
        bool isHorn = fed.Any(l => l.Element.Type == ElementType.Horn), isHeadlamp = fed.Any(l => Trade.IsHeadlamp(l.Part));
        if (choice == "always" && (isHorn || isHeadlamp)) return $"{part.Id} then carries a coil's current, not {now} A";
        if (choice != "by rule") return null;
        var moved = contact.When!.Tests.Select(t => part.Kind.Actuators.First(a => a.Name == t.Actuator)).ToArray();
        if (isHorn && rating is null && moved.Any(a => a is { Drive: ActuatorDrive.Hand, Returns: true }))
            return $"{part.Id} has no rating and would break {now} A at {volts} V, {was} A at {old} V before";
        if (isHeadlamp && moved.Any(a => a is { Drive: ActuatorDrive.Foot, Returns: false })) return $"{part.Id} lies at the feet, wet and worn, and then carries a coil's current, not {now} A";
        return null;
    }

    // Of several contacts on the way the one at the load is relieved, and with it the others.
    private static bool IsNearest(LoadStudy load, Part part)
    {
        var path = load.Paths[0];
        var between = path.HotWay.Contains(part.Id) ? path.HotWay.Skip(path.HotWay.IndexOf(part.Id) + 1) : path.GroundWay.TakeWhile(i => i != part.Id);
        return !between.Any(i => i != load.Part.Id && load.SwitchedBy.Contains(i));
    }

    private static void Insert(Workbench work, Part part, Element contact, LoadStudy[] fed, string reason)
    {
        bool isHot = fed.All(l => l.Paths[0].HotWay.Contains(part.Id));
        double amperes = Math.Abs(work.Now.Greatest(part, contact).Amperes);
        string? relay = isHot ? HotRelay.Insert(work, part, fed, reason, amperes) : fed.All(l => l.Paths[0].GroundWay.Contains(part.Id)) ? GroundRelay.Insert(work, fed, reason, amperes) : null;
        if (relay is not null)
        {
            work.Decide(relay, DecisionKind.Fit, reason);
            work.Decide(part.Id, DecisionKind.Relay, reason);
            return;
        }
        work.Decide(part.Id, DecisionKind.Check, $"{reason}; how it is wired leaves no plain place for a relay");
        work.Ask(part.Id, "where is a relay to go? none is proposed");
        work.Draft.Note(part.Id).Works.Add("a relay is to take over its current before this job is done");
    }
}
