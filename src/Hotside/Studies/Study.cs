using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.Diagnostics;

namespace Hotside.Studies;

/// <summary>What was found of both circuits of an alteration. Immutable.</summary>
public sealed record Study
{
    private Study(CircuitStudy before, CircuitStudy after, ImmutableArray<Diagnostic> findings)
    {
        Before = before;
        After = after;
        Findings = findings;
    }

    /// <summary>The circuit as it was.</summary>
    public CircuitStudy Before { get; }

    /// <summary>The circuit as it will be; the same object as <see cref="Before"/> where nothing is altered.</summary>
    public CircuitStudy After { get; }

    /// <summary>The findings of the circuit that counts (the altered one), and what comes of comparing both.</summary>
    public ImmutableArray<Diagnostic> Findings { get; }

    /// <summary>Studies an alteration.</summary>
    /// <param name="alteration">The alteration.</param>
    /// <param name="cancel">Stops the work.</param>
    public static Study Of(Alteration alteration, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(alteration);
        var before = CircuitStudy.Of(alteration.Before, cancel);
        if (ReferenceEquals(alteration.Before, alteration.After)) return new(before, before, before.Findings);
        var after = CircuitStudy.Of(alteration.After, cancel);
        return new(before, after, [.. after.Findings, .. BackFeeds.Between(before, after)]);
    }
}
