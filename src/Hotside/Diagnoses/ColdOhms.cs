using Hotside.Solving;
using Hotside.Solving.Laws;
using Hotside.Solving.Networks;

namespace Hotside.Diagnoses;

/// <summary>
/// What an ohmmeter shows from a point to the return, the battery taken out: filaments cold, motors standing, relays at rest. A meter's volts are too few for a diode, so diodes
/// and lights of them count as open (common practice, no source).
/// </summary>
internal sealed class ColdOhms(FaultDictionary dictionary)
{
    /// <summary>What a meter shows at the least, its leads held together, in ohms; and from where on it shows nothing (own choices).</summary>
    public const double Least = 0.2, Open = 1e6;

    // The meter's error as a part of a decade and in ohms, and that of cold things.
    private const double Decade = 0.06, Lead = 0.08, OfParts = 0.05, OpenSigma = 0.4;

    private const double LeakSiemens = 1e-7;

    private readonly Dictionary<(int Setting, int Cell, int Pulled), double[]> known = [];
    private readonly List<Law?[]> bases = [];
    private readonly List<int> likes = [];
    private readonly Dictionary<StateSolver, StarMesh> meshes = [];

    /// <summary>The decimal logarithm of the ohms from a node to the return.</summary>
    /// <param name="setting">The setting.</param>
    /// <param name="cell">The fault.</param>
    /// <param name="node">The node.</param>
    /// <param name="pulled">The fuse that is pulled; −1 for none.</param>
    public Expectation At(int setting, int cell, int node, int pulled)
    {
        double ohms = All(LikeOf(setting), cell, pulled)[node];
        if (ohms >= Open) return new(Math.Log10(Open), OpenSigma);
        double lead = Lead / ohms / Math.Log(10);
        return new(Math.Log10(ohms), Math.Sqrt((Decade * Decade) + (lead * lead) + (OfParts * OfParts)));
    }

    /// <summary>Whether a fault leaves the ohms of all points as they are.</summary>
    public bool IsAsSound(int setting, int cell, int pulled) => LikeOf(setting) is var like && ReferenceEquals(All(like, cell, pulled), All(like, dictionary.SoundCell, pulled));

    /// <summary>A reading as it is compared: its decimal logarithm, no less than a meter shows.</summary>
    public static double Compared(double ohms) => Math.Log10(Math.Clamp(ohms, Least, Open));

    private double[] All(int setting, int cell, int pulled)
    {
        if (known.TryGetValue((setting, cell, pulled), out double[]? all)) return all;
        var fault = dictionary.Faults[dictionary.Cells[cell].Fault];
        bool isNoneOfOhms = fault.Crossed is null && dictionary.BlownBy(cell).IsEmpty && !FaultLaws.ChangesOhms(bases[setting], fault);
        return known[(setting, cell, pulled)] = isNoneOfOhms && cell != dictionary.SoundCell ? All(setting, dictionary.SoundCell, pulled) : Compute(setting, cell, pulled);
    }

    // With the battery out many settings are one: what a key feeds is not fed.
    private int LikeOf(int setting)
    {
        while (likes.Count <= setting)
        {
            var laws = BaseIn(likes.Count, dictionary.Bench.Solver);
            int same = bases.FindIndex(b => b.AsSpan().SequenceEqual(laws));
            likes.Add(same < 0 ? bases.Count : likes[same]);
            bases.Add(laws);
        }
        return likes[setting];
    }

    private double[] Compute(int setting, int cell, int pulled)
    {
        var (number, size) = dictionary.Cells[cell];
        var fault = dictionary.Faults[number];
        var solver = fault.Crossed ?? dictionary.Bench.Solver;
        Law?[] laws = fault.Crossed is null ? [.. bases[setting]] : BaseIn(setting, solver);
        FaultLaws.Apply(laws, fault, size.Middle, solver.Model, isPowered: false);
        foreach (int fuse in dictionary.BlownBy(cell)) laws[dictionary.Fuses[fuse].FirstEdge] = null;
        if (pulled == OhmsTest.AllFuses)
            foreach (int fuse in dictionary.Pullable) laws[dictionary.Fuses[fuse].FirstEdge] = null;
        if (pulled >= 0) laws[dictionary.Fuses[pulled].FirstEdge] = null;
        return Solve(solver, laws);
    }

    // Filaments cold, motors standing, sources out.
    private Law?[] BaseIn(int setting, StateSolver solver)
    {
        int[] state = FaultDictionary.StateOf(solver, dictionary.Settings[setting]);
        var laws = solver.Model.LawsIn(state, state, dictionary.Settings[setting].Values, isAtOnce: true);
        Array.Resize(ref laws, solver.Network.Edges.Length);
        foreach (var element in solver.Model.Elements)
            for (int e = element.FirstEdge; e < element.FirstEdge + element.EdgeCount; e++)
                if (element.Element is { IsSource: true, When: null } || laws[e] is not ClampLaw { IsLine: true, Emf: 0 }) laws[e] = null;
        return laws;
    }

    private double[] Solve(StateSolver solver, Law?[] laws)
    {
        if (!meshes.TryGetValue(solver, out var mesh)) meshes[solver] = mesh = new(solver.Network);
        double[] siemens = new double[laws.Length];
        for (int e = 0; e < laws.Length; e++) siemens[e] = laws[e]?.Chord.Siemens ?? (e >= solver.Model.Network.Edges.Length ? LeakSiemens : 0);
        mesh.Factor(siemens);
        double[] ohms = mesh.Ohms();
        for (int n = 0; n < ohms.Length; n++) ohms[n] = Math.Clamp(ohms[n], Least, Open);
        return ohms;
    }
}
