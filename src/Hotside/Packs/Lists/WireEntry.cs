using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Wording;
using UnitsNet;

namespace Hotside.Packs.Lists;

/// <summary>A wire as the wire list, the cut list and the labels have it.</summary>
/// <param name="Conductor">The wire: as it will be, or as it was for one that is taken out.</param>
/// <param name="State">What becomes of it.</param>
internal sealed record WireEntry(Conductor Conductor, ConductorState State)
{
    /// <summary>Its ends, as ids and terminals.</summary>
    public required (string From, string To) Ends { get; init; }

    /// <summary>What goes on each end, as far as it is known.</summary>
    public required (string From, string To) Terminals { get; init; }

    /// <summary>Which ends get a new terminal.</summary>
    public required (bool From, bool To) New { get; init; }

    /// <summary>The numbers of the changes that concern it.</summary>
    public required ImmutableArray<int> Numbers { get; init; }

    /// <summary>What becomes of it, in words.</summary>
    public required string Change { get; init; }

    /// <summary>Its id.</summary>
    public string Id => Conductor.Id;

    /// <summary>What it is made of.</summary>
    public Wire Wire => Conductor.Wire;

    /// <summary>Where it runs: its loom, or its place in words.</summary>
    public string Path => Wire.Loom ?? Wire.Place ?? "";

    /// <summary>Its size with the unit; its name where it has none.</summary>
    public string Size => Wire.Size?.ToString() ?? Wire.Name ?? "not known";

    /// <summary>Whether it will be in the vehicle.</summary>
    public bool IsThere => State != ConductorState.TakenOut;

    /// <summary>Whether new wire is cut for it.</summary>
    public bool IsCutNew { get; private init; }

    /// <summary>How long it is cut, loops at its ends included; <see langword="null"/> when it is not measured.</summary>
    public Length? CutLength => Lengths.Cut(Wire);

    /// <summary>All wires: those that will be there by where they run, then by id; then those that are taken out.</summary>
    public static ImmutableArray<WireEntry> All(Alteration alteration)
    {
        var after = alteration.After.Conductors.Select(c => Of(c, alteration.After, alteration));
        var gone = alteration.Before.Conductors.Where(c => alteration.After.FindConductor(c.Id) is null).Select(c => Of(c, alteration.Before, alteration));
        return
        [
            .. after.OrderBy(w => w.Path.Length == 0 ? 1 : 0).ThenBy(w => w.Path, NaturalOrder.Instance).ThenBy(w => w.Id, NaturalOrder.Instance),
            .. gone.OrderBy(w => w.Id, NaturalOrder.Instance),
        ];
    }

    private static WireEntry Of(Conductor wire, Circuit circuit, Alteration alteration)
    {
        var state = alteration.StateOfConductor(wire.Id);
        var was = alteration.Before.FindConductor(wire.Id);
        // The other half of a wire that is cut is old wire, whose cut end is new.
        bool isHalf = alteration.Changes.SelectMany(c => c.Acts).OfType<Cut>().Any(c => c.Items[1] == wire.Id);
        bool isCutNew = !isHalf && state is ConductorState.RunNew or ConductorState.Renewed or ConductorState.MovedAndRenewed;
        bool IsNew(End end) => state != ConductorState.TakenOut && (isCutNew || (isHalf && end == wire.From) || (was is not null && !was.Ends.Contains(end) && state is not ConductorState.LeftAsIs));
        return new(wire, state)
        {
            Ends = (circuit.TextOf(wire.From), circuit.TextOf(wire.To)),
            Terminals = (TerminalFinder.Of(wire.From, circuit), TerminalFinder.Of(wire.To, circuit)),
            New = (IsNew(wire.From), IsNew(wire.To)),
            Numbers = alteration.NumbersOf(wire.Id),
            Change = WireChangeText.Of(wire.Id, alteration),
            IsCutNew = isCutNew,
        };
    }
}
