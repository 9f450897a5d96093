using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Studies.Excerpts;
using Hotside.Studies.Switching;

namespace Hotside.Studies;

/// <summary>What was found of one circuit: on which side each load is switched, by what, and what is doubtful about it. Immutable; safe to share between threads.</summary>
public sealed record CircuitStudy
{
    internal CircuitStudy(Circuit circuit, ImmutableArray<LoadStudy> loads, ImmutableArray<Diagnostic> findings)
    {
        Circuit = circuit;
        Loads = loads;
        Findings = findings;
    }

    /// <summary>The circuit.</summary>
    public Circuit Circuit { get; }

    /// <summary>Every consuming element, parts in the order of the file, elements in the order of the kind; internal ones too, which tables leave out.</summary>
    public ImmutableArray<LoadStudy> Loads { get; private init; }

    /// <summary>What is wrong or doubtful, gravest first.</summary>
    public ImmutableArray<Diagnostic> Findings { get; }

    /// <summary>What is on in each of the circuit's named settings, in the order of the file.</summary>
    public ImmutableArray<SettingStudy> Settings { get; internal init; } = [];

    /// <summary>The study of which this is an excerpt; itself where it is none.</summary>
    internal CircuitStudy Whole { get => field ?? this; private init; }

    /// <summary>The same with the verdicts of some loads only.</summary>
    internal CircuitStudy Only(Excerpt excerpt) => this with { Loads = [.. Loads.Where(l => excerpt.Loads.Contains(l.Name))], Whole = Whole };

    /// <summary>A named setting.</summary>
    /// <param name="name">Its name.</param>
    /// <exception cref="ArgumentException">There is no such setting; the message names the nearest.</exception>
    public SettingStudy Setting(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        if (Settings.FirstOrDefault(s => s.Setting.Name == name) is { } found) return found;
        var names = Settings.Select(s => s.Setting.Name);
        throw new ArgumentException($"There is no setting \"{name}\"" + (Settings.IsEmpty ? "; the job names none."
            : NearestName.Of(name, names) is { } near ? $"; did you mean \"{near}\"?" : $"; the settings are {string.Join(", ", names.Select(n => $"\"{n}\""))}."), nameof(name));
    }

    /// <summary>Studies a circuit.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="cancel">Ends the work early.</param>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was triggered.</exception>
    public static CircuitStudy Of(Circuit circuit, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(circuit);
        return SwitchingStudy.Of(circuit, cancel);
    }

    /// <summary>The load of a name, or all loads of a part; empty when there are none.</summary>
    internal ImmutableArray<LoadStudy> LoadsNamed(string name)
    {
        ImmutableArray<LoadStudy> exact = [.. Loads.Where(l => l.Name == name || l.Part.Id + "." + l.Element.Name == name)];
        return exact.IsEmpty ? [.. Loads.Where(l => l.Part.Id == name && !l.Element.IsInternal)] : exact;
    }

    /// <summary>A load by its name: <c>H1</c>, <c>E3.tail</c>; <c>H1.horn</c> is understood too.</summary>
    /// <param name="name">The part's id, with the element where the part has several loads.</param>
    /// <exception cref="ArgumentException">There is no such load; the message names the nearest.</exception>
    public LoadStudy Load(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return Loads.FirstOrDefault(l => l.Name == name) ?? Loads.FirstOrDefault(l => l.Part.Id + "." + l.Element.Name == name)
            ?? throw new ArgumentException(NearestName.Of(name, Loads.Select(l => l.Name)) is { } near
                ? $"There is no load \"{name}\"; did you mean \"{near}\"?"
                : $"There is no load \"{name}\"; the loads are {string.Join(", ", Loads.Select(l => l.Name))}.", nameof(name));
    }
}
