using System.Collections.Immutable;

namespace Hotside.Diagnoses;

/// <summary>Faults that no reading within reach tells apart are reported as one.</summary>
internal sealed class FaultClasses(Meter meter, TestList tests)
{
    // From here on two readings differ (in standard deviations).
    private const double Apart = 3;

    private readonly Dictionary<(int, int), bool> known = [];

    /// <summary>Some faults in their order, each with those that stand for the same; a fault stands with the first it cannot be told from.</summary>
    public ImmutableArray<ImmutableArray<int>> Of(IEnumerable<int> faults)
    {
        List<List<int>> classes = [];
        foreach (int fault in faults)
            if (classes.Find(c => IsOne(c[0], fault)) is { } same) same.Add(fault);
            else classes.Add([fault]);
        return [.. classes.Select(c => c.ToImmutableArray())];
    }

    /// <summary>Whether no reading tells two faults apart, whatever their size.</summary>
    public bool IsOne(int a, int b)
    {
        if (a == b) return true;
        if (a > b) (a, b) = (b, a);
        return known.TryGetValue((a, b), out bool one) ? one : known[(a, b)] = Compared(a, b);
    }

    private bool Compared(int a, int b)
    {
        var dictionary = meter.Dictionary;
        if (dictionary.Faults[a].Mode.Change == FaultChange.Unknown || dictionary.Faults[b].Mode.Change == FaultChange.Unknown) return false;
        int[] ofA = CellsOf(a), ofB = CellsOf(b);
        // Every size of the one has its like among the other's.
        return ofA.All(x => ofB.Any(y => AreAlike(x, y))) && ofB.All(y => ofA.Any(x => AreAlike(x, y)));
    }

    private int[] CellsOf(int fault) => [.. Enumerable.Range(0, meter.Dictionary.Cells.Length).Where(c => meter.Dictionary.Cells[c].Fault == fault)];

    private bool AreAlike(int x, int y)
    {
        Span<double> first = stackalloc double[Looks.States], second = stackalloc double[Looks.States];
        foreach (var (test, _) in tests.All)
            switch (test)
            {
                case LookTest look:
                    Looks.Of(meter.Dictionary, look.Setting, x, meter.Watched[look.Watched], first);
                    Looks.Of(meter.Dictionary, look.Setting, y, meter.Watched[look.Watched], second);
                    double overlap = 0;
                    for (int i = 0; i < first.Length; i++) overlap += Math.Min(first[i], second[i]);
                    if (overlap < 0.1) return false;
                    break;
                case FuseTest fuse:
                    if (meter.IsBlown(fuse.Fuse, x) != meter.IsBlown(fuse.Fuse, y)) return false;
                    break;
                default:
                    if (meter.Expect(test, x).From(meter.Expect(test, y)) >= Apart) return false;
                    break;
            }
        return true;
    }
}
