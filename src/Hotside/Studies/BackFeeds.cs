using System.Collections.Immutable;
using Hotside.Diagnostics;

namespace Hotside.Studies;

/// <summary>Finds loads that an alteration feeds past a disconnect that was before them.</summary>
internal static class BackFeeds
{
    public static ImmutableArray<Diagnostic> Between(CircuitStudy before, CircuitStudy after) => [];
}
