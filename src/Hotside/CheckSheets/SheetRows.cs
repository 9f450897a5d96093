using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Diagnoses;
using Hotside.Wording;

namespace Hotside.CheckSheets;

/// <summary>The rows of one piece, in the order in which they are measured, with what they show.</summary>
internal sealed class SheetRows
{
    private readonly DiagnosisBench bench;
    private readonly RowSearch search;
    private readonly Bands bands;
    private readonly Deviations deviations;
    private readonly DiagnosisRules rules;
    private readonly Vocabulary words;

    /// <summary>The rows of a piece.</summary>
    public SheetRows(DiagnosisBench bench, SheetExtent extent, Alteration? alteration, Vocabulary words)
    {
        (this.bench, this.words) = (bench, words);
        search = new(bench);
        bands = new(bench);
        deviations = new(bench, search);
        rules = new(bench, bench.Meter, new Beliefs(bench.Meter, []), [], false, words);
        MandatoryRows mandatory = new(bench);
        if (bench.Dictionary.Faults.All(f => f.Mode.On == "nothing"))
        {
            Tests = mandatory.OfWhole;
            Rows = [.. Tests.Select(Row).Select(r => r with { IfNot = "a short, or a load before the fuses: part the cables at their studs, one by one" })];
            return;
        }
        var tests = search.Find(extent, mandatory.All);
        if (extent == SheetExtent.Full) tests = [.. tests, .. mandatory.Changed(alteration, tests)];
        Tests = [.. InOrder(tests.Distinct())];
        Rows = [.. Tests.Where(t => StageOf(t) < CheckStage.PowerUp).Select(Row), .. new PowerUpRows(bench, words).Rows(), .. Tests.Where(t => StageOf(t) > CheckStage.PowerUp).Select(Row), .. Hot()];
    }

    /// <summary>The readings of the rows, but for those of the first power.</summary>
    public ImmutableArray<Test> Tests { get; }

    /// <summary>The rows, not yet numbered.</summary>
    public ImmutableArray<CheckRow> Rows { get; }

    /// <summary>The faults that are counted, each with what becomes of it here.</summary>
    public IEnumerable<CountedFault> Faults()
    {
        double Weight(int cell) => bench.Dictionary.Faults[bench.Dictionary.Cells[cell].Fault].Weight / bench.Dictionary.Faults[bench.Dictionary.Cells[cell].Fault].Mode.Sizes.Length;
        var shownBy = Tests.Select(t => (Test: t, Cells: search.ShownBy(t).ToHashSet())).ToArray();
        HashSet<int> shown = [.. shownBy.SelectMany(t => t.Cells)];
        Dictionary<Test, CheckRow> rows = [];
        foreach (var cells in search.Counted.GroupBy(c => bench.Dictionary.Cells[c].Fault))
        {
            bool isSeen = cells.Any(search.IsSeen);
            var found = isSeen ? null : Array.Find(shownBy, t => t.Test is not LookTest && cells.Any(t.Cells.Contains)).Test;
            if (found is not null && !rows.ContainsKey(found)) rows[found] = Row(found);
            yield return new(bench.Dictionary.Faults[cells.Key].Text, cells.Sum(Weight), cells.Where(shown.Contains).Sum(Weight)) { IsSeen = isSeen, FoundBy = found is null ? null : rows[found] };
        }
    }

    private CheckRow Row(Test test)
    {
        string red = bench.Text.Red(test);
        if (test is OhmsTest { Pulled: not -1 } o) red += ", " + bench.Text.Pulled(o);
        // That the battery is out stands above all rows in ohms.
        IEnumerable<string> cautions = test is OhmsTest ? [rules.FusesIn(test)] : rules.CautionsOf(test);
        return new(0, StageOf(test), bench.Dictionary.Settings[test.Setting].Name, red, bench.Text.Black(test), bands.Expected(test), bands.Text(test), Meaning(test))
        {
            OfBattery = test is VoltsTest v && !bench.Text.Floats(v, bands.SoundCell) && bench.Meter.Battery.Of(v) is not null ? Percent(v) : "",
            Stands = bench.Dictionary.Settings[test.Setting].Stands,
            IsLook = test is LookTest or FuseTest,
            Caution = string.Join(" ", cautions),
        };
    }

    // What must be measured may show nothing that is not shown elsewhere.
    private string Meaning(Test test) => deviations.Of(test) is { Length: > 0 } means ? means : test is not OhmsTest ? ""
        : bands.SoundOhms(test) >= ColdOhms.Open / 2 ? "less: a short on this way, or a load that is on" : $"more: a joint or a wire on its way to {words.Ground}";

    // The three largest drops once more when all is hot.
    private IEnumerable<CheckRow> Hot() => Tests.OfType<VoltsTest>().Where(t => t.Black >= 0 && StageOf(t) == CheckStage.Live).OrderByDescending(t => Math.Abs(bench.Meter.Sound(t).Mean)).Take(3)
        .Select(t => Row(t) with { Stage = CheckStage.Hot, IfNot = "more than cold: a joint warms; feel it, and mend what is too hot to hold" });

    // A drop is told in volts; a hundredth of the battery's is none.
    private string Percent(VoltsTest test) => bench.Meter.Battery.ShareOf(test) is var share && share >= 0.01 && test.Black < 0 ? Numbers.Plain(100 * share, 0) + " %" : "";

    private CheckStage StageOf(Test test)
    {
        var setting = bench.Dictionary.Settings[test.Setting];
        return test switch
        {
            OhmsTest o when bench.Dictionary.Bench.NetOf[o.Node] < 0 => CheckStage.DeadGrounds,
            OhmsTest { Setting: 0 } => CheckStage.DeadShorts,
            OhmsTest => CheckStage.DeadLoads,
            _ when setting.Cranks => CheckStage.Cranking,
            _ when setting.Runs => CheckStage.Charging,
            _ => test.Setting == 0 ? CheckStage.AtRest : CheckStage.Live,
        };
    }

    // Stage by stage; settings by fewest moves from one to the next; within a setting by how hard the place is to reach.
    private IEnumerable<Test> InOrder(IEnumerable<Test> tests)
    {
        foreach (var stage in tests.GroupBy(StageOf).OrderBy(g => g.Key))
        {
            List<int> left = [.. stage.Select(t => t.Setting).Distinct().Order()];
            int now = 0;
            while (left.Count > 0)
            {
                int next = left.MinBy(s => Moves(now, s));
                left.Remove(next);
                foreach (var test in stage.Where(t => t.Setting == next).OrderBy(t => t is LookTest ? 0 : 1).ThenBy(Reach).ThenBy(t => bench.Text.Red(t), StringComparer.Ordinal)) yield return test;
                now = next;
            }
        }
    }

    private int Moves(int from, int to)
    {
        var (a, b) = (bench.Dictionary.Settings[from].Positions, bench.Dictionary.Settings[to].Positions);
        return a.Except(b).Concat(b.Except(a)).Select(p => (p.Part, p.Actuator)).Distinct().Count();
    }

    private double Reach(Test test) => test switch
    {
        VoltsTest v => Math.Max(bench.Tests.PointOf(v.Red)?.Reach ?? 0, bench.Tests.PointOf(v.Black)?.Reach ?? 0),
        OhmsTest o => bench.Tests.PointOf(o.Node)?.Reach ?? 0,
        _ => 0,
    };
}
