using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Studies.Switching;

namespace Hotside.Studies;

/// <summary>What was found of one circuit: each load with the side on which it is switched, and what is wrong or doubtful. Immutable.</summary>
public sealed record CircuitStudy
{
    private CircuitStudy(Circuit circuit, ImmutableArray<LoadStudy> loads, ImmutableArray<Diagnostic> findings)
    {
        Circuit = circuit;
        Loads = loads;
        Findings = findings;
    }

    /// <summary>The circuit.</summary>
    public Circuit Circuit { get; }

    /// <summary>The loads, parts in the order of the file, elements in that of the kind; those marked internal included.</summary>
    public ImmutableArray<LoadStudy> Loads { get; }

    /// <summary>What is wrong or doubtful; places are those of a file where the circuit was read from one.</summary>
    public ImmutableArray<Diagnostic> Findings { get; }

    /// <summary>Studies a circuit.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was called for.</exception>
    public static CircuitStudy Of(Circuit circuit, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(circuit);
        try
        {
            var verdicts = new Verdicts(circuit, cancel);
            return new(circuit, verdicts.Loads, [.. SwitchingFindings.Of(verdicts)]);
        }
        catch (BudgetException)
        {
            return new(circuit, [.. Approximation.Of(circuit)], [StudyProblems.Approximate.Of([])]);
        }
    }

    /// <summary>A load by its name.</summary>
    /// <param name="name">A part's id where it has one load, <c>part.element</c> otherwise or as well.</param>
    /// <exception cref="ArgumentException">There is no such load; the message names the nearest.</exception>
    public LoadStudy Load(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        if (Loads.FirstOrDefault(l => l.Name == name || l.Part.Id + "." + l.Element.Name == name) is { } load) return load;
        string? near = NearestName.Of(name, Loads.Select(l => l.Name));
        throw new ArgumentException($"There is no load \"{name}\"{(near is null ? "" : $"; did you mean \"{near}\"?")}", nameof(name));
    }
}
