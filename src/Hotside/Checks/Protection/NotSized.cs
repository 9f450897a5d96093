using Hotside.Diagnostics;
using Hotside.Sizing;

namespace Hotside.Checks.Protection;

/// <summary>What sizing could not judge, or found no size or fuse for. Damaged wires have a check of their own.</summary>
internal static class NotSized
{
    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit) => circuit.Sizes.Findings.Where(f => f.Kind != SizingFindings.OldDamaged);
}
