using System.Collections.Immutable;
using Hotside.Diagnoses;

namespace Hotside.CheckSheets;

/// <summary>
/// Which readings show all faults of a piece for the least trouble: greedy cover of the dictionary, then what later rows made idle is dropped. Faults that do harm under power
/// are shown with the battery out, as far as ohms can.
/// </summary>
internal sealed class RowSearch
{
    // A row shows a fault whose reading lies so many standard deviations off and outside of the row's band; of a look, where it is hardly ever seen so.
    private const double Apart = 3, HardlySeen = 0.1;

    // Lesser resistances are a matter of size, not of a check (own choice); of a short sheet, so much is enough.
    private const double LeastOhms = 1.2, Enough = 0.95;

    // A row that adds less than this part of all faults is left out of a short sheet.
    private const double LeastGain = 0.004;

    private readonly DiagnosisBench bench;
    private readonly Bands bands;
    private readonly ImmutableArray<(Test Test, double Effort)> tests;
    private readonly double[] weights;
    private readonly Dictionary<Test, int[]> shown = [];
    private readonly int[] counted;
    private HashSet<int>? seen;

    /// <summary>A search on a bench.</summary>
    public RowSearch(DiagnosisBench bench)
    {
        this.bench = bench;
        bands = new(bench);
        tests = [.. bench.Tests.All.Where(t => t.Test is not FuseTest)];
        var dictionary = bench.Dictionary;
        weights = [.. dictionary.Cells.Select(c => IsCounted(dictionary.Faults[c.Fault], c.Size) ? dictionary.Faults[c.Fault].Weight / dictionary.Faults[c.Fault].Mode.Sizes.Length : 0)];
        counted = [.. Enumerable.Range(0, weights.Length).Where(c => weights[c] > 0)];
    }

    /// <summary>The faults, as cells, that a row must show.</summary>
    public IReadOnlyList<int> Counted => counted;

    /// <summary>The readings, those that must be there first.</summary>
    /// <param name="extent">How much is covered.</param>
    /// <param name="mandatory">What must be there.</param>
    public ImmutableArray<Test> Find(SheetExtent extent, ImmutableArray<Test> mandatory)
    {
        List<Test> rows = [.. mandatory];
        bool[] covered = new bool[weights.Length];
        foreach (int cell in mandatory.SelectMany(ShownBy)) covered[cell] = true;
        double all = weights.Sum();
        double enough = extent == SheetExtent.Short ? Enough : 1, least = extent == SheetExtent.Short ? LeastGain * all : 0;
        // Harm first, the battery out; then all that is left, under power.
        Cover(rows, covered, t => t is OhmsTest, c => IsHarm(bench.Dictionary.Faults[bench.Dictionary.Cells[c].Fault]), enough, least);
        Cover(rows, covered, t => t is not OhmsTest, _ => true, enough, least);
        Cover(rows, covered, _ => true, _ => true, enough, least);
        DropIdle(rows, mandatory.Length);
        return [.. rows];
    }

    // A row is idle when the others show all that it shows.
    private void DropIdle(List<Test> rows, int from)
    {
        int[] times = new int[weights.Length];
        foreach (int cell in rows.SelectMany(ShownBy)) times[cell]++;
        for (int i = from; i < rows.Count; i++)
        {
            if (ShownBy(rows[i]).Any(c => times[c] == 1)) continue;
            foreach (int cell in ShownBy(rows[i])) times[cell]--;
            rows.RemoveAt(i--);
        }
    }

    /// <summary>The cells that a reading shows.</summary>
    public int[] ShownBy(Test test)
    {
        if (shown.TryGetValue(test, out int[]? cells)) return cells;
        var shows = Shows(test);
        return shown[test] = [.. counted.Where(c => shows(c))];
    }

    /// <summary>Whether a fault shows without a meter, in any setting.</summary>
    public bool IsSeen(int cell) => (seen ??= [.. tests.Where(t => t.Test is LookTest).SelectMany(t => ShownBy(t.Test))]).Contains(cell);

    private void Cover(List<Test> rows, bool[] covered, Predicate<Test> isAllowed, Predicate<int> isMeant, double enough, double least)
    {
        bool[] meant = [.. Enumerable.Range(0, weights.Length).Select(c => isMeant(c))], possible = new bool[weights.Length];
        var allowed = tests.Where(t => isAllowed(t.Test)).Select(t => (t.Test, t.Effort, Cells: ShownBy(t.Test))).Where(t => t.Cells.Length > 0).ToArray();
        foreach (int cell in allowed.SelectMany(t => t.Cells)) possible[cell] = meant[cell];
        double goal = enough * counted.Where(c => possible[c]).Sum(c => weights[c]);
        HashSet<int> settings = [.. rows.Select(r => r.Setting)];
        double reached = counted.Where(c => covered[c] && possible[c]).Sum(c => weights[c]);
        while (reached < goal)
        {
            (Test Test, double Effort, int[] Cells)? best = null;
            double most = 0, gained = 0;
            foreach (var one in allowed)
            {
                double gain = 0;
                foreach (int cell in one.Cells)
                    if (possible[cell] && !covered[cell]) gain += weights[cell];
                // A setting that is there already needs no switch to be moved.
                double trouble = one.Effort + (settings.Contains(one.Test.Setting) ? 0 : bench.Dictionary.Bench.Effort.Setting);
                if (gain / trouble > most) (best, most, gained) = (one, gain / trouble, gain);
            }
            if (best is not { } row || gained < least) return;
            rows.Add(row.Test);
            settings.Add(row.Test.Setting);
            reached += gained;
            foreach (int cell in row.Cells) covered[cell] = true;
        }
    }

    private static bool IsCounted(Fault fault, FaultSize size) => fault.Mode.On != "nothing" && (fault.Mode.Change != FaultChange.Series || size.Middle >= LeastOhms);

    private static bool IsHarm(Fault fault) => fault.Mode.Change is FaultChange.Bridge or FaultChange.Crossed or FaultChange.Bypass;

    // What is the same for all faults is worked out once for a reading; what a fault leaves as it is shows nothing.
    private Predicate<int> Shows(Test test)
    {
        switch (test)
        {
            case LookTest look:
                var watched = bench.Meter.Watched[look.Watched];
                int sound = (int)Looks.Sound(bench.Dictionary, look.Setting, watched);
                bool SeemsWrong(int cell)
                {
                    Span<double> states = stackalloc double[Looks.States];
                    Looks.Of(bench.Dictionary, look.Setting, cell, watched, states);
                    return states[sound] < HardlySeen;
                }
                bool isSoundShown = SeemsWrong(bands.SoundCell);
                return cell => IsUnmoved(look.Setting, cell) && !Looks.IsInItself(bench.Dictionary, cell, watched) ? isSoundShown : SeemsWrong(cell);
            case VoltsTest volts:
                var right = bench.Meter.Sound(volts);
                Lazy<(double Least, double Most)> band = new(() => bands.Of(test));
                return cell => !IsUnmoved(volts.Setting, cell)
                    && bench.Meter.Expect(test, cell) is var expected && expected.From(right) >= Apart && !Bands.Holds(band.Value, expected.Mean);
            case OhmsTest ohms:
                var whole = bench.Meter.Expect(test, bands.SoundCell);
                Lazy<(double Least, double Most)> within = new(() => bands.Of(test));
                return cell => !bench.Meter.Ohms.IsAsSound(ohms.Setting, cell, ohms.Pulled)
                    && bench.Meter.Expect(test, cell) is var read && read.From(whole) >= Apart && !Bands.Holds(within.Value, Math.Pow(10, read.Mean));
            default:
                throw new ArgumentOutOfRangeException(nameof(test), test.GetType().Name, "No row is of this kind.");
        }
    }

    private bool IsUnmoved(int setting, int cell) => ReferenceEquals(bench.Dictionary.At(setting, cell), bench.Dictionary.Healthy(setting));
}
