using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Diagnoses;
using Hotside.Studies;
using Hotside.Wording;

namespace Hotside.CheckSheets;

/// <summary>Makes check sheets of a circuit.</summary>
internal sealed class SheetMaker(CircuitStudy study, Alteration? alteration, string title, Vocabulary words)
{
    private const string Defers = "An aid, worked out from the netlist: the workshop manual, local codes and licensed practice take precedence.";

    private const int MostSilent = 12;

    /// <summary>The intake sheet of some loads.</summary>
    public CheckSheet Intake(IEnumerable<LoadStudy> loads) => new($"Intake sheet: {title}", new IntakeRows(study, words).Of(loads))
    {
        Extent = SheetExtent.Intake,
        Heads =
        [
            "Vehicle ______________________   date ____________   hand ____________   battery now ______ V",
            $"Netlist: {SheetText.System(study.Circuit.System, words)}. Measured at the battery: the post on {words.Ground} is  + / −  ______ V",
        ],
        Cautions =
        [
            Defers,
            "Rings, watch and chains off; eyes protected; no flame near the battery.",
            $"Measure the battery's polarity at its posts first: cable {words.Color}s and the book may both be wrong.",
            "Take a loaded meter or a test lamp: a meter of 10 MΩ shows ghost volts on an open wire. Photograph and tag every terminal before it is moved.",
        ],
        Notes = ["Expected values are the netlist's; what is measured decides. A reading that contradicts the netlist means that the record is wrong, or the vehicle is."],
    };

    /// <summary>The check sheet of some loads and their fuse ways; none for all.</summary>
    public CheckSheet Check(SheetExtent extent, ImmutableArray<LoadStudy> loads)
    {
        List<CheckRow> rows = [];
        List<CountedFault> counted = [];
        var pieces = SheetPieces.Of(study, loads);
        if (pieces.Length > 1 || !loads.IsEmpty) rows.AddRange(new SheetRows(DiagnosisBench.Sound(study), extent, null, words).Rows);
        // Pieces know nothing of each other, so they may be worked at together; their order stays.
        foreach (var of in pieces.AsParallel().AsOrdered().Select(p => new SheetRows(DiagnosisBench.Of(study, alteration, p.Loads, p.Elsewhere), extent, alteration, words)))
        {
            rows.AddRange(of.Rows.Where(r => rows.TrueForAll(o => KeyOf(o) != KeyOf(r))));
            counted.AddRange(of.Faults());
        }
        // What lies in several pieces counts once.
        CountedFault[] faults = [.. counted.GroupBy(f => f.Text, StringComparer.Ordinal).Select(CountedFault.Of)];
        double shown = faults.Sum(f => f.Shown), all = faults.Sum(f => f.Weight);
        var numbered = rows.Select((r, i) => (Row: r, Index: i)).OrderBy(r => r.Row.Stage).ThenBy(r => r.Index).Select((r, i) => r.Row with { Number = i + 1 }).ToImmutableArray();
        return new($"{(extent == SheetExtent.Short ? "Short check sheet" : "Check sheet")}: {title}", numbered)
        {
            Extent = extent,
            Heads = [.. Heads()],
            Cautions = [.. CautionsOf(numbered)],
            Notes =
            [
                $"These rows show {Numbers.Plain(100 * shown / Math.Max(all, 1e-9), 0)} % of the single faults that are counted, by weights of common practice from memory. Resistances below an ohm and two faults at once may hide.",
                .. SilentNotes([.. faults.Where(f => !f.IsSeen)], numbered),
            ],
        };
    }

    private static IEnumerable<string> Heads()
    {
        yield return "Vehicle ______________________   date ____________   hand ____________";
        yield return "Meter: 0.8 % + 2 digits, 10 MΩ ______________   leads held together ______ Ω: take it off every row in ohms";
        yield return "Battery now ______ V   temperature ______ °C   Live rows go with the battery: multiply \"of battery\" by what its posts show in that setting.";
    }

    private IEnumerable<string> CautionsOf(ImmutableArray<CheckRow> rows)
    {
        yield return Defers;
        yield return $"Battery cables: {Cautions.GroundedFirst(study.Circuit, words)}. The battery is OUT for every row in ohms; electronics unplugged.";
        yield return "Rings, watch and chains off; eyes protected; no flame near the battery.";
        if (rows.Any(r => r.Stage == CheckStage.PowerUp)) yield return "First power through the lamp, and only after the rows in ohms are right. Electronics stay unplugged until polarity is proved.";
        if (rows.Any(r => r.Stage is CheckStage.Cranking or CheckStage.Charging)) yield return "Cranking and running: wheels chocked, neutral, brake on; hands and clothes off belts and fan; ignition lead grounded or coil fed by nothing while cranking.";
        if (study.Circuit.Parts.Any(p => p.Kind.Symbol == "alternator")) yield return "Never run the alternator without its battery, and never turn the battery round.";
    }

    // What nobody sees or hears, by the row that finds it.
    private static IEnumerable<string> SilentNotes(CountedFault[] silent, ImmutableArray<CheckRow> rows)
    {
        string[] found = [.. silent.Where(s => s.FoundBy is not null).GroupBy(s => rows.First(r => KeyOf(r) == KeyOf(s.FoundBy!)).Number).OrderBy(g => g.Key).Select(g => $"row {Numbers.Whole(g.Key)}: {Listed(g.Select(s => s.Text))}")];
        if (found.Length > 0) yield return $"Nobody sees or hears these; the row finds them: {string.Join(" · ", found)}";
        if (Array.Exists(silent, s => s.FoundBy is null)) yield return $"Found by no row of this sheet: {Listed(silent.Where(s => s.FoundBy is null).OrderByDescending(s => s.Weight).Select(s => s.Text))}";
    }

    private static string Listed(IEnumerable<string> faults)
    {
        string[] all = [.. faults];
        return string.Join("; ", all.Take(MostSilent)) + (all.Length > MostSilent ? $"; and {Numbers.Whole(all.Length - MostSilent)} more" : "");
    }

    private static (CheckStage, string, string, string) KeyOf(CheckRow row) => (row.Stage, row.Setting, row.RedOn, row.BlackOn);
}
