using Hotside.Circuits;
using System.Collections.Immutable;
using Hotside.Wording;

namespace Hotside.Diagnoses;

/// <summary>Rules of the trade that stand above the reckoning: smoke, blown fuses, when no single fault explains what was read, what to mind with a reading.</summary>
internal sealed class DiagnosisRules(DiagnosisBench bench, Meter meter, Beliefs beliefs, ImmutableArray<Observation> observations, bool isSmoking, Vocabulary words)
{
    // More than this from the battery without a starter is a short that nothing limits (own choice); from this share on it counts.
    private const double Unlike = 0.04, ShortAmperes = 150, LeastShare = 0.5, MostMissed = 4;

    /// <summary>Whether nothing may be measured under power.</summary>
    public bool IsUnpowered { get; } = isSmoking || beliefs.OfCell.Where((_, c) => bench.Dictionary.BatteryAmperes(c) > ShortAmperes).Sum() > LeastShare;

    /// <summary>The fuses that were found blown.</summary>
    public ImmutableArray<int> Blown { get; } = [.. observations.Where(o => o is { Test: FuseTest, Value: > 0.5 }).Select(o => ((FuseTest)o.Test).Fuse).Distinct()];

    /// <summary>Whether a reading may be asked for.</summary>
    public bool Allows(Test test) => test is FuseTest or OhmsTest || (!IsUnpowered && Blown.IsEmpty);

    /// <summary>What must be said.</summary>
    public IEnumerable<string> Notes()
    {
        if (IsUnpowered) yield return $"A short that nothing limits is likely. Take the battery's {words.Ground}ed cable off now; measure ohms only, with fuses pulled, until it is found.";
        foreach (int fuse in Blown)
        {
            string id = bench.Dictionary.FuseName(fuse);
            yield return $"{id} is blown, and that is not the fault: a fuse blows for a reason. Measure ohms at its load side before a new one of the same rating goes in.";
        }
        if (observations.IsEmpty) yield break;
        if (meter.Read is { } read && meter.Battery.ScaleOf(read, bench.Dictionary.SoundCell) is var scale && Math.Abs(scale - 1) > Unlike)
            yield return $"The battery has {Numbers.Plain(100 * scale, 0)} % of the volts that are computed with. Volts are compared with that; {(scale < 1 ? "charge it, and read it again" : "see that nothing charges it")}.";
        double missed = Enumerable.Range(0, beliefs.OfCell.Length).Where(c => beliefs.OfCell[c] > 1e-6 && bench.Dictionary.Faults[bench.Dictionary.Cells[c].Fault].Mode.Change != FaultChange.Unknown)
            .Select(c => observations.Where(o => o != meter.Read).Select(o => meter.Missed(o, c)).DefaultIfEmpty(0).Max()).DefaultIfEmpty(MostMissed + 1).Min();
        bool isElse = bench.Dictionary.Faults[beliefs.Order[0]].Mode.Change == FaultChange.Unknown;
        if (missed > MostMissed || isElse)
            yield return "No single fault explains all that was read. Repeat the reading that surprises most; else there are two faults: mend what leads, then look again.";
    }

    /// <summary>Which fuses are in while ohms of a piece are measured; empty where it makes no difference.</summary>
    public string FusesIn(Test test) => test is OhmsTest && bench.Dictionary.Bench.IsPiece ? $"Fuses in: {string.Join(", ", bench.Dictionary.PullableNames.DefaultIfEmpty("none"))}; all others out." : "";

    /// <summary>What to mind before a reading.</summary>
    public IEnumerable<string> CautionsOf(Test test)
    {
        var setting = bench.Dictionary.Settings[test.Setting];
        if (FusesIn(test) is { Length: > 0 } fuses) yield return fuses;
        if (test is OhmsTest) yield return $"Battery out before an ohmmeter touches anything: {Cautions.GroundedFirst(bench.Study.Circuit, words)}. Electronics unplugged, leads zeroed.";
        if (setting.Cranks && test is (VoltsTest or LookTest)) yield return "Engine may crank: neutral, brake on, ignition coil fed by nothing, hands and clothes off belts and fan.";
        if (setting.Runs && test is (VoltsTest or LookTest)) yield return "Engine runs: air out the exhaust, keep off belts, fan and the ignition's high voltage.";
        if (setting.NeedsTwo && test is VoltsTest) yield return "A second person holds the control.";
        foreach (string part in Touched(test))
            if (part.Contains("fuel", StringComparison.OrdinalIgnoreCase) || part.Contains("tank", StringComparison.OrdinalIgnoreCase))
            {
                yield return "Fuel is near: air it out, no sparks; measure with the connection made before power comes on.";
                break;
            }
    }

    private IEnumerable<string> Touched(Test test)
    {
        var nodes = test switch { VoltsTest v => new[] { v.Red, v.Black }, OhmsTest o => [o.Node], _ => [] };
        foreach (int node in nodes)
            if (node >= 0 && bench.Tests.PointOf(node)?.End.Part is { } id && bench.Study.Circuit.FindPart(id) is { } part)
                yield return $"{part.Title} {part.Kind.Id} {part.Place}";
    }
}
