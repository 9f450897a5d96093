using Hotside.Alterations;
using Hotside.Studies;

namespace Hotside.Sizing;

/// <summary>The sizes of both circuits of an alteration. Immutable; safe to share between threads.</summary>
/// <param name="Before">The circuit as it was; the same object as <paramref name="After"/> where nothing changes.</param>
/// <param name="After">The circuit as it will be.</param>
public sealed record SizeStudy(CircuitSizes Before, CircuitSizes After)
{
    /// <summary>Whether there is an alteration: else both are one and the same.</summary>
    internal bool IsAltered => !ReferenceEquals(Before, After);

    /// <summary>Sizes both circuits of an alteration.</summary>
    /// <param name="study">What was found of it.</param>
    public static SizeStudy Of(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        var alteration = study.Alteration;
        var before = CircuitSizing.Of(study.Before, _ => false);
        return !study.IsAltered ? new(before, before)
            : new(before, CircuitSizing.Of(study.After, c => alteration.StateOfConductor(c.Id) is ConductorState.LeftAsIs or ConductorState.Moved or ConductorState.UsedElsewhere));
    }
}
