using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Studies.Excerpts;

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

    /// <summary>Whether there is an alteration: else both circuits are one and the same.</summary>
    public bool IsAltered => !ReferenceEquals(Before, After);

    /// <summary>The findings of the circuit that counts (the altered one), then what only a comparison of the two shows, such as a feed that bypasses a disconnect.</summary>
    public ImmutableArray<Diagnostic> Findings { get; }

    /// <summary>
    /// The excerpt of some loads: what feeds and controls them before, and after, and nothing else. Verdicts are those of the whole: its circuits are studied no more.
    /// </summary>
    /// <param name="names">Parts' ids, or single loads of parts.</param>
    /// <exception cref="ArgumentException">There is no such load before or after; the message names the nearest.</exception>
    internal Study Only(IReadOnlyCollection<string> names)
    {
        foreach (string name in names)
            if (Before.LoadsNamed(name).IsEmpty && After.LoadsNamed(name).IsEmpty) throw new ArgumentException(Unknown(name), nameof(names));
        Excerpt Of(CircuitStudy study) => Excerpt.Of(study, names.SelectMany(n => study.LoadsNamed(n)));
        Excerpt old = Of(Before), fresh = IsAltered ? Of(After) : old;
        var before = old.From(Before.Circuit, fresh);
        var after = IsAltered ? fresh.From(After.Circuit, old) : before;
        var was = Before.Only(old);
        return new(Alteration.Only(before, after), was, IsAltered ? After.Only(fresh) : was);
    }

    /// <summary>Says that there is no load of a name, and names the nearest.</summary>
    internal string Unknown(string name)
    {
        string[] loads = [.. Before.Loads.Concat(After.Loads).Where(l => !l.Element.IsInternal).Select(l => l.Name).Distinct(StringComparer.Ordinal)];
        bool isPart = Before.Circuit.FindPart(name) is not null || After.Circuit.FindPart(name) is not null;
        string what = isPart ? $"{name} is a part, but no load" : $"There is no load \"{name}\"";
        return NearestName.Of(name, loads) is { } near ? $"{what}; did you mean \"{near}\"?" : $"{what}; the loads are {string.Join(", ", loads)}.";
    }

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
