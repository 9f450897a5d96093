using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Packs.Lists;
using Hotside.Packs.Papers;
using Hotside.Wording;

namespace Hotside.Packs.Pages;

/// <summary>The owner's page, in plain words: what changed, what stayed, how to charge and jump-start it, what to buy, what the ammeter shows.</summary>
internal static class OwnerPage
{
    public const string Key = "owner";

    // Less an owner does not notice: common practice, no source.
    private const double LeastTold = 0.5, LeastShown = 0.05;

    public static Section? Of(PackSource source)
    {
        if (!source.IsAltered) return null;
        var (width, lettering) = (source.Width, source.Lettering);
        List<FlowPart> parts = [];
        void Tell(string head, IEnumerable<string> points)
        {
            string[] all = [.. points];
            if (all.Length == 0) return;
            parts.Add(Prose.Heading(head, width, lettering));
            parts.Add(Prose.Points(all, lettering.Text, width));
        }
        Tell("What changed", Changed(source));
        Tell("What stayed", Stayed(source));
        Tell("Battery, charger, jump start", BatteryRule.Of(source));
        Tell("What you will notice", Noticed(source));
        if (Spares(source) is { } spares)
        {
            parts.Add(Prose.Heading("Bulbs and fuses to buy", width, lettering));
            parts.Add(spares);
        }
        Tell("If something does not work",
        [
            "Switch off. Look at its fuse on the chart; put in one of the same rating once, and if that blows too, leave it out and have the reason found.",
            "Warm smell, smoke, a lamp that glows when it should not: battery off at once, " + BatteryRule.FirstOff(source) + ".",
            "Keep this pack with the vehicle: whoever works on it next needs the drawing and the wire list.",
        ]);
        parts.Add(Blanks.Of(["Questions to", "Telephone", "Next check on"], 3, width, lettering));
        return new(Key, "For the owner", [.. parts]) { IsWhole = true, Note = SheetText.System(source.Alteration.After.System, source.Words) };
    }

    private static IEnumerable<string> Changed(PackSource source)
    {
        var (alteration, words) = (source.Alteration, source.Words);
        string before = SheetText.System(alteration.Before.System, words), after = SheetText.System(alteration.After.System, words);
        if (before != after) yield return $"The supply was {before}; it is now {after}.";
        foreach (var (states, word) in new[] { ((PartState[])[PartState.Fitted], "New"), ([PartState.Replaced, PartState.ReplacedReversed], "Replaced"), ([PartState.TakenOut], "Gone") })
        {
            Circuit circuit = word == "Gone" ? alteration.Before : alteration.After;
            string[] named = [.. circuit.Parts.Where(p => states.Contains(alteration.StateOf(p.Id)) && p.Kind.Elements.Length > 0).GroupBy(p => words.Noun(p.Kind)).Select(g => g.Count() == 1 ? Plain(g.First(), g.Key, words) : $"{Numbers.Whole(g.Count())} {Vocabulary.Plural(g.Key)}")];
            if (named.Length > 0) yield return $"{word}: {PartWords.And(named)}.";
        }
    }

    private static string Plain(Part part, string noun, Vocabulary words) => part.Name is not { } name || noun.Split(' ').Any(w => w.Length > 3 && name.Contains(w, StringComparison.OrdinalIgnoreCase)) ? Vocabulary.Small(words.Title(part)) : $"{noun} ({name})";

    private static IEnumerable<string> Stayed(PackSource source)
    {
        string[] loads = [.. source.Loads.Where(l => l is { Was: not null, Now: not null }).Select(l => l.Load.Part).DistinctBy(p => p.Id).Where(p => source.Alteration.StateOf(p.Id) == PartState.Left && p.Kind.Elements.Any(e => e.IsConsumer)).Select(p => Plain(p, source.Words.Noun(p.Kind), source.Words))];
        if (loads.Length > 0) yield return $"As they were: {FigureText.Some([.. loads.Distinct()])}.";
        string[] switches = [.. source.Alteration.After.Parts.Where(p => p.Kind.Letter == "S" && p.Kind.Actuators.Any(a => a.Drive is ActuatorDrive.Hand or ActuatorDrive.Foot or ActuatorDrive.Key) && source.Alteration.StateOf(p.Id) == PartState.Left).Select(p => Plain(p, source.Words.Noun(p.Kind), source.Words)).Distinct()];
        if (switches.Length > 0) yield return $"Where they were: {FigureText.Some(switches)}.";
    }

    private static IEnumerable<string> Noticed(PackSource source)
    {
        var budget = source.Job.Study.After.Budget;
        foreach (var ammeter in budget.Ammeters)
        {
            double amperes = ammeter.Reading.Amperes;
            string shows = Math.Abs(amperes) < LeastShown ? "next to nothing" : $"about {Numbers.ThreeFigures(Math.Abs(amperes))} A {(amperes > 0 ? "charge" : "discharge")}";
            yield return $"{Vocabulary.Capital(source.Words.Title(ammeter.Part))}: it shows {shows} with the engine running and the key on" + (ammeter.ShowsTheBattery ? "." : "; not all that the battery takes or gives passes it.");
        }
        if (budget.StandsFor is { Hours: > 0 } time) yield return $"Left standing, the battery starts the engine for about {(time.Hours < 48 ? Numbers.Fixed(time.Hours, 0) + " hours" : Numbers.Fixed(time.Days, 0) + " days")}; then charge it, or take its {source.Words.Ground} cable off.";
        if (budget.IdleByNight is { Battery.Amperes: > LeastTold } idle)
            yield return $"At idle with everything on at night the battery gives about {Numbers.ThreeFigures(idle.Battery.Amperes)} A more than it gets: do not let it idle long with the lights on.";
        foreach (var work in source.Alteration.Changes.SelectMany(c => c.Acts).OfType<Work>().Where(w => source.Alteration.After.FindPart(w.Items[0]) is { } part && part.Kind.Elements.Any(part.IsStarter)))
            yield return $"{Vocabulary.Capital(source.Words.Title(source.Alteration.After.FindPart(work.Items[0])!))}: {work.Sentence}.";
    }

    // A name may have a comma of its own.
    private static string Several(string[] names) => Array.Exists(names, n => n.Contains(',', StringComparison.Ordinal)) ? string.Join("; ", names) : FigureText.Some(names);

    private static FlowPart? Spares(PackSource source)
    {
        var lamps = source.Alteration.After.Parts.Where(p => p.Kind.Elements.Length > 0 && p.Kind.Elements.All(e => e.Type is ElementType.Lamp or ElementType.Diode) && !p.Ratings.IsEmpty)
            .GroupBy(p => string.Join(", ", QuantityWords.Of(p.Ratings))).Select(g => ("Bulb, " + g.Key, Several([.. g.Select(p => source.Words.Title(p)).Distinct()])));
        var fuses = source.Fuses.Where(f => f.IsFuse && f.Rating.Length > 0).GroupBy(f => f.Rating + (f.Colour.Length > 0 ? $" (as a blade: {f.Colour})" : "")).OrderBy(g => g.First().Amperes).Select(g => ("Fuse, " + g.Key, FigureText.Some([.. g.Select(f => f.Name)])));
        var rows = lamps.Concat(fuses).Select(l => TableRow.Of(new Cell(l.Item1) { IsBold = true }, l.Item2, Cell.Empty)).ToArray();
        return rows.Length == 0 ? null : Table.Of([new("What") { Share = 1 }, new("For") { Share = 2 }, Column.Blank("Base or type", 34)], rows, source.Width, source.Lettering);
    }
}
