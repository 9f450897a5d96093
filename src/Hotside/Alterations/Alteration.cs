using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Alterations;

/// <summary>The set of changes that turns a before circuit into an after circuit. Immutable.</summary>
public sealed record Alteration
{
    private readonly Lazy<ItemStates> states;

    internal Alteration(string title, Circuit before, Circuit after, ImmutableArray<Change> changes)
    {
        Title = title;
        Before = before;
        After = after;
        Changes = changes;
        states = new(() => new ItemStates(this));
    }

    /// <summary>What the alteration is called.</summary>
    public string Title { get; }

    /// <summary>The circuit as it was.</summary>
    public Circuit Before { get; }

    /// <summary>The circuit as it will be; the same object as <see cref="Before"/> where nothing changes.</summary>
    public Circuit After { get; }

    /// <summary>The changes in the order of work: what a change needs comes before it.</summary>
    public ImmutableArray<Change> Changes { get; }

    /// <summary>What becomes of a part.</summary>
    /// <param name="partId">The id of a part of either circuit.</param>
    /// <exception cref="ArgumentException">Neither circuit has such a part.</exception>
    public PartState StateOf(string partId) =>
        Before.FindPart(partId) is not null || After.FindPart(partId) is not null ? states.Value.OfPart(partId)
        : throw new ArgumentException(Unknown("part", partId, Before.Parts.Concat(After.Parts).Select(p => p.Id)), nameof(partId));

    /// <summary>What becomes of a conductor.</summary>
    /// <param name="conductorId">The id of a conductor of either circuit.</param>
    /// <exception cref="ArgumentException">Neither circuit has such a conductor.</exception>
    public ConductorState StateOfConductor(string conductorId) =>
        Before.FindConductor(conductorId) is not null || After.FindConductor(conductorId) is not null ? states.Value.OfConductor(conductorId)
        : throw new ArgumentException(
            Unknown("conductor", conductorId, Before.Conductors.Concat(After.Conductors).Select(c => c.Id)), nameof(conductorId));

    /// <summary>The numbers of the changes that concern a part or conductor, in order; empty when none does.</summary>
    /// <param name="id">The id of a part or conductor.</param>
    public ImmutableArray<int> NumbersOf(string id) => states.Value.NumbersOf(id);

    private static string Unknown(string sort, string id, IEnumerable<string> known) =>
        $"There is no {sort} \"{id}\" before or after" + (NearestName.Of(id, known) is { } near ? $"; did you mean \"{near}\"?" : ".");
}
