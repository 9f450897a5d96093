using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Solving.Laws;
using Hotside.Solving.Relays;

namespace Hotside.Solving;

/// <summary>Volts and amperes of a circuit in one setting, once its relays have come to rest: what a meter would show if every part were as stated.</summary>
/// <param name="Setting">The setting.</param>
internal sealed record Solution(Setting Setting)
{
    /// <summary>Where every switch, condition and relay stands, in the order of the circuit's variables.</summary>
    public required ImmutableArray<SetPosition> Positions { get; init; }

    /// <summary>The volts of every terminal against the return, in the order of the parts; <see langword="null"/> where it floats.</summary>
    public required ImmutableArray<TerminalVolts> Terminals { get; init; }

    /// <summary>The conductors, in the order of the circuit.</summary>
    public required ImmutableArray<ConductorFigures> Conductors { get; init; }

    /// <summary>All elements of all parts, contacts, fuses and sources among them.</summary>
    public required ImmutableArray<ElementPoint> Elements { get; init; }

    /// <summary>Whether relays come to rest.</summary>
    public RestKind Rest { get; init; }

    /// <summary>The other states of rest of a race, or the other states of a cycle.</summary>
    public ImmutableArray<Solution> Others { get; init; } = [];

    /// <summary>Where the relays rest if all were pulled before, when that is elsewhere.</summary>
    public Solution? IfPulledBefore { get; init; }

    /// <summary>What is not stated and was taken.</summary>
    public ImmutableArray<Assumption> Assumptions { get; init; } = [];

    /// <summary>Whether the currents close at every node to what rounding allows.</summary>
    public bool IsExact { get; init; }

    /// <summary>The greatest sum of currents that is left at a node, in amperes.</summary>
    public double Residual { get; init; }

    /// <summary>How many steps of Newton's method it took.</summary>
    public int Steps { get; init; }

    /// <summary>The consumers that count as loads.</summary>
    public IEnumerable<ElementPoint> Loads => Elements.Where(e => e.Element.IsConsumer && !e.Element.IsInternal);

    /// <summary>The sources; what they give is negative.</summary>
    public IEnumerable<ElementPoint> Sources => Elements.Where(e => e.Element.IsSource);

    /// <summary>The volts of a terminal against the return; <see langword="null"/> where it floats.</summary>
    /// <exception cref="ArgumentException">The circuit has no such terminal.</exception>
    public double? VoltsAt(string end)
    {
        var meant = End.Parse(end);
        foreach (var terminal in Terminals)
            if (terminal.End == meant || (meant.Terminal.Length == 0 && terminal.End.Part == meant.Part))
                return terminal.Volts;
        throw new ArgumentException($"There is no terminal \"{end}\".", nameof(end));
    }

    /// <summary>A conductor by its id.</summary>
    public ConductorFigures Conductor(string id) => Conductors.First(c => c.Conductor.Id == id);

    /// <summary>An element by the part's id and the element's name.</summary>
    public ElementPoint Element(string part, string element) => Elements.First(e => e.Part.Id == part && e.Element.Name == element);
}

/// <summary>The volts of a terminal.</summary>
/// <param name="End">The terminal.</param>
/// <param name="Volts">Volts against the return; <see langword="null"/> where it floats.</param>
internal sealed record TerminalVolts(End End, double? Volts);

/// <summary>What a conductor carries.</summary>
/// <param name="Conductor">The conductor.</param>
/// <param name="Amperes">The current from its first end to its second.</param>
/// <param name="Volts">What it drops, from its first end to its second.</param>
internal sealed record ConductorFigures(Conductor Conductor, double Amperes, double Volts)
{
    /// <summary>Whether nothing is known of its resistance, so that its drop is not known either.</summary>
    public bool IsAssumed { get; init; }

    /// <summary>Whether it lies in a ring of such joints: how they share their current is not known.</summary>
    public bool IsShared { get; init; }

    /// <summary>The heat in watts.</summary>
    public double Watts => Amperes * Volts;
}

/// <summary>What an element of a part carries.</summary>
/// <param name="Part">The part.</param>
/// <param name="Element">The element.</param>
/// <param name="Volts">Volts from its first end to its second; a source's from plus to minus.</param>
/// <param name="Amperes">The current from its first end to its second; what a source gives is negative.</param>
/// <param name="RatedVolts">The volts it is made for.</param>
/// <param name="RatedAmperes">Its current at these volts, for a consumer.</param>
internal sealed record ElementPoint(Part Part, Element Element, double Volts, double Amperes, double RatedVolts, double RatedAmperes)
{
    /// <summary>Whether it is a load of constant power that is off because its feed is too weak: with it the volts would fall below its lock-out.</summary>
    public bool IsLockedOut { get; init; }

    /// <summary>The power it takes in watts; below 0 what it gives.</summary>
    public double Watts => Volts * Amperes;

    /// <summary>Its name as a load: the part's id, with the element where the part has several loads.</summary>
    public string Name => Part.Kind.Elements.Count(e => e.IsConsumer && !e.IsInternal) > 1 || Element.IsInternal ? Part.Id + "." + Element.Name : Part.Id;
}
