using Hotside.Diagnostics;
using Hotside.Sizing;

namespace Hotside.Checks.Protection;

/// <summary>
/// What sizing could not judge, or found no fuse for. Damaged wires have a check of their own; that no size serves is said in the table of sizes alone, for sizes are
/// raised one wire after the other, and in a circuit of two sources the steps may end early.
/// </summary>
internal static class NotSized
{
    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit) => circuit.Sizes.Findings.Where(f => f.Kind != SizingFindings.OldDamaged && f.Kind != SizingFindings.NoSizeServes);
}
