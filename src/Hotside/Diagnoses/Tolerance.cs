using Hotside.Solving;
using Hotside.Solving.Laws;

namespace Hotside.Diagnoses;

/// <summary>
/// A circuit as it may be on a vehicle: loads, wires, joints and battery each a little off what is stated (tolerances: common practice, no source). A joint has the more
/// the less the piece carries: what is harmless in a lamp's wire would be a fault in a starter's.
/// </summary>
internal sealed class Tolerance
{
    private const double Load = 0.08, Piece = 0.10, Emf = 0.02, MostJointOhms = 0.012, JointVolts = 0.06;

    private readonly double[] factors, joints;
    private readonly double emf;
    private readonly CircuitModel model;
    private readonly Kind[] kinds;

    /// <summary>A circuit drawn by chance.</summary>
    /// <param name="model">The circuit.</param>
    /// <param name="amperes">The most that each edge carries when all is well.</param>
    /// <param name="draws">What decides.</param>
    /// <param name="times">By what the tolerances are wider.</param>
    /// <param name="mirrored">One whose battery is as much the other way off, so that two of them lean to no side; <see langword="null"/>: drawn.</param>
    public Tolerance(CircuitModel model, double[] amperes, SeededDraws draws, double times = 1, Tolerance? mirrored = null)
    {
        this.model = model;
        int count = model.Edges.Length;
        kinds = new Kind[count];
        factors = new double[count];
        joints = new double[count];
        for (int i = 0; i < model.Circuit.Conductors.Length; i++) kinds[i] = Kind.Piece;
        foreach (var element in model.Elements)
            for (int e = element.FirstEdge; e < element.FirstEdge + element.EdgeCount; e++)
                kinds[e] = element.Element.IsSource ? Kind.Source : element.Element.IsLink ? Kind.Piece : Kind.Load;
        emf = mirrored is null ? draws.Within(times * Emf) : 2 - mirrored.emf;
        foreach (var element in model.Elements.Where(e => e.EdgeCount > 0)) factors[element.FirstEdge] = draws.Within(times * Load);
        for (int e = 0; e < count; e++)
        {
            if (kinds[e] == Kind.Piece)
            {
                factors[e] = draws.Within(Math.Min(times * Piece, 0.9));
                joints[e] = times * draws.Share() * (amperes[e] > 0 ? Math.Min(MostJointOhms, JointVolts / amperes[e]) : MostJointOhms);
            }
            else if (factors[e] == 0) factors[e] = e > 0 ? factors[e - 1] : 1;
        }
    }

    private enum Kind
    {
        Load,
        Piece,
        Source,
    }

    /// <summary>Puts a law of this circuit in the place of each; bridges stay as they are.</summary>
    public void Apply(Law?[] laws)
    {
        for (int e = 0; e < kinds.Length; e++)
            if (laws[e] is { } law)
                laws[e] = kinds[e] switch
                {
                    Kind.Source => LawScale.Source(law, emf, 0),
                    Kind.Piece => LawScale.InSeries(LawScale.Times(law, 1 / factors[e]), joints[e]),
                    _ => LawScale.Times(law, factors[e]),
                };
    }
}
