using Hotside.Circuits;

namespace Hotside.Diagnoses;

/// <summary>Which volts of a piece go with those of its battery, and what the battery was read to have.</summary>
internal sealed class BatteryShare
{
    // Farther off it is no battery that is a little low, but a fault or a wrong reading (own choices).
    private const double Least = 0.75, Most = 1.2;

    private readonly FaultDictionary dictionary;
    private readonly int feed, back;
    private readonly bool isAlone;

    /// <summary>Of a piece.</summary>
    public BatteryShare(FaultDictionary dictionary)
    {
        this.dictionary = dictionary;
        var sources = dictionary.Bench.Circuit.Sources.Where(s => s.Part.IsStandingSource).ToArray();
        int NodeOf(Func<SourcePoles, End> pole) => sources.Length == 0 ? -1 : dictionary.Bench.Model.Nodes.NodeOf(pole(sources[0]));
        (feed, back, isAlone, HasBattery) = (NodeOf(s => s.Feed), NodeOf(s => s.Return), sources.Length == 1, sources.Length > 0);
    }

    /// <summary>Whether there is a battery.</summary>
    public bool HasBattery { get; }

    /// <summary>What a sound circuit shows, the battery's own tolerance left out, where the reading goes with the battery's volts; <see langword="null"/> where something holds it.</summary>
    public Expectation? Of(VoltsTest test)
    {
        if (!HasBattery) return null;
        var point = dictionary.Healthy(test.Setting);
        double[] ratios = [.. point.Volts.Select(v => Across(v, test.Red, test.Black) / Across(v, feed, back))];
        double nominal = Across(point.Volts[0], feed, back), mean = ratios.Average(), variance = ratios.Sum(r => (r - mean) * (r - mean)) / (ratios.Length - 1);
        var absolute = point.Between(test.Red, test.Black, 0);
        Expectation scaled = new(mean * nominal, Math.Abs(nominal) * Math.Sqrt(variance));
        return double.IsFinite(scaled.Mean) && scaled.Sigma <= absolute.Sigma ? scaled : null;
    }

    /// <summary>The volts of a sound circuit as a part of what the battery's posts have in the setting; 0 where there is no battery.</summary>
    public double ShareOf(VoltsTest test) =>
        !HasBattery ? 0 : Math.Abs(Across(dictionary.Healthy(test.Setting).Volts[0], test.Red, test.Black) / Across(dictionary.Healthy(test.Setting).Volts[0], feed, back));

    /// <summary>The last reading of the battery's own posts, no starter turning and no engine running; <see langword="null"/> for none, or one that is far off.</summary>
    public Observation? ReadIn(IEnumerable<Observation> observations) => observations.LastOrDefault(o => o.Test is VoltsTest test && IsAtPosts(test) && Scale(o, dictionary.SoundCell) is >= Least and <= Most);

    /// <summary>By what volts are more than they would be with a fault and a battery as stated.</summary>
    /// <param name="read">The battery's reading.</param>
    /// <param name="cell">The fault.</param>
    public double ScaleOf(Observation read, int cell) => Scale(read, cell) is var scale && double.IsFinite(scale) ? Math.Clamp(scale, Least, Most) : 1;

    private double Scale(Observation read, int cell) => read.Test is VoltsTest test ? read.Value / dictionary.At(test.Setting, cell).Between(test.Red, test.Black, 0).Mean : double.NaN;

    private bool IsAtPosts(VoltsTest test) =>
        isAlone && test.Red == feed && (test.Black == back || test.Black < 0) && dictionary.Settings[test.Setting] is { Cranks: false, Runs: false };

    private static double Across(float[] volts, int a, int b) => (a < 0 ? 0 : volts[a]) - (b < 0 ? 0 : volts[b]);
}
