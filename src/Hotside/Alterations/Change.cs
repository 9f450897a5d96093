using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Alterations;

/// <summary>One numbered change: what stands in one triangle on the drawing and in one line of the list.</summary>
/// <param name="Number">Its number, from 1 in the order of work.</param>
/// <param name="Acts">What is done; more than one where a list stands under one number.</param>
/// <param name="Reason">Why, in the user's words; <see langword="null"/> when not said.</param>
public sealed record Change(int Number, ImmutableArray<Act> Acts, string? Reason)
{
    /// <summary>What stands in its triangle: its number, or A and a number of its own for what was fitted otherwise than planned.</summary>
    public string Label { get => field ?? Numbers.Whole(Number); internal init; }
}

/// <summary>Something done to parts or conductors.</summary>
/// <param name="Items">The ids concerned, as the list has them.</param>
public abstract record Act(ImmutableArray<string> Items);

/// <summary>Parts and conductors taken out.</summary>
/// <param name="Items">Their ids.</param>
public sealed record TakeOut(ImmutableArray<string> Items) : Act(Items);

/// <summary>Parts fitted.</summary>
/// <param name="Items">Their ids; all of one specification.</param>
public sealed record Fit(ImmutableArray<string> Items) : Act(Items);

/// <summary>Parts replaced.</summary>
/// <param name="Items">Their ids.</param>
/// <param name="Reversed">Whether their leads are swapped as well.</param>
public sealed record Replace(ImmutableArray<string> Items, bool Reversed) : Act(Items);

/// <summary>A part's leads swapped.</summary>
/// <param name="Items">Its id.</param>
public sealed record Reverse(ImmutableArray<string> Items) : Act(Items);

/// <summary>A part's case put on something else.</summary>
/// <param name="Items">Its id.</param>
public sealed record Remount(ImmutableArray<string> Items) : Act(Items);

/// <summary>A conductor run new.</summary>
/// <param name="Items">Its id.</param>
public sealed record Run(ImmutableArray<string> Items) : Act(Items);

/// <summary>A conductor moved.</summary>
/// <param name="Items">Its id.</param>
/// <param name="Ends">Each end that goes elsewhere: where it was, as the before circuit has it, and where it is.</param>
/// <param name="IsRenewed">Whether size or colour change as well.</param>
public sealed record Move(ImmutableArray<string> Items, ImmutableArray<MovedEnd> Ends, bool IsRenewed) : Act(Items);

/// <summary>Where one end of a conductor was and where it is.</summary>
/// <param name="From">Its place in the before circuit.</param>
/// <param name="To">Its place in the after circuit.</param>
public sealed record MovedEnd(End From, End To);

/// <summary>Conductors renewed between the same ends.</summary>
/// <param name="Items">Their ids.</param>
public sealed record Renew(ImmutableArray<string> Items) : Act(Items);

/// <summary>A conductor cut to insert something.</summary>
/// <param name="Items">The id of the cut conductor, then that of its other half.</param>
/// <param name="First">Where the cut conductor now ends.</param>
/// <param name="Second">Where its other half begins.</param>
public sealed record Cut(ImmutableArray<string> Items, End First, End Second) : Act(Items);

/// <summary>Work that changes no circuit.</summary>
/// <param name="Items">The part it is done to.</param>
/// <param name="Sentence">What to do.</param>
public sealed record Work(ImmutableArray<string> Items, string Sentence) : Act(Items)
{
    /// <summary>Whether it only says what became of a planned change, and asks for nothing.</summary>
    internal bool IsRemark { get; init; }
}
