using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.Diagnostics;

namespace Hotside.Studies;

/// <summary>What was found of an alteration: the circuit as it was and as it will be. Immutable; safe to share between threads.</summary>
public sealed record Study
{
    private Study(Alteration alteration, CircuitStudy before, CircuitStudy after)
    {
        Alteration = alteration;
        Before = before;
        After = after;
        Findings = ReferenceEquals(before, after) ? after.Findings : [.. after.Findings, .. BackFeeds.Between(before, after)];
    }

    /// <summary>The alteration.</summary>
    public Alteration Alteration { get; }

    /// <summary>The circuit as it was; the same object as <see cref="After"/> where nothing changes.</summary>
    public CircuitStudy Before { get; }

    /// <summary>The circuit as it will be.</summary>
    public CircuitStudy After { get; }

    /// <summary>The findings of the circuit that counts (the altered one), then what only a comparison of the two shows, such as a feed that bypasses a disconnect.</summary>
    public ImmutableArray<Diagnostic> Findings { get; }

    /// <summary>Studies an alteration.</summary>
    /// <param name="alteration">The alteration.</param>
    /// <param name="cancel">Ends the work early.</param>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was triggered.</exception>
    public static Study Of(Alteration alteration, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(alteration);
        if (ReferenceEquals(alteration.Before, alteration.After) || Environment.ProcessorCount == 1)
        {
            var before = CircuitStudy.Of(alteration.Before, cancel);
            return new(alteration, before, ReferenceEquals(alteration.Before, alteration.After) ? before : CircuitStudy.Of(alteration.After, cancel));
        }
        // The two have nothing in common but what never changes.
        var other = Task.Run(() => CircuitStudy.Of(alteration.Before, cancel), CancellationToken.None);
        var after = CircuitStudy.Of(alteration.After, cancel);
        return new(alteration, other.GetAwaiter().GetResult(), after);
    }
}
