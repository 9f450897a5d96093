namespace Hotside.Diagnoses;

/// <summary>What readings are expected with each fault, the meter's own error included.</summary>
internal sealed class Meter
{
    // Of the reading, and of the last digits, in volts: to the return, and across a piece, where the range is finer (a common digital meter, from memory).
    private const double Share = 0.008, Digits = 0.010, FineDigits = 0.003;

    // On a floating point a meter of 10 Mohm shows 0 or a ghost (common practice, no source).
    private const double Ghost = 0.04;

    // A fuse that is looked at is judged wrongly so often; a meter's reading is off altogether (wrong point, bad contact) so often (own choices).
    private const double FuseMisjudged = 0.02, Stray = 0.03;

    private const double OhmDecades = 7;

    private readonly double fuseRange;
    private readonly double[] scales = [];
    private readonly Dictionary<VoltsTest, bool> going = [];

    /// <summary>A meter for a piece.</summary>
    public Meter(FaultDictionary dictionary)
    {
        Dictionary = dictionary;
        Ohms = new(dictionary);
        Battery = new(dictionary);
        Lamp = new(dictionary);
        Watched = Diagnoses.Watched.Of(dictionary.Bench.Model);
        fuseRange = 2.6 * dictionary.Bench.Volts;
    }

    private Meter(Meter same, Observation read)
    {
        (Dictionary, Ohms, Battery, Lamp, Watched, fuseRange, Read) = (same.Dictionary, same.Ohms, same.Battery, same.Lamp, same.Watched, same.fuseRange, read);
        scales = new double[Dictionary.Cells.Length];
    }

    public FaultDictionary Dictionary { get; }

    public BatteryShare Battery { get; }

    /// <summary>What the battery was read to have, with which all volts go; <see langword="null"/> where that is not known.</summary>
    public Observation? Read { get; }

    /// <summary>The same meter, volts as they are with the battery as it was read, if it was.</summary>
    public Meter With(IEnumerable<Observation> observations) => Battery.ReadIn(observations) is { } read ? new(this, read) : this;

    public ColdOhms Ohms { get; }

    public TestLamp Lamp { get; }

    public System.Collections.Immutable.ImmutableArray<Watched> Watched { get; }

    /// <summary>What a reading of volts or ohms (as a logarithm) is expected to be.</summary>
    public Expectation Expect(Test test, int cell) => test switch
    {
        VoltsTest v when Read is not null && v != Read.Test && GoesWithBattery(v) => Volts(v, Dictionary.At(v.Setting, cell), ScaleOf(cell)),
        VoltsTest v => Volts(v, Dictionary.At(v.Setting, cell)),
        OhmsTest o => Ohms.At(o.Setting, cell, o.Node, o.Pulled),
        _ => throw new ArgumentException("Looks have likelihoods.", nameof(test)),
    };

    /// <summary>What a sound circuit shows.</summary>
    public Expectation Sound(VoltsTest test) => Volts(test, Dictionary.Healthy(test.Setting));

    /// <summary>How likely a reading is with a fault; densities of one reading may be compared with each other.</summary>
    public double Likelihood(Observation observation, int cell)
    {
        bool isKnown = Dictionary.Faults[Dictionary.Cells[cell].Fault].Mode.Change != FaultChange.Unknown;
        switch (observation.Test)
        {
            case LookTest look:
                if (!isKnown) return 1.0 / Looks.States;
                Span<double> likelihoods = stackalloc double[Looks.States];
                Looks.Of(Dictionary, look.Setting, cell, Watched[look.Watched], likelihoods);
                return likelihoods[(int)observation.Value];
            case LampTest lamp:
                return !isKnown ? TestLamp.Unknown : Lamp.Likelihood(lamp, (LookState)(int)observation.Value, cell);
            case FuseTest fuse:
                return !isKnown ? 0.5 : IsBlown(fuse.Fuse, cell) == observation.Value > 0.5 ? 1 - FuseMisjudged : FuseMisjudged;
            default:
                double range = observation.Test is VoltsTest ? fuseRange : OhmDecades, value = observation.Test is OhmsTest ? ColdOhms.Compared(observation.Value) : observation.Value;
                if (!isKnown) return 1 / range;
                var expected = Expect(observation.Test, cell);
                double z = (value - expected.Mean) / expected.Sigma;
                return ((1 - Stray) * Math.Exp(-0.5 * z * z) / (expected.Sigma * Math.Sqrt(2 * Math.PI))) + (Stray / range);
        }
    }

    /// <summary>By how many standard deviations a reading misses what a fault would show; looks count 0 or 5.</summary>
    public double Missed(Observation observation, int cell) => observation.Test switch
    {
        LookTest or FuseTest or LampTest => Likelihood(observation, cell) < 0.05 ? 5 : 0,
        OhmsTest => Math.Abs(ColdOhms.Compared(observation.Value) - Expect(observation.Test, cell).Mean) / Expect(observation.Test, cell).Sigma,
        _ => Math.Abs(observation.Value - Expect(observation.Test, cell).Mean) / Expect(observation.Test, cell).Sigma,
    };

    /// <summary>Whether a fuse is blown with a fault.</summary>
    public bool IsBlown(int fuse, int cell) =>
        Dictionary.BlownBy(cell).Contains(fuse) || Dictionary.Faults[Dictionary.Cells[cell].Fault].IsBlown(Dictionary.Fuses[fuse]);

    private bool GoesWithBattery(VoltsTest test) => going.TryGetValue(test, out bool goes) ? goes : going[test] = Battery.Of(test) is not null;

    private double ScaleOf(int cell) => scales[cell] != 0 ? scales[cell] : scales[cell] = Battery.ScaleOf(Read!, cell);

    private Expectation Volts(VoltsTest test, CellPoint point, double scale = 1)
    {
        var between = point.Between(test.Red, test.Black, Ghost * Dictionary.Bench.Volts);
        between = between with { Mean = scale * between.Mean };
        double digits = test.Black < 0 ? Digits : FineDigits;
        return between.With((Share * Math.Abs(between.Mean)) + digits);
    }
}
