using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Solving;
using Hotside.Studies;

namespace Hotside.Sizing;

/// <summary>The sizes of a circuit's conductors and the ratings of its fuses, judged. Immutable; safe to share between threads.</summary>
public sealed record CircuitSizes
{
    internal CircuitSizes(CircuitStudy study, ImmutableArray<ConductorSizing> conductors, ImmutableArray<FuseSizing> fuses, ImmutableArray<Diagnostic> findings)
    {
        Study = study;
        Conductors = conductors;
        Fuses = fuses;
        Findings = findings;
    }

    /// <summary>The circuit.</summary>
    public Circuit Circuit => Study.Circuit;

    /// <summary>The conductors, in the order of the file.</summary>
    public ImmutableArray<ConductorSizing> Conductors { get; }

    /// <summary>What opens by itself, parts in the order of the file.</summary>
    public ImmutableArray<FuseSizing> Fuses { get; }

    /// <summary>What carries the current of others: contacts, fuses, breakers, diodes, resistors, parts in the order of the file.</summary>
    public ImmutableArray<ElementCurrent> InLine { get; internal init; } = [];

    /// <summary>What could not be judged, and feeds that no fuse serves, in the order of the file.</summary>
    public ImmutableArray<Diagnostic> Findings { get; }

    /// <summary>The volts of the running vehicle by which currents are told.</summary>
    internal double HighestVolts { get; init; }

    /// <summary>The model by whose laws currents are told.</summary>
    internal CircuitModel Model { get => field ?? new(Circuit); init; }

    /// <summary>What is known of its loads.</summary>
    internal CircuitStudy Study { get; }

    /// <summary>A conductor by its id.</summary>
    /// <param name="id">The id.</param>
    /// <exception cref="ArgumentException">The circuit has no such conductor; the message names the nearest.</exception>
    public ConductorSizing Conductor(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return Conductors.FirstOrDefault(c => c.Conductor.Id == id)
            ?? throw new ArgumentException($"There is no wire \"{id}\"{NearestName.Suggestion(id, Conductors.Select(c => c.Conductor.Id))}", nameof(id));
    }

    /// <summary>The fuses of a part, most often one.</summary>
    /// <param name="part">The part's id.</param>
    public IEnumerable<FuseSizing> FusesOf(string part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return Fuses.Where(f => f.Part.Id == part);
    }
}
