using System.Diagnostics;
using System.Collections.Immutable;
using System.Globalization;
using Hotside.CheckSheets;
using Hotside.Tests.Diagnoses;

namespace Hotside.Benchmarks;

/// <summary>How well single faults are found in simulated vehicles, circuit by circuit: parts off what is stated, sizes drawn afresh, a meter with its error.</summary>
internal static class DiagnoseBenchmark
{
    private const double WithinHalfSplit = 0.97, WithinTwo = 0.90, Rough = 0.90;

    /// <summary>Arguments: <c>before</c>, <c>after</c> or both; the names of gallery jobs; <c>some=N</c> for N faults of each.</summary>
    public static int Run(string[] arguments, TextWriter output)
    {
        string gallery = Path.Combine(Repository(), "gallery");
        string[] names = [.. arguments.Where(a => !a.Contains('=', StringComparison.Ordinal) && a is not ("before" or "after"))];
        if (names.Length == 0) names = ["horn", "starter", "courtesy", "headlamps", "gauges", "turn-signals"];
        string[] views = arguments.Contains("before") ? ["before"] : arguments.Contains("after") ? ["after"] : ["before", "after"];
        int some = int.Parse(arguments.FirstOrDefault(a => a.StartsWith("some=", StringComparison.Ordinal))?[5..] ?? "1000", CultureInfo.InvariantCulture);
        output.WriteLine("circuit              faults  shown+silent  pieces  half  to first 3  readings+looks  first %  in half-split %  in 2 %   rough %    s dictionary, trial");
        Totals all = new();
        foreach (string view in views)
            foreach (string name in names)
            {
                var study = Job.ReadFile(Path.Combine(gallery, name, "job.yaml")).OrThrow().Study;
                var circuit = view == "before" ? study.Before : study.After;
                // A vehicle is looked at through the piece of what is complained of.
                var pieces = SheetPieces.Of(circuit, []).SelectMany(p => p.Loads.IsEmpty ? [p.Loads] : p.Loads.Select(l => ImmutableArray.Create(l))).ToArray();
                foreach (var loads in pieces) all.Add(One(circuit, loads, view + " " + (pieces.Length == 1 ? name : loads[0].Name), pieces.Length == 1 ? some : Math.Max(16, some / pieces.Length), output));
            }
        output.WriteLine(FormattableString.Invariant($"in half-split {all.Half:0.0} %, within two readings, circuits averaged {all.Two:0.0} %, rough world {all.Rough:0.0} %"));
        return all.Half >= 100 * WithinHalfSplit && all.Two >= 100 * WithinTwo && all.Rough >= 100 * Rough ? 0 : 1;
    }

    private static Row One(Studies.CircuitStudy study, ImmutableArray<Studies.LoadStudy> loads, string name, int some, TextWriter output)
    {
        long start = Stopwatch.GetTimestamp();
        var trial = DiagnosisTrial.Of(study, [.. loads.Select(l => l.Name)]);
        int[] faults = [.. trial.Faults];
        if (faults.Length > some) faults = [.. faults.Where((_, i) => i * some / faults.Length != (i + 1) * some / faults.Length)];
        var outcomes = faults.Select(f => (Fault: f, Outcome: trial.Run(f, (ulong)f + 1000))).ToArray();
        var shown = outcomes.Select(o => o.Outcome).OfType<DiagnosisOutcome>().ToArray();
        double first = Stopwatch.GetElapsedTime(start).TotalSeconds;
        var rough = faults.Select(f => trial.Run(f, (ulong)f + 5000, isRough: true)).OfType<DiagnosisOutcome>().ToArray();
        foreach (var (fault, outcome) in outcomes.Where(o => o.Outcome is { } made && made.Found > made.HalfSplit))
        {
            output.WriteLine($"    missed: {trial.Dictionary.Faults[fault].Text} ({trial.Dictionary.Faults[fault].Mode.Name}), {outcome!.Readings} readings, {outcome.Looks} looks, found after {(outcome.Found == int.MaxValue ? "never" : outcome.Found.ToString(CultureInfo.InvariantCulture))}");
            trial.Trace = output;
            trial.Run(fault, (ulong)fault + 1000);
            trial.Trace = null;
        }
        double Share(Func<DiagnosisOutcome, bool> which, DiagnosisOutcome[] of) => 100.0 * of.Count(which) / Math.Max(1, of.Length);
        Row row = new(shown.Length, Share(o => o.Found <= o.HalfSplit, shown), Share(o => o.Found <= 2, shown), Share(o => o.Found <= o.HalfSplit + 2, rough));
        var within = shown.Where(o => o.Found < int.MaxValue).ToArray();
        output.WriteLine(FormattableString.Invariant(
            $"{name,-20} {trial.Faults.Length,6}  {shown.Length,5} + {faults.Length - shown.Length,-4}  {shown.DefaultIfEmpty(new(1, 0, 0, 0, true)).Average(o => o.Pieces),6:0.0}  {shown.DefaultIfEmpty(new(1, 0, 0, 0, true)).Average(o => o.HalfSplit),4:0.0}  {within.DefaultIfEmpty(new(1, 0, 0, 0, true)).Average(o => o.Found),10:0.00}  {shown.DefaultIfEmpty(new(1, 0, 0, 0, true)).Average(o => o.Readings),8:0.0} + {shown.DefaultIfEmpty(new(1, 0, 0, 0, true)).Average(o => o.Looks),-4:0.0}  {Share(o => o.IsFirst, shown),6:0}  {row.Half,15:0.0}  {row.Two,6:0.0}  {row.Rough,8:0.0}  {first,8:0.0}"));
        return row;
    }

    private sealed record Row(int Shown, double Half, double Two, double Rough);

    private sealed class Totals
    {
        private readonly List<Row> rows = [];

        public double Half => rows.Sum(r => r.Half * r.Shown) / rows.Sum(r => r.Shown);

        public double Two => rows.Average(r => r.Two);

        public double Rough => rows.Sum(r => r.Rough * r.Shown) / rows.Sum(r => r.Shown);

        public void Add(Row row) => rows.Add(row);
    }

    private static string Repository()
    {
        string folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Hotside.slnx"))) folder = Path.GetDirectoryName(folder) ?? throw new DirectoryNotFoundException("The clone is not found.");
        return folder;
    }
}
