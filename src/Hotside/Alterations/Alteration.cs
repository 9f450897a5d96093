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

    /// <summary>The alteration between two circuits that were written apart. Parts and conductors are matched by id.</summary>
    /// <remarks>
    /// A wire with one end on another part is moved; one whose rest runs on from an inserted part, with no length stated, is cut. A part with two
    /// terminals whose wires traded places is reversed. Changes stand in a fixed order, adjusted to the order of work, without reasons.
    /// </remarks>
    /// <param name="before">The circuit as it was.</param>
    /// <param name="after">The circuit as it will be; it becomes <see cref="After"/>, its ids changed by <paramref name="same"/>.</param>
    /// <param name="title">What the alteration is called.</param>
    /// <param name="same">Pairs of ids that mean the same part or conductor; both circuits then have the one before.</param>
    /// <exception cref="ArgumentException">A pair names what does not exist, or makes an id stand for two things.</exception>
    public static Alteration Between(Circuit before, Circuit after, string title, params (string Before, string After)[] same)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        ArgumentNullException.ThrowIfNull(title);
        ArgumentNullException.ThrowIfNull(same);
        (before, var renamed) = SharedMarks.Of(before, CircuitRenaming.Of(before, after, same));
        var acts = CircuitComparison.Acts(before, renamed);
        var order = OrderOfWork.Of(before, renamed, acts);
        return new(title, before, renamed, [.. order.Groups.Select((group, i) => new Change(i + 1, acts[group], null))]);
    }

    /// <summary>What the alteration is called.</summary>
    public string Title { get; }

    /// <summary>The circuit as it was.</summary>
    public Circuit Before { get; }

    /// <summary>The circuit as it will be; the same object as <see cref="Before"/> where nothing changes.</summary>
    public Circuit After { get; }

    /// <summary>The changes in the order of work: what a change needs comes before it.</summary>
    public ImmutableArray<Change> Changes { get; }

    /// <summary>The alteration of which this is an excerpt; itself where it is none.</summary>
    internal Alteration Whole { get => field ?? this; private init; }

    /// <summary>The alteration as it was planned, where something was fitted otherwise; else <see langword="null"/>.</summary>
    internal Alteration? Plan { get; init; }

    /// <summary>What was fitted otherwise, from the planned after circuit on; else <see langword="null"/>.</summary>
    internal Alteration? Otherwise { get; init; }

    /// <summary>What stands in the triangles of a part or conductor, with commas between: <c>4</c>, <c>4,A1</c>; empty where nothing changes it.</summary>
    /// <param name="id">The id of a part or conductor.</param>
    public string LabelsOf(string id)
    {
        var all = NumbersOf(id);
        return all.IsEmpty ? "" : string.Join(",", all.Select(n => Changes.First(c => c.Number == n).Label));
    }

    /// <summary>The changes to what is left of both circuits; they keep their numbers.</summary>
    internal Alteration Only(Circuit before, Circuit after)
    {
        bool IsShown(string id) => new[] { before, after }.Any(c => c.FindPart(id) is not null || c.FindConductor(id) is not null);
        var shown = Changes.Select(c => c with { Acts = [.. c.Acts.Select(a => Of(a, IsShown)).OfType<Act>()] }).Where(c => !c.Acts.IsEmpty);
        return new(Title, before, after, [.. shown]) { Whole = Whole };
    }

    // What is done to many at once is told of those that are shown; a cut names both halves.
    private static Act? Of(Act act, Predicate<string> isShown)
    {
        ImmutableArray<string> items = [.. act.Items.Where(i => isShown(i))];
        return items.IsEmpty ? null : act is TakeOut or Fit or Replace or Renew ? act with { Items = items } : act;
    }

    /// <summary>The same alteration with other settings of its circuits.</summary>
    internal Alteration With(ImmutableArray<Setting> before, ImmutableArray<Setting> after)
    {
        var was = Before.With(before);
        bool isSame = ReferenceEquals(Before, After) && before.SequenceEqual(after);
        var now = After.Sequences.IsEmpty ? After.With(Before.Sequences) : After;
        return new(Title, was, isSame ? was : now.With(after), Changes) { Plan = Plan, Otherwise = Otherwise };
    }

    /// <summary>The same alteration with other sequences of its circuits.</summary>
    internal Alteration With(ImmutableArray<Sequence> before, ImmutableArray<Sequence> after)
    {
        var was = Before.With(before);
        return new(Title, was, ReferenceEquals(Before, After) ? was : After.With(after), Changes) { Plan = Plan, Otherwise = Otherwise };
    }

    /// <summary>What becomes of a part.</summary>
    /// <param name="partId">The id of a part of either circuit.</param>
    /// <exception cref="ArgumentException">Neither circuit has such a part.</exception>
    public PartState StateOf(string partId)
    {
        ArgumentNullException.ThrowIfNull(partId);
        return Before.FindPart(partId) is not null || After.FindPart(partId) is not null ? states.Value.OfPart(partId)
        : throw new ArgumentException(Unknown("part", partId, Before.Parts.Concat(After.Parts).Select(p => p.Id)), nameof(partId));
    }

    /// <summary>What becomes of a conductor.</summary>
    /// <param name="conductorId">The id of a conductor of either circuit.</param>
    /// <exception cref="ArgumentException">Neither circuit has such a conductor.</exception>
    public ConductorState StateOfConductor(string conductorId)
    {
        ArgumentNullException.ThrowIfNull(conductorId);
        return Before.FindConductor(conductorId) is not null || After.FindConductor(conductorId) is not null ? states.Value.OfConductor(conductorId)
        : throw new ArgumentException(
            Unknown("conductor", conductorId, Before.Conductors.Concat(After.Conductors).Select(c => c.Id)), nameof(conductorId));
    }

    /// <summary>The numbers of the changes that concern a part or conductor, in order; empty when none does, and for an id that neither circuit has.</summary>
    /// <param name="id">The id of a part or conductor.</param>
    public ImmutableArray<int> NumbersOf(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return states.Value.NumbersOf(id);
    }

    private static string Unknown(string sort, string id, IEnumerable<string> known) =>
        $"There is no {sort} \"{id}\" before or after" + NearestName.Suggestion(id, known);
}
