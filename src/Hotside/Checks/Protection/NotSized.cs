using Hotside.Diagnostics;

namespace Hotside.Checks.Protection;

/// <summary>What sizing could not judge, or found no size or fuse for.</summary>
internal static class NotSized
{
    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit) => circuit.Sizes.Findings;
}
