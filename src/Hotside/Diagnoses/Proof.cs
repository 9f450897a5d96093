using Hotside.Wording;

namespace Hotside.Diagnoses;

/// <summary>The reading that proves a repair: the drop across the piece where it carries most, else the volts of a sound circuit.</summary>
internal sealed class Proof(DiagnosisBench bench)
{
    private const double LeastAmperes = 0.05;

    /// <summary>A sentence, with a blank before it; empty where there is nothing to measure.</summary>
    public string Of(Fault fault)
    {
        if (fault.FirstEdge < 0 || fault.FirstEdge >= bench.Dictionary.Bench.Model.Edges.Length || fault.Mode.Change is not (FaultChange.Out or FaultChange.Series)) return ".";
        int setting = Enumerable.Range(0, bench.Dictionary.Settings.Count).MaxBy(s => Math.Abs(bench.Dictionary.HealthyAmperes(s, fault.FirstEdge)));
        if (Math.Abs(bench.Dictionary.HealthyAmperes(setting, fault.FirstEdge)) < LeastAmperes) return ".";
        var (a, b) = bench.Dictionary.Bench.Model.Network.Edges[fault.FirstEdge];
        VoltsTest drop = a < 0 ? new(setting, b, -1) : new(setting, a, b);
        if (drop.Red < 0) return ".";
        double volts = bench.Meter.Sound(drop).Mean;
        return $". Proof: {bench.Text.Red(drop)} to {bench.Text.Black(drop)} then reads {QuantityWords.MeterVolts(volts)}, {bench.Dictionary.Settings[setting].Name}.";
    }
}
