using System.Collections.Immutable;
using Hotside.Circuits;
using UnitsNet;

namespace Hotside.Studies.Figures;

/// <summary>
/// Volts, amperes and watts of a circuit in one setting, once its relays have come to rest: what meters would show if every part were as stated, copper at 20 °C, batteries full.
/// Fuses do not open in it: a short circuit has its current. Immutable.
/// </summary>
/// <remarks>
/// Currents count from the feed to the return, so that a wire written from the feed to a load has the same sign in a vehicle of either polarity. Conventional current runs
/// the other way where plus is grounded. Volts of terminals are those of a meter, with their true sign.
/// </remarks>
/// <param name="Setting">The setting.</param>
public sealed record SettingFigures(Setting Setting)
{
    /// <summary>Where every switch, condition and relay stands, in the order of the circuit's variables.</summary>
    public required ImmutableArray<SetPosition> Positions { get; init; }

    /// <summary>The terminals of all parts that have any, in the order of the parts, then the chassis and what else conductors end on.</summary>
    public required ImmutableArray<TerminalFigure> Terminals { get; init; }

    /// <summary>The conductors, in the order of the circuit.</summary>
    public required ImmutableArray<ConductorFigure> Conductors { get; init; }

    /// <summary>All elements of all parts, contacts, fuses and sources among them, in the order of the circuit.</summary>
    public required ImmutableArray<ElementFigure> Elements { get; init; }

    /// <summary>What becomes of the relays.</summary>
    public RelayOutcome Relays { get; init; }

    /// <summary>The other states of rest of a race, or the other states of a cycle.</summary>
    public ImmutableArray<SettingFigures> Others { get; init; } = [];

    /// <summary>Where relays rest if all were pulled before, when that is elsewhere: what is on then depends on what was done before. Else <see langword="null"/>.</summary>
    public SettingFigures? IfPulledBefore { get; init; }

    /// <summary>What is not stated and was taken, the same in all settings.</summary>
    public ImmutableArray<AssumedValue> Assumptions { get; init; } = [];

    /// <summary>The ids of the sources whose feed and return are one point, so that their current is that of a short circuit.</summary>
    public ImmutableArray<string> Shorted { get; init; } = [];

    /// <summary>Whether the currents close at every point to what rounding allows; where not, the figures are approximate.</summary>
    public bool IsExact { get; init; }

    /// <summary>The loads: all consumers but fields and other inner windings.</summary>
    public IEnumerable<ElementFigure> Loads => Elements.Where(e => e.Element.IsConsumer && !e.Element.IsInternal);

    /// <summary>The sources.</summary>
    public IEnumerable<ElementFigure> Sources => Elements.Where(e => e.Element.IsSource);

    /// <summary>The volts of a terminal against the return; <see langword="null"/> where it floats.</summary>
    /// <param name="terminal">The terminal by any of its marks, such as <c>K1.85</c>, or <c>X1</c> for a part that has only one.</param>
    /// <exception cref="ArgumentException">There is no such terminal; the message names the nearest.</exception>
    public ElectricPotential? VoltageAt(string terminal)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(terminal);
        var meant = End.Parse(terminal);
        if (Elements.FirstOrDefault(e => e.Part.Id == meant.Part)?.Part.Kind.TerminalNamed(meant.Terminal) is { } name) meant = End.At(meant.Part!, name);
        foreach (var figure in Terminals)
            if (figure.End == meant || (meant.Terminal.Length == 0 && figure.End.Part == meant.Part))
                return figure.Voltage;
        throw new ArgumentException($"There is no terminal \"{terminal}\"" + NearestName.Suggestion(terminal, Terminals.Select(t => t.End.ToString())), nameof(terminal));
    }

    /// <summary>What a conductor carries.</summary>
    /// <param name="id">Its id.</param>
    /// <exception cref="ArgumentException">There is no such conductor; the message names the nearest.</exception>
    public ConductorFigure Conductor(string id)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(id);
        return Conductors.FirstOrDefault(c => c.Conductor.Id == id)
            ?? throw new ArgumentException($"There is no conductor \"{id}\"" + NearestName.Suggestion(id, Conductors.Select(c => c.Conductor.Id)), nameof(id));
    }

    /// <summary>What an element carries.</summary>
    /// <param name="name">A load such as <c>H1</c> or <c>E3.tail</c>, or any element with its part: <c>G1.cells</c>, <c>S1.contact</c>.</param>
    /// <exception cref="ArgumentException">There is no such element; the message names the nearest.</exception>
    public ElementFigure Element(string name)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        return Elements.FirstOrDefault(e => e.Name == name) ?? Elements.FirstOrDefault(e => e.Part.Id + "." + e.Element.Name == name)
            ?? throw new ArgumentException($"There is no element \"{name}\"" + NearestName.Suggestion(name, Elements.Select(e => e.Name)), nameof(name));
    }

    /// <summary>The greatest current that enters a part by one of its terminals and passes what is in line within it: what a switch or a fuse carries. 0 or more.</summary>
    /// <param name="part">The part's id.</param>
    /// <exception cref="ArgumentException"><paramref name="part"/> is empty.</exception>
    public ElectricCurrent Through(string part)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(part);
        var inLine = Elements.Where(e => e.Part.Id == part && e.Element.IsInLine).ToArray();
        var entering = inLine.SelectMany(e => new[] { (e.Element.From, e.Current.Amperes), (e.Element.To, -e.Current.Amperes) })
            .GroupBy(e => e.Item1, e => e.Item2, StringComparer.Ordinal).Select(g => Math.Abs(g.Sum()));
        return ElectricCurrent.FromAmperes(entering.DefaultIfEmpty(0).Max());
    }
}
