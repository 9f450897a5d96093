namespace Hotside.Diagnoses;

/// <summary>What a circuit with a fault shows in a setting: the potentials of the circuit as stated and of some that are a little off.</summary>
/// <param name="Volts">The potentials, sample by sample.</param>
/// <param name="Floats">Which nodes float.</param>
/// <param name="Relays">The position of each variable.</param>
internal sealed record CellPoint(float[][] Volts, bool[] Floats, int[] Relays)
{
    /// <summary>How often a circuit is computed: as stated, and four times with parts drawn within their tolerances.</summary>
    public const int Samples = 5;

    /// <summary>The potentials of the same circuits without the fault, sample by sample: how it was on this vehicle.</summary>
    public float[][] Sound { get => field ?? Volts; init; }

    // The variance of so few samples is widened a little, for they may lie close by chance.
    private const double Widened = 1.7;

    /// <summary>Volts between two nodes; −1 stands for the return.</summary>
    /// <param name="a">Where the red lead is.</param>
    /// <param name="b">Where the black one is.</param>
    /// <param name="floating">How far a reading on a floating node may be from 0.</param>
    public Expectation Between(int a, int b, double floating)
    {
        if ((a >= 0 && Floats[a]) || (b >= 0 && Floats[b])) return new(0, floating);
        double sum = 0, squares = 0;
        foreach (float[] sample in Volts)
        {
            double volts = (a < 0 ? 0 : sample[a]) - (b < 0 ? 0 : sample[b]);
            sum += volts;
            squares += volts * volts;
        }
        double mean = sum / Volts.Length;
        return new(mean, Math.Sqrt(Widened * Math.Max(0, (squares - (sum * mean)) / (Volts.Length - 1))));
    }
}

/// <summary>What a reading is expected to be.</summary>
/// <param name="Mean">The mean.</param>
/// <param name="Sigma">The standard deviation, 0 or more.</param>
internal readonly record struct Expectation(double Mean, double Sigma)
{
    /// <summary>The same with a meter's own error.</summary>
    public Expectation With(double error) => new(Mean, Math.Sqrt((Sigma * Sigma) + (error * error)));

    /// <summary>By how many standard deviations two differ.</summary>
    public double From(Expectation other) => Math.Abs(Mean - other.Mean) / Math.Sqrt((Sigma * Sigma) + (other.Sigma * other.Sigma) + 1e-18);
}
