using System.Collections.Immutable;
using Hotside.Diagnoses;
using Hotside.Solving;
using Hotside.Solving.Relays;

namespace Hotside.Tests.Diagnoses;

/// <summary>
/// A vehicle with one fault: its size, and how far its parts are off what is stated, drawn afresh, not from the dictionary's cells. A person reads it with a meter that is a
/// little off; in the rough world parts are off by more, and now and then the lead is on a wrong point.
/// </summary>
internal sealed class SimulatedVehicle
{
    private readonly FaultDictionary dictionary;
    private readonly Meter meter;
    private readonly SeededDraws draws;
    private readonly Tolerance tolerance;
    private readonly ImmutableArray<int> blown;
    private readonly double size;
    private readonly bool isRough;
    private readonly Dictionary<int, StatePoint> points = [];
    private readonly StateSolver solver;

    public SimulatedVehicle(Meter meter, int fault, ulong seed, bool isRough)
    {
        (this.meter, this.isRough, dictionary) = (meter, isRough, meter.Dictionary);
        draws = new(seed);
        Fault = dictionary.Faults[fault];
        solver = Fault.Crossed ?? dictionary.Bench.Solver;
        tolerance = new(dictionary.Bench.Model, dictionary.Amperes, draws, isRough ? 2.5 : 1);
        size = Fault.Mode.Change == FaultChange.Times ? Fault.Mode.Sizes[(int)(draws.Share() * Fault.Mode.Sizes.Length)].Middle
            : new FaultSize(Fault.Mode.Sizes[0].Least, Fault.Mode.Sizes[^1].Most).At(draws.Share());
        blown = Fault.IsShort ? dictionary.Opened(Fault, size).Blown : [];
    }

    public Fault Fault { get; }

    /// <summary>What everything that can be watched looks like in a setting.</summary>
    public ImmutableArray<Observation> LooksIn(int setting) => [.. Enumerable.Range(0, meter.Watched.Length).Where(w => meter.Watched[w].IsSeen).Select(w => Read(new LookTest(setting, w)))];

    /// <summary>Whether anything looks otherwise than it should in a setting.</summary>
    public bool ShowsIn(int setting) => LooksIn(setting).Any(o => (LookState)(int)o.Value != Looks.Sound(dictionary, setting, meter.Watched[((LookTest)o.Test).Watched]));

    public Observation Read(Test test) => new(test, test switch
    {
        LookTest look => (double)Look(look),
        FuseTest fuse => blown.Contains(fuse.Fuse) || Fault.IsBlown(dictionary.Fuses[fuse.Fuse]) ? 1 : 0,
        VoltsTest volts => Volts(Misplaced(volts)),
        OhmsTest ohms => Ohms(ohms),
        _ => 0,
    }, "");

    private VoltsTest Misplaced(VoltsTest test)
    {
        if (!isRough || draws.Share() >= 0.05) return test;
        var points = dictionary.Bench.Points;
        return test with { Red = points[(int)(draws.Share() * points.Length)].Node };
    }

    private double Volts(VoltsTest test)
    {
        var at = At(test.Setting);
        bool[] floats = Ties.FloatingAt(solver, at);
        double volts = (test.Red >= 0 && floats[test.Red]) || (test.Black >= 0 && floats[test.Black]) ? 0 : at.Point.At(test.Red) - at.Point.At(test.Black);
        double digits = test.Black < 0 ? 0.010 : 0.003;
        return (volts * (1 + (0.008 * Bounded()))) + (digits * Bounded());
    }

    // A meter keeps what it promises: within its error, not beyond.
    private double Bounded() => Math.Clamp(draws.Normal() / 2, -1, 1);

    private double Ohms(OhmsTest test)
    {
        // From the cells nearest in size, which is what differs least in a reading of one figure; the meter's own error on top.
        int cell = Enumerable.Range(0, dictionary.Cells.Length).Where(c => dictionary.Faults[dictionary.Cells[c].Fault] == Fault).MinBy(c => Math.Abs(Math.Log(dictionary.Cells[c].Size.Middle / size)));
        double ohms = Math.Pow(10, meter.Ohms.At(test.Setting, cell, test.Node, test.Pulled).Mean);
        return ohms >= ColdOhms.Open ? ohms : (ohms * draws.Within(0.08)) + (0.08 * Bounded());
    }

    private LookState Look(LookTest look)
    {
        var watched = meter.Watched[look.Watched];
        var at = At(look.Setting);
        if (watched.Variable >= 0) return at.State[watched.Variable] == 0 ? LookState.Off : LookState.Right;
        bool isOn = Looks.Sound(dictionary, look.Setting, watched) == LookState.Right;
        // Eyes compare with how it was on this vehicle.
        double was = isOn ? Math.Abs(Across(dictionary.Solve(dictionary.Settings[look.Setting], null, 1, [], tolerance, null), watched)) : watched.Element.RatedVolts;
        double amperes = solver.AmperesOf(at, solver.Model.Elements[dictionary.Bench.Model.Elements.IndexOf(watched.Element)]);
        return Looks.Judged(isOn, Math.Abs(amperes) < 1e-6 ? 0 : Math.Abs(Across(at, watched)) / was);
    }

    private static double Across(StatePoint at, Watched watched) => at.Point.At(watched.Element.A) - at.Point.At(watched.Element.B);

    private StatePoint At(int setting)
    {
        if (!points.TryGetValue(setting, out var at)) points[setting] = at = dictionary.Solve(dictionary.Settings[setting], Fault, size, blown, tolerance, null);
        return at;
    }
}
