using System.Collections.Immutable;

namespace Hotside.Diagnoses;

/// <summary>How likely each fault is after what was read: the prior times the likelihood of each reading.</summary>
internal sealed class Beliefs
{
    private readonly FaultDictionary dictionary;

    /// <summary>Beliefs of a piece.</summary>
    /// <param name="meter">What readings are expected.</param>
    /// <param name="observations">What was read.</param>
    /// <param name="mended">Faults that were mended: they are struck down, not out.</param>
    public Beliefs(Meter meter, ImmutableArray<Observation> observations, IReadOnlySet<int>? mended = null)
    {
        dictionary = meter.Dictionary;
        double[] logs = new double[dictionary.Cells.Length];
        for (int c = 0; c < logs.Length; c++)
        {
            var (number, _) = dictionary.Cells[c];
            var fault = dictionary.Faults[number];
            logs[c] = Math.Log(fault.Weight * (mended?.Contains(number) == true ? MendedShare : 1) / fault.Mode.Sizes.Length);
            foreach (var observation in observations) logs[c] += Math.Log(Math.Max(meter.Likelihood(observation, c), 1e-12));
        }
        double most = logs.Max();
        OfCell = [.. logs.Select(l => Math.Exp(l - most))];
        double sum = OfCell.Sum();
        for (int c = 0; c < OfCell.Length; c++) OfCell[c] /= sum;
        OfFault = new double[dictionary.Faults.Length];
        for (int c = 0; c < OfCell.Length; c++) OfFault[dictionary.Cells[c].Fault] += OfCell[c];
        Order = [.. Enumerable.Range(0, OfFault.Length).OrderByDescending(f => OfFault[f]).ThenBy(f => f)];
    }

    // A mended fault may still be one, or come back (own choice).
    private const double MendedShare = 0.02;

    /// <summary>The share of each cell; they sum to 1.</summary>
    public double[] OfCell { get; }

    /// <summary>The share of each fault.</summary>
    public double[] OfFault { get; }

    /// <summary>The faults, likeliest first.</summary>
    public ImmutableArray<int> Order { get; }

    /// <summary>The likeliest cells that together have a share, at most so many.</summary>
    public int[] Leading(double share, int atMost)
    {
        int[] order = [.. Enumerable.Range(0, OfCell.Length).OrderByDescending(c => OfCell[c]).ThenBy(c => c)];
        double sum = 0;
        int count = 0;
        while (count < order.Length && count < atMost && sum < share) sum += OfCell[order[count++]];
        return order[..count];
    }
}
