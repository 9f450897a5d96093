using Hotside.Solving;
using Hotside.Solving.Laws;

namespace Hotside.Diagnoses;

/// <summary>What a fault makes of the laws of a circuit.</summary>
internal static class FaultLaws
{
    // A weak battery has a little fewer volts at rest, too (own choice).
    private const double WeakShare = 0.93, JointOhms = 1e-4;

    /// <summary>Changes laws in place.</summary>
    /// <param name="laws">A law for every edge, those of the bridges too.</param>
    /// <param name="fault">The fault.</param>
    /// <param name="size">Its size.</param>
    /// <param name="model">The circuit.</param>
    /// <param name="isPowered">Whether sources work; with the battery taken out its faults change nothing.</param>
    public static void Apply(Law?[] laws, Fault fault, double size, CircuitModel model, bool isPowered)
    {
        if (fault.FirstEdge < 0) return;
        bool isOfSource = fault.Mode.Change is FaultChange.Dead or FaultChange.Weak or FaultChange.Reversed;
        if (isOfSource && !isPowered) return;
        for (int e = fault.FirstEdge; e < fault.FirstEdge + fault.EdgeCount; e++)
            laws[e] = fault.Mode.Change switch
            {
                FaultChange.Out => null,
                FaultChange.Bridge => ClampLaw.Resistance(size),
                FaultChange.Bypass => ClampLaw.Resistance(JointOhms),
                FaultChange.Closed => model.Edges[e].Closed,
                _ => laws[e] is { } law ? Changed(law, fault.Mode.Change, size) : null,
            };
    }

    /// <summary>Whether a fault changes what an ohmmeter shows, the battery taken out.</summary>
    /// <param name="laws">The laws without it.</param>
    /// <param name="fault">The fault, no wires crossed.</param>
    public static bool ChangesOhms(Law?[] laws, Fault fault)
    {
        if (fault.FirstEdge < 0 || fault.Mode.Change is FaultChange.Dead or FaultChange.Weak or FaultChange.Reversed) return false;
        if (fault.Mode.Change is FaultChange.Bridge or FaultChange.Bypass or FaultChange.Closed) return true;
        for (int e = fault.FirstEdge; e < fault.FirstEdge + fault.EdgeCount; e++)
            if (laws[e] is not null) return true;
        return false;
    }

    private static Law Changed(Law law, FaultChange change, double size) => change switch
    {
        FaultChange.Series => LawScale.InSeries(law, size),
        FaultChange.Times => LawScale.Times(law, size),
        FaultChange.Turned => LawScale.Turned(law),
        FaultChange.Dead => LawScale.Source(law, 0, 0),
        FaultChange.Weak => LawScale.Source(law, WeakShare, size),
        // Cells that stand the wrong way round do not care which way a charge would go.
        FaultChange.Reversed => law is ClampLaw clamp ? new ClampLaw(clamp.Siemens, -clamp.Emf) : law,
        _ => law,
    };
}
