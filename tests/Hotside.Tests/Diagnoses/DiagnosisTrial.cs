using System.Collections.Immutable;
using Hotside.Diagnoses;
using Hotside.Studies;

namespace Hotside.Tests.Diagnoses;

/// <summary>Looks for faults in simulated vehicles, as a person would who takes the readings that are asked for.</summary>
internal sealed class DiagnosisTrial
{
    private const int MostReadings = 9;

    private readonly Meter meter;
    private readonly TestList tests;
    private readonly FaultClasses classes;

    private DiagnosisTrial(Meter meter)
    {
        this.meter = meter;
        tests = new(meter);
        classes = new(meter, tests);
    }

    public TextWriter? Trace { get; set; }

    public FaultDictionary Dictionary => meter.Dictionary;

    /// <summary>A trial on a whole circuit, or on the piece of some loads.</summary>
    public static DiagnosisTrial Of(CircuitStudy study, params string[] loads)
    {
        var loose = LooseJoints.Of(study.Circuit);
        LoadStudy[] asked = [.. loads.Select(study.Load)];
        var piece = loads.Length == 0 ? loose : ConnectedPiece.Of(study, loose, asked);
        Bench bench = new(piece, isPiece: loads.Length > 0);
        return new(new(new FaultDictionary(bench, FaultList.Of(bench, _ => 1), BenchSettings.Of(study, piece, [.. asked]))));
    }

    /// <summary>The faults that can be true.</summary>
    public ImmutableArray<int> Faults => [.. Enumerable.Range(0, Dictionary.Faults.Length).Where(f => Dictionary.Faults[f].Mode.On != "nothing")];

    /// <summary>Looks for a fault; <see langword="null"/> where it shows in no setting.</summary>
    public DiagnosisOutcome? Run(int fault, ulong seed, bool isRough = false)
    {
        SimulatedVehicle vehicle = new(meter, fault, seed, isRough);
        int shown = Enumerable.Range(0, Dictionary.Settings.Count).FirstOrDefault(vehicle.ShowsIn, -1);
        if (shown < 0) return null;
        var read = vehicle.LooksIn(shown);
        HashSet<Test> taken = [.. read.Select(o => o.Test)];
        int readings = 0, looks = 0, found = -1, last = shown, pieces = 0;
        while (true)
        {
            Beliefs beliefs = new(meter, read);
            if (pieces == 0) pieces = Pieces(beliefs);
            var leading = classes.Of(beliefs.Order.Take(16));
            if (found < 0 && leading.Take(3).Any(c => classes.IsOne(c[0], fault) || c.Contains(fault))) found = readings;
            bool isFirst = leading[0].Contains(fault) || classes.IsOne(leading[0][0], fault);
            if (Trace is not null) Trace.WriteLine($"      {string.Join("; ", leading.Take(3).Select(c => $"{beliefs.OfFault[c[0]]:0.000} {Dictionary.Faults[c[0]].Text}"))}");
            bool isSure = leading[0].Sum(f => beliefs.OfFault[f]) > 0.97;
            var next = isSure || readings == MostReadings || looks > 20 ? null : NextTest.Of(beliefs, meter, tests, t => !taken.Contains(t), last);
            if (next is null) return new(pieces, found < 0 ? int.MaxValue : found, readings, looks, isFirst);
            taken.Add(next.Test);
            read = read.Add(vehicle.Read(next.Test));
            last = next.Test.Setting;
            Trace?.WriteLine($"      {next.Test} {Dictionary.Settings[last].Name} -> {read[^1].Value:0.000}; {next.Bits:0.00} bit");
            if (next.Test is LookTest) looks++;
            else readings++;
        }
    }

    // The pieces that are still suspect after the complaint.
    private int Pieces(Beliefs beliefs) =>
        beliefs.Leading(0.995, 400).Select(c => Dictionary.Faults[Dictionary.Cells[c].Fault]).Select(f => (f.FirstEdge, f.Items.FirstOrDefault())).Distinct().Count();
}

/// <summary>How it went.</summary>
/// <param name="Pieces">The pieces suspect after the complaint.</param>
/// <param name="Found">After how many readings of the meter the fault was among the first three.</param>
/// <param name="Readings">The readings taken in all.</param>
/// <param name="Looks">What was looked at besides.</param>
/// <param name="IsFirst">Whether it led at the end.</param>
internal sealed record DiagnosisOutcome(int Pieces, int Found, int Readings, int Looks, bool IsFirst)
{
    public int HalfSplit => (int)Math.Ceiling(Math.Log2(Math.Max(2, Pieces)));
}
