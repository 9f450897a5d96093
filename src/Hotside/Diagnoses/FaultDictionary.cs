using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Sizing.Guards;
using Hotside.Sizing.Tables;
using Hotside.Solving;
using Hotside.Solving.Laws;
using Hotside.Solving.Relays;

namespace Hotside.Diagnoses;

/// <summary>
/// What every fault of a piece would show in every setting: the circuit is solved with each, as stated and with parts a little off, each fault from the healthy point.
/// Not to be used by several threads at once.
/// </summary>
internal sealed class FaultDictionary
{
    // How many circuits a little off are drawn; each cell takes four of them.
    private const int Drawn = 12;

    // A fuse without a rating is taken for this (own choice).
    private const double UsualRating = 15;

    // A starter with more turns, or tries to (own choice).
    private const double LeastAmperes = 1e-6, CrankingAmperes = 5;

    private readonly Bench bench;
    private readonly ImmutableArray<ModelElement> fuses;
    private readonly List<BenchSetting> settings;
    private readonly List<StatePoint> healthyAt = [];
    private readonly List<CellPoint> healthy = [];
    private readonly List<float[][]> drawn = [];
    private readonly List<CellPoint?[]> points = [];
    private readonly ImmutableArray<int>[] blown;
    private readonly double[] most;
    private readonly Tolerance[] tolerances;

    /// <summary>The dictionary of a piece.</summary>
    /// <param name="bench">The piece.</param>
    /// <param name="faults">Its faults.</param>
    /// <param name="settings">The settings.</param>
    public FaultDictionary(Bench bench, ImmutableArray<Fault> faults, ImmutableArray<BenchSetting> settings)
    {
        (this.bench, Faults, this.settings) = (bench, faults, [.. settings]);
        Cells = [.. faults.SelectMany((f, i) => f.Mode.Sizes.Select(s => new FaultCell(i, s)))];
        SoundCell = Enumerable.Range(0, Cells.Length).First(c => faults[Cells[c].Fault].Mode.Change == FaultChange.None);
        fuses = [.. bench.Model.Elements.Where(e => e.Element.Type is ElementType.Fuse or ElementType.Breaker && e.EdgeCount > 0)];
        for (int s = 0; s < settings.Length; s++) SolveHealthy(s);
        double[] amperes = new double[bench.Model.Edges.Length];
        foreach (var at in healthyAt)
            for (int e = 0; e < amperes.Length; e++) amperes[e] = Math.Max(amperes[e], Math.Abs(bench.Solver.AmperesOf(at, e)));
        SeededDraws draws = new(0x5EED);
        tolerances = new Tolerance[Drawn];
        for (int i = 0; i < Drawn; i++) tolerances[i] = new(bench.Model, amperes, draws, mirrored: i % 2 == 0 ? null : tolerances[i - 1]);
        Amperes = amperes;
        blown = [.. Cells.Select(_ => ImmutableArray<int>.Empty)];
        most = new double[Cells.Length];
        for (int c = 0; c < Cells.Length; c++) Blow(c);
        for (int s = 0; s < settings.Length; s++) healthy.Add(HealthyIn(s));
        foreach (var _ in settings) points.Add(new CellPoint?[Cells.Length]);
    }

    public Bench Bench => bench;

    public ImmutableArray<Fault> Faults { get; }

    /// <summary>The faults by size; those of one fault follow each other.</summary>
    public ImmutableArray<FaultCell> Cells { get; }

    /// <summary>The cell in which nothing is wrong.</summary>
    public int SoundCell { get; }

    public IReadOnlyList<BenchSetting> Settings => settings;

    /// <summary>The most that each edge carries when all is well.</summary>
    public double[] Amperes { get; }

    /// <summary>The number of a setting; one that was not there is added.</summary>
    public int Add(BenchSetting setting)
    {
        string key = BenchSettings.KeyOf(setting);
        int known = settings.FindIndex(s => BenchSettings.KeyOf(s) == key);
        if (known >= 0) return known;
        settings.Add(setting);
        SolveHealthy(settings.Count - 1);
        healthy.Add(HealthyIn(settings.Count - 1));
        points.Add(new CellPoint?[Cells.Length]);
        return settings.Count - 1;
    }

    /// <summary>What a sound circuit shows.</summary>
    public CellPoint Healthy(int setting) => healthy[setting];

    /// <summary>The current through an edge when all is well.</summary>
    public double HealthyAmperes(int setting, int edge) => bench.Solver.AmperesOf(healthyAt[setting], edge);

    /// <summary>What a fault shows; the very point of a sound circuit where it shows nothing.</summary>
    public CellPoint At(int setting, int cell) => points[setting][cell] ??= Compute(setting, cell);

    /// <summary>The fuses, as elements, that a fault opens, the settings taken one after the other.</summary>
    public ImmutableArray<int> BlownBy(int cell) => blown[cell];

    /// <summary>The most that the battery gives with a fault once fuses have opened, outside of cranking.</summary>
    public double BatteryAmperes(int cell) => most[cell];

    /// <summary>The fuses.</summary>
    public ImmutableArray<ModelElement> Fuses => fuses;

    /// <summary>The numbers of those that a hand takes out of their way: fuses, and breakers that are parts by themselves; not the one within a switch.</summary>
    public IEnumerable<int> Pullable => Enumerable.Range(0, fuses.Length).Where(f => FuseWay.IsPulled(fuses[f].Part, fuses[f].Element));

    /// <summary>The name of a fuse: its part, with the way where the part has several.</summary>
    public string FuseName(int fuse) => FuseWay.NameOf(fuses[fuse].Part, fuses[fuse].Element);

    /// <summary>The names of those that are taken out by hand.</summary>
    public IEnumerable<string> PullableNames => Pullable.Select(FuseName);

    /// <summary>The positions of a setting, relays released.</summary>
    public static int[] StateOf(StateSolver solver, BenchSetting setting) => solver.StateOf(setting.Positions);

    /// <summary>Solves the circuit with a fault.</summary>
    /// <param name="setting">The setting.</param>
    /// <param name="fault">The fault; <see langword="null"/> for none.</param>
    /// <param name="size">Its size.</param>
    /// <param name="open">The fuses that are open.</param>
    /// <param name="tolerance">The circuit that is a little off; <see langword="null"/>: as stated.</param>
    /// <param name="near">Potentials that may be near.</param>
    public StatePoint Solve(BenchSetting setting, Fault? fault, double size, ImmutableArray<int> open, Tolerance? tolerance, double[]? near)
    {
        var solver = fault?.Crossed ?? bench.Solver;
        return solver.Solve(StateOf(solver, setting), setting.Values, laws =>
        {
            Array.Resize(ref laws, solver.Network.Edges.Length);
            tolerance?.Apply(laws);
            if (fault is not null) FaultLaws.Apply(laws, fault, size, solver.Model, isPowered: true);
            foreach (int fuse in open) laws[fuses[fuse].FirstEdge] = null;
            return laws;
        }, near);
    }

    /// <summary>Which fuses a fault opens, each setting tried in its turn, and the most that the battery gives then.</summary>
    public (ImmutableArray<int> Blown, double Amperes) Opened(Fault fault, double size)
    {
        ImmutableArray<int> open = [];
        double amperes = 0;
        for (int s = 0; s < settings.Count; s++)
            while (true)
            {
                var at = Solve(settings[s], fault, size, open, null, healthyAt.Count > s ? healthyAt[s].Point.Volts : null);
                var solver = fault.Crossed ?? bench.Solver;
                // The one that carries most of its rating opens first, and spares those before it.
                double Multiple(int fuse) => Math.Abs(solver.AmperesOf(at, fuses[fuse])) / (Protection.RatingOf(fuses[fuse]) ?? UsualRating);
                int[] over = [.. Enumerable.Range(0, fuses.Length).Where(f => !open.Contains(f) && Multiple(f) > OpeningTime.OpensSoon)];
                if (over.Length > 0)
                {
                    open = open.Add(over.MaxBy(Multiple));
                    continue;
                }
                if (!settings[s].Cranks)
                    foreach (var source in solver.Model.Elements.Where(e => e.Element.IsSource)) amperes = Math.Max(amperes, Math.Abs(solver.AmperesOf(at, source)));
                break;
            }
        return (open, amperes);
    }

    private void SolveHealthy(int setting)
    {
        var at = bench.Solver.Solve(StateOf(bench.Solver, settings[setting]), settings[setting].Values);
        healthyAt.Add(at);
        bool turns = bench.Model.Elements.Any(e => e.Part.IsStarter(e.Element) && Math.Abs(bench.Solver.AmperesOf(at, e)) > CrankingAmperes);
        settings[setting] = settings[setting] with { Cranks = turns };
    }

    private void Blow(int cell)
    {
        var fault = Faults[Cells[cell].Fault];
        if (fault.IsShort && fault.Mode.Change != FaultChange.Closed) (blown[cell], most[cell]) = Opened(fault, Cells[cell].Size.Middle);
    }

    private CellPoint HealthyIn(int setting)
    {
        var at = healthyAt[setting];
        drawn.Add([.. tolerances.Select(t => Narrow(Solve(settings[setting], null, 1, [], t, at.Point.Volts)))]);
        float[][] volts = [Narrow(at), .. drawn[setting].Take(CellPoint.Samples - 1)];
        return new(volts, Ties.FloatingAt(bench.Solver, at), at.State);
    }

    private CellPoint Compute(int setting, int cell)
    {
        var (number, size) = Cells[cell];
        var fault = Faults[number];
        if (Unmoved(setting, cell) is { } known) return known;
        var near = healthyAt[setting].Point.Volts;
        SeededDraws draws = new((ulong)cell + 1);
        float[][] volts = new float[CellPoint.Samples][], sound = new float[CellPoint.Samples][];
        var stated = Solve(settings[setting], fault, size.Middle, blown[cell], null, near);
        (volts[0], sound[0]) = (Narrow(stated), healthy[setting].Volts[0]);
        double[] start = new double[near.Length];
        for (int i = 1; i < volts.Length; i++)
        {
            int which = ((cell * CellPoint.Samples) + i) % Drawn;
            sound[i] = drawn[setting][which];
            // The fault moves potentials here about as it does where all is as stated.
            for (int n = 0; n < start.Length; n++) start[n] = sound[i][n] + stated.Point.Volts[n] - near[n];
            volts[i] = Narrow(Solve(settings[setting], fault, size.At(draws.Share()), blown[cell], tolerances[which], start));
        }
        return new(volts, Ties.FloatingAt(fault.Crossed ?? bench.Solver, stated), stated.State) { Sound = sound };
    }

    // A fault that leaves every current as it is when all is well (a break where none flows, a short where there are no volts) changes no potential; another node may float.
    private CellPoint? Unmoved(int setting, int cell)
    {
        var (number, size) = Cells[cell];
        var fault = Faults[number];
        if (fault.Crossed is not null) return null;
        if (blown[cell].IsEmpty && IsIdle(fault, setting)) return healthy[setting];
        var at = healthyAt[setting];
        Law?[] laws = [.. at.Laws];
        FaultLaws.Apply(laws, fault, size.Middle, bench.Model, isPowered: true);
        foreach (int fuse in blown[cell]) laws[fuses[fuse].FirstEdge] = null;
        for (int e = fault.FirstEdge; e < fault.FirstEdge + fault.EdgeCount; e++)
            if (IsMoved(e)) return null;
        foreach (int fuse in blown[cell])
            if (IsMoved(fuses[fuse].FirstEdge)) return null;
        bool[] floats = Ties.FloatingAt(bench.Solver, at with { Laws = laws });
        return floats.AsSpan().SequenceEqual(healthy[setting].Floats) ? healthy[setting] : new(healthy[setting].Volts, floats, at.State);

        bool IsMoved(int edge)
        {
            double volts = at.Point.Across(bench.Solver.Network.Edges[edge]);
            return Math.Abs((laws[edge]?.At(volts).Amperes ?? 0) - (at.Laws[edge]?.At(volts).Amperes ?? 0)) >= LeastAmperes;
        }
    }

    // Known without a look at what floats: a resistance where no current flows, a contact that is closed anyway.
    private bool IsIdle(Fault fault, int setting) => fault.Mode.Change switch
    {
        FaultChange.None or FaultChange.Unknown => true,
        FaultChange.Series or FaultChange.Times => Enumerable.Range(fault.FirstEdge, fault.EdgeCount).All(e => Math.Abs(HealthyAmperes(setting, e)) < LeastAmperes),
        FaultChange.Closed => healthyAt[setting].Laws[fault.FirstEdge] is not null,
        _ => false,
    };

    private static float[] Narrow(StatePoint at)
    {
        float[] volts = new float[at.Point.Volts.Length];
        for (int i = 0; i < volts.Length; i++) volts[i] = (float)at.Point.Volts[i];
        return volts;
    }
}
