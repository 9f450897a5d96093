using Hotside.Alterations;
using Hotside.Studies;

namespace Hotside.Sizing;

/// <summary>The sizes of both circuits of an alteration, each worked out when it is first asked for. Immutable; safe to share between threads.</summary>
public sealed class SizeStudy
{
    private readonly Lazy<CircuitSizes> before, after;

    private SizeStudy(Lazy<CircuitSizes> before, Lazy<CircuitSizes> after) => (this.before, this.after) = (before, after);

    /// <summary>The circuit as it was; the same object as <see cref="After"/> where nothing changes.</summary>
    public CircuitSizes Before => before.Value;

    /// <summary>The circuit as it will be.</summary>
    public CircuitSizes After => after.Value;

    /// <summary>Whether there is an alteration: else both are one and the same.</summary>
    internal bool IsAltered => !ReferenceEquals(before, after);

    /// <summary>Sizes both circuits of an alteration. Most who ask want one of them, and a whole vehicle takes half a second.</summary>
    /// <param name="study">What was found of it.</param>
    public static SizeStudy Of(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        var alteration = study.Alteration;
        Lazy<CircuitSizes> before = new(() => CircuitSizing.Of(study.Before, _ => false));
        return !study.IsAltered ? new(before, before)
            : new(before, new(() => CircuitSizing.Of(study.After, c => alteration.StateOfConductor(c.Id) is ConductorState.LeftAsIs or ConductorState.Moved or ConductorState.UsedElsewhere)));
    }
}
