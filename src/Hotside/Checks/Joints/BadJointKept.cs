using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Joints;

/// <summary>An own check: a joint that is known to be bad stays, and loses volts.</summary>
internal static class BadJointKept
{
    // One contact of a large current may lose 0.1 V (common practice, no source).
    private const double MostVolts = 0.1;

    public static readonly DiagnosticKind Kind = new("HS3399", Severity.Warning, "Bad joint kept",
        "the joint of {0} at {1} loses {2} V {3} and heats with {4} W")
    {
        Source = "0.1 V at one contact: common practice, no source",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit)
    {
        for (int i = 0; i < circuit.Circuit.Conductors.Length; i++)
        {
            var conductor = circuit.Circuit.Conductors[i];
            foreach (var (end, ohms) in new[] { (conductor.From, conductor.Wire.JointAtFromInOhms), (conductor.To, conductor.Wire.JointAtToInOhms) })
                if (ohms is { } bad && circuit.Points.All.MaxBy(p => (float)Math.Abs(p.Solution.Conductors[i].Amperes)) is { } worst
                    && Math.Abs(worst.Solution.Conductors[i].Amperes) is var amperes && amperes * bad > MostVolts)
                    yield return Kind.Of([conductor.Id], conductor.Id, circuit.Circuit.TextOf(end), Numbers.Plain(amperes * bad, 2), worst.When, Numbers.Plain(amperes * amperes * bad, 1)) with
                    {
                        Hint = "clean it and make it anew: with the cable of the grounded post off, bright metal, a new terminal where the old one is burnt",
                    };
        }
    }
}
