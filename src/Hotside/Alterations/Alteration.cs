using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Alterations;

/// <summary>The set of changes that turns a before circuit into an after circuit. Immutable.</summary>
public sealed record Alteration
{
    internal Alteration(string title, Circuit before, Circuit after, ImmutableArray<Change> changes)
    {
        Title = title;
        Before = before;
        After = after;
        Changes = changes;
    }

    /// <summary>What the alteration is called.</summary>
    public string Title { get; }

    /// <summary>The circuit as it was.</summary>
    public Circuit Before { get; }

    /// <summary>The circuit as it will be; the same object as <see cref="Before"/> where nothing changes.</summary>
    public Circuit After { get; }

    /// <summary>The changes in the order of work: what a change needs comes before it.</summary>
    public ImmutableArray<Change> Changes { get; }

    /// <summary>The numbers of the changes that concern a part or a conductor, in order.</summary>
    /// <param name="id">The id of a part or a conductor.</param>
    public ImmutableArray<int> NumbersOf(string id) => [.. Changes.Where(c => c.Acts.Any(a => a.Items.Contains(id))).Select(c => c.Number)];

    /// <summary>What is done to a part.</summary>
    /// <param name="id">The part's id, of either circuit.</param>
    /// <exception cref="ArgumentException">Neither circuit has such a part.</exception>
    public PartState StateOf(string id)
    {
        if (Before.FindPart(id) is null)
            return After.FindPart(id) is null ? throw new ArgumentException($"There is no part \"{id}\".", nameof(id)) : PartState.Fitted;
        if (After.FindPart(id) is null) return PartState.TakenOut;
        return ActsOn(id).Select(a => a switch
        {
            Replace { Reversed: true } => PartState.ReplacedReversed,
            Replace => PartState.Replaced,
            Reverse => PartState.Reversed,
            Remount => PartState.Remounted,
            _ => PartState.Left,
        }).DefaultIfEmpty(PartState.Left).Max();
    }

    /// <summary>What is done to a conductor.</summary>
    /// <param name="id">The conductor's id, of either circuit.</param>
    /// <exception cref="ArgumentException">Neither circuit has such a conductor.</exception>
    public ConductorState StateOfConductor(string id)
    {
        if (Before.FindConductor(id) is null)
            return After.FindConductor(id) is null ? throw new ArgumentException($"There is no conductor \"{id}\".", nameof(id)) : ConductorState.RunNew;
        if (After.FindConductor(id) is null) return ConductorState.TakenOut;
        var acts = ActsOn(id).ToArray();
        if (acts.OfType<Move>().Any(m => m.Ends.Length > 1)) return ConductorState.UsedElsewhere;
        bool moved = acts.Any(a => a is Move or Cut), renewed = acts.Any(a => a is Renew or Move { IsRenewed: true });
        return moved ? renewed ? ConductorState.MovedAndRenewed : ConductorState.Moved : renewed ? ConductorState.Renewed : ConductorState.LeftAsIs;
    }

    private IEnumerable<Act> ActsOn(string id) => Changes.SelectMany(c => c.Acts).Where(a => a.Items.Contains(id));
}
