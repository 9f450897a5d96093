using System.Collections.Immutable;

namespace Hotside.Diagnoses;

/// <summary>The reading that tells most for its trouble.</summary>
/// <param name="Test">The reading.</param>
/// <param name="Bits">What it tells, in bits.</param>
/// <param name="Groups">Into how many groups it parts how many suspects: the number of suspects in each, the likeliest group first.</param>
/// <param name="Suspects">How many suspects there are.</param>
internal sealed record NextTest(Test Test, double Bits, ImmutableArray<int> Groups, int Suspects)
{
    // What is looked at: the likeliest cells that make up nearly all, at most so many; a gap in expected readings of so many standard deviations parts two groups.
    private const double Nearly = 0.995, Gap = 3;
    private const int MostCells = 150;

    /// <summary>A reading that tells less is not worth its trouble.</summary>
    public const double LeastBits = 0.03;

    /// <summary>The best reading; <see langword="null"/> when none is worth it.</summary>
    /// <param name="beliefs">How likely each fault is.</param>
    /// <param name="meter">What readings are expected.</param>
    /// <param name="tests">The readings there are.</param>
    /// <param name="isAllowed">Which may be taken.</param>
    /// <param name="last">The setting in which switches stand now; −1 when nobody knows.</param>
    public static NextTest? Of(Beliefs beliefs, Meter meter, TestList tests, Predicate<Test> isAllowed, int last)
    {
        int[] cells = beliefs.Leading(Nearly, MostCells);
        var dictionary = meter.Dictionary;
        cells = [.. cells.Where(c => dictionary.Faults[dictionary.Cells[c].Fault].Mode.Change != FaultChange.Unknown)];
        if (cells.Length < 2) return null;
        Search search = new(beliefs, meter, cells);
        NextTest? best = null;
        double most = 0;
        foreach (var (test, effort) in tests.All)
        {
            if (!isAllowed(test)) continue;
            double bits = search.Bits(test), rate = bits / (effort + (test.Setting == last || last < 0 ? 0 : dictionary.Bench.Effort.Setting));
            if (bits < LeastBits || rate <= most) continue;
            most = rate;
            best = new(test, bits, search.Groups(), search.Suspects);
        }
        return best;
    }

    private sealed class Search
    {
        private readonly Meter meter;
        private readonly int[] cells, suspectOf, groups;
        private readonly double[] weights;
        private readonly Expectation[] expected;
        private readonly double[] means;
        private readonly int[] order;
        private int groupCount;

        public Search(Beliefs beliefs, Meter meter, int[] cells)
        {
            (this.meter, this.cells) = (meter, cells);
            double sum = cells.Sum(c => beliefs.OfCell[c]);
            weights = [.. cells.Select(c => beliefs.OfCell[c] / sum)];
            int[] faults = [.. cells.Select(c => meter.Dictionary.Cells[c].Fault).Distinct()];
            suspectOf = [.. cells.Select(c => Array.IndexOf(faults, meter.Dictionary.Cells[c].Fault))];
            Suspects = faults.Length;
            (groups, order, means, expected) = (new int[cells.Length], new int[cells.Length], new double[cells.Length], new Expectation[cells.Length]);
        }

        public int Suspects { get; }

        /// <summary>The mutual information of a reading and the suspects.</summary>
        public double Bits(Test test) => test switch
        {
            LookTest look => OfLook(look),
            FuseTest fuse => OfGroups(i => meter.IsBlown(fuse.Fuse, cells[i]) ? 1 : 0, 2),
            _ => OfReading(test),
        };

        /// <summary>How many suspects the reading asked last puts into each group; one of several sizes counts where most of it lies.</summary>
        public ImmutableArray<int> Groups()
        {
            double[,] shares = new double[Suspects, groupCount];
            for (int i = 0; i < cells.Length; i++) shares[suspectOf[i], groups[i]] += weights[i];
            int[] counts = new int[groupCount];
            for (int s = 0; s < Suspects; s++) counts[Enumerable.Range(0, groupCount).MaxBy(g => shares[s, g])]++;
            return [.. counts.Where(c => c > 0).OrderDescending()];
        }

        private double OfReading(Test test)
        {
            for (int i = 0; i < cells.Length; i++)
            {
                expected[i] = meter.Expect(test, cells[i]);
                (means[i], order[i]) = (expected[i].Mean, i);
            }
            Array.Sort(means, order);
            groupCount = 0;
            for (int k = 0; k < order.Length; k++)
            {
                if (k > 0 && expected[order[k]].From(expected[order[k - 1]]) > Gap) groupCount++;
                groups[order[k]] = groupCount;
            }
            groupCount++;
            return groupCount == 1 ? 0 : Information();
        }

        private double OfLook(LookTest look)
        {
            Span<double> state = stackalloc double[Looks.States];
            double[,] joint = new double[Suspects, Looks.States];
            groupCount = Looks.States;
            for (int i = 0; i < cells.Length; i++)
            {
                Looks.Of(meter.Dictionary, look.Setting, cells[i], meter.Watched[look.Watched], state);
                int likeliest = 0;
                for (int k = 0; k < Looks.States; k++)
                {
                    joint[suspectOf[i], k] += weights[i] * state[k];
                    if (state[k] > state[likeliest]) likeliest = k;
                }
                groups[i] = likeliest;
            }
            return Mutual(joint);
        }

        private double OfGroups(Func<int, int> groupOf, int count)
        {
            groupCount = count;
            for (int i = 0; i < cells.Length; i++) groups[i] = groupOf(i);
            return Information();
        }

        private double Information()
        {
            double[,] joint = new double[Suspects, groupCount];
            for (int i = 0; i < cells.Length; i++) joint[suspectOf[i], groups[i]] += weights[i];
            return Mutual(joint);
        }

        private static double Mutual(double[,] joint)
        {
            int rows = joint.GetLength(0), columns = joint.GetLength(1);
            double[] row = new double[rows], column = new double[columns];
            for (int r = 0; r < rows; r++)
                for (int c = 0; c < columns; c++)
                {
                    row[r] += joint[r, c];
                    column[c] += joint[r, c];
                }
            double bits = 0;
            for (int r = 0; r < rows; r++)
                for (int c = 0; c < columns; c++)
                    if (joint[r, c] > 0) bits += joint[r, c] * Math.Log2(joint[r, c] / (row[r] * column[c]));
            return bits;
        }
    }
}
