using Hotside.Checks;
using Hotside.Circuits;
using Hotside.Proposals.Rules;

namespace Hotside.Proposals.Steps;

/// <summary>Lamps of one filament become LED lamps, where nothing hangs on the filament.</summary>
internal static class LedStep
{
    // An LED lamp takes 10 to 20 % of a filament's current for its light (common practice, no source).
    private const double Share = 0.14;

    /// <summary>Whether lamps of a kind become LED lamps: those of one filament and two wires.</summary>
    public static bool Replaces(string kind) => DecisionTable.Standard.Kinds["becomes led"].Contains(kind);

    /// <summary>All lamps of a circuit, for a job of its own.</summary>
    public static void Run(Workbench work)
    {
        foreach (var part in work.Draft.Before.Parts) Of(work, part.Id);
        Flashers(work);
    }

    /// <summary>One lamp; says why where it stays a filament.</summary>
    public static void Of(Workbench work, string id)
    {
        var part = work.Draft.Part(id);
        if (!Replaces(part.Kind.Id))
        {
            if (part.Kind.Elements.Any(e => e.Type == ElementType.Lamp && !e.IsOneWay) && !part.Kind.Elements.Any(Trade.IsLed) && !work.IsDecided(id))
                work.Decide(id, DecisionKind.Keep, "a headlamp, a charge lamp or a lamp with two filaments stays a filament: light, exciting current and type approval hang on it");
            return;
        }
        var load = work.Before.Study.Loads.First(l => l.Part.Id == id);
        // A pilot that has got its own return parts the ways.
        bool IsParted(string part) => work.Decisions.Any(d => d.Item == part && d.Rule == "pilot");
        if (IsParted(id)) return;
        if (!load.InSeriesWith.IsEmpty || work.Before.Study.Loads.Any(l => !IsParted(l.Part.Id) && l.InSeriesWith.Contains(load.Name)))
        {
            if (!work.IsDecided(id)) work.Decide(id, DecisionKind.Keep, "current of another lamp returns through its filament");
            return;
        }
        var lamp = part.Kind.Elements.First(e => e.IsConsumer);
        double watts = part.Rated(lamp.Name, Unit.Watt) ?? (part.Rated(lamp.Name, Unit.Ampere) * part.Rated(lamp.Name, Unit.Volt)) ?? 21;
        // Where minus is the feed, an LED on the old terminals would lie the wrong way round.
        bool isTurned = work.Thought.Greatest(part, lamp).Volts < 0;
        var spec = part.Spec with
        {
            Kind = work.Draft.KindOf(isTurned ? "led-lamp-bridge" : "led-lamp"), Options = [],
            Ratings = [new("V", new(part.Rated(lamp.Name, Unit.Volt) ?? work.Draft.System.Volts[0], Unit.Volt)), new("W", new(Math.Max(1, Math.Round(Share * watts)), Unit.Watt))],
        };
        string reason = $"it takes a seventh of the {Numbers.Brief(watts)} W{(isTurned ? "; of a kind that minds no polarity" : "")}";
        work.Draft.Note(id).Reason = reason;
        work.Draft.Replace(id, spec, reason);
        if (!work.IsDecided(id)) work.Decide(id, DecisionKind.Replace, reason);
        work.Comment(id, "fit it last, when the polarity is proved; colour behind its lens and type approval are for the owner to settle");
    }

    /// <summary>A flasher that is timed by filaments gives way to one that minds no load.</summary>
    public static void Flashers(Workbench work)
    {
        foreach (var part in work.Draft.Circuit.Parts.Where(Trade.IsThermalFlasher).ToArray())
        {
            if (work.Now.Study.Loads.All(l => !Trade.IsLed(l.Element) || l.Paths.All(w => !w.HotWay.Contains(part.Id)))) continue;
            var kind = work.Draft.KindOf("electronic-flasher");
            work.Draft.Replace(part.Id, part.Spec with { Kind = kind, Ratings = [new("V", new(work.Draft.System.Volts[0], Unit.Volt)), new("A", new(10, Unit.Ampere))] }, "LED lamps do not heat a thermal one");
            work.Draft.Note(part.Id).Reason = "LED lamps do not heat a thermal one";
            work.Draft.Note(part.Id).Questions.Clear();
            work.Run(End.At(part.Id, "31"), work.Return, Workbench.NewWire("BK", 0.3), "an electronic flasher has a ground of its own");
            work.Decide(part.Id, DecisionKind.Replace, "LED lamps do not heat a thermal one");
            work.Ask(part.Id, $"is it marked for {work.Draft.System}?");
        }
    }
}
