using Hotside.Diagnoses;

namespace Hotside.CheckSheets;

/// <summary>What a row that is not right means: the faults that move it, by where they would put it, likeliest first.</summary>
internal sealed class Deviations(DiagnosisBench bench, RowSearch search)
{
    // More is not read beside a row (own choices).
    private const int MostGroups = 3, MostFaults = 3;

    /// <summary>The meaning, in words; empty where the row shows nothing that another reading within the sheet does not.</summary>
    public string Of(Test test)
    {
        var dictionary = bench.Dictionary;
        var moved = search.ShownBy(test).Select(c => (Cell: c, Fault: dictionary.Cells[c].Fault, Weight: dictionary.Faults[dictionary.Cells[c].Fault].Weight / dictionary.Faults[dictionary.Cells[c].Fault].Mode.Sizes.Length)).ToArray();
        if (moved.Length == 0) return "";
        var groups = Grouped(test, moved.Select(m => m.Cell)).Select(g => (Cells: g, Weight: moved.Where(m => g.AsSpan().Contains(m.Cell)).Sum(m => m.Weight))).OrderByDescending(g => g.Weight).ToArray();
        var told = groups.Take(MostGroups).Select(g => $"{Value(test, g.Cells)}: {Faults(g.Cells, moved)}");
        return string.Join(" · ", told);
    }

    private string Value(Test test, int[] cells)
    {
        string first = bench.Text.Expected(test, cells[0]), last = bench.Text.Expected(test, cells[^1]);
        return first == last || test is LookTest || AreNear(test, cells) ? first : $"{first} to {last}";
    }

    // Nobody reads a difference of a tenth.
    private bool AreNear(Test test, int[] cells)
    {
        double low = bench.Meter.Expect(test, cells[0]).Mean, high = bench.Meter.Expect(test, cells[^1]).Mean;
        return test is OhmsTest ? Math.Abs(high - low) < 0.05 : Math.Abs(high - low) < Math.Max(0.1 * Math.Abs(high), 0.05);
    }

    private string Faults(int[] cells, (int Cell, int Fault, double Weight)[] moved)
    {
        var faults = moved.Where(m => cells.Contains(m.Cell)).GroupBy(m => m.Fault).OrderByDescending(g => g.Sum(m => m.Weight)).ThenBy(g => g.Key).Select(g => bench.Dictionary.Faults[g.Key].Text).ToArray();
        return string.Join("; ", faults.Take(MostFaults)) + (faults.Length > MostFaults ? $"; {Circuits.Numbers.Whole(faults.Length - MostFaults)} more" : "");
    }

    // By gaps in what the readings would be; looks by their state.
    private IEnumerable<int[]> Grouped(Test test, IEnumerable<int> cells)
    {
        if (test is LookTest) return cells.GroupBy(c => bench.Text.Expected(test, c)).Select(g => g.ToArray());
        var sorted = cells.Select(c => (Cell: c, Expected: bench.Meter.Expect(test, c))).OrderBy(c => Math.Round(c.Expected.Mean, 6)).ThenBy(c => c.Cell).ToArray();
        List<List<int>> groups = [];
        for (int i = 0; i < sorted.Length; i++)
        {
            if (i == 0 || sorted[i].Expected.From(sorted[i - 1].Expected) > 3) groups.Add([]);
            groups[^1].Add(sorted[i].Cell);
        }
        return groups.Select(g => g.ToArray());
    }
}
