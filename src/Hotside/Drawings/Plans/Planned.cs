using Hotside.Circuits;
using Hotside.Drawings.Marks;
using Hotside.Layouts;
using Hotside.Symbols;
using Hotside.Symbols.Shapes;

namespace Hotside.Drawings.Plans;

/// <summary>A part as one view shows it.</summary>
/// <param name="Part">The part.</param>
/// <param name="Symbol">Its symbol.</param>
/// <param name="Text">Its text block, to stand right of the symbol.</param>
/// <param name="TextLeft">The same to stand left.</param>
/// <param name="Look">How its symbol shows what is done to it.</param>
/// <param name="IsReversed">Whether arrows beside it say that its leads are swapped.</param>
internal sealed record PartView(Part Part, Symbol Symbol, Piece Text, Piece TextLeft, PartStyle Look, bool IsReversed)
{
    /// <summary>The symbol with left and right exchanged, its pins at the mirrored places; <see langword="null"/> where it only stands as it is.</summary>
    public Symbol? Mirror { get; init; }

    /// <summary>The symbol as it stands in its place.</summary>
    public Symbol At(PlacedBox place, LayoutBox box)
    {
        var facing = place.Facing;
        var faced = facing.Mirrored ? Mirror ?? Symbol : facing.Ways.IsDefaultOrEmpty ? Symbol : Symbol.Sorted(box.Ways, facing.Ways);
        return place.Turned ? faced.TurnedOver() : faced;
    }
}

/// <summary>A box of the layout with what each view draws in it.</summary>
/// <param name="Box">The layout's name for it.</param>
/// <param name="PartId">The part's id.</param>
/// <param name="Before">What the before view shows; <see langword="null"/> when nothing.</param>
/// <param name="After">What the after view shows; <see langword="null"/> when nothing.</param>
internal sealed record PlannedPart(string Box, string PartId, PartView? Before, PartView? After)
{
    /// <summary>What sort of thing it is for the layout.</summary>
    public PlannedRole Role { get; init; }

    /// <summary>What the overlay shows; planned for an overlay only.</summary>
    public PartView? Overlay { get; init; }

    public PartView? In(SeenIn view) => view switch { SeenIn.Before => Before, SeenIn.After => After, _ => Overlay };

    /// <summary>What a view shows in one of two boxes, where the old part and its replacement have one each.</summary>
    public PartView? In(SeenIn view, bool isReplacement) =>
        view == SeenIn.Both && !BoxPlanner.Share(this) ? isReplacement ? After : Before : In(view);
}

/// <summary>What a part is for the layout.</summary>
internal enum PlannedRole
{
    /// <summary>A symbol.</summary>
    Symbol,

    /// <summary>A splice: a dot on its net.</summary>
    Splice,

    /// <summary>A stud: a ring on its net.</summary>
    Stud,

    /// <summary>A rail along its net.</summary>
    Rail,

    /// <summary>The feed rail at the top.</summary>
    FeedRail,

    /// <summary>The rail that is the return of an isolated system.</summary>
    ReturnRail,
}

/// <summary>A line of the layout with what each view says of it.</summary>
/// <param name="Line">The layout's name for it.</param>
/// <param name="Conductor">The conductor's id; <see langword="null"/> for a joint or a case lead.</param>
/// <param name="Before">What the before view shows.</param>
/// <param name="After">What the after view shows.</param>
internal sealed record PlannedLine(string Line, string? Conductor, LineView? Before, LineView? After)
{
    /// <summary>What the overlay shows; planned for an overlay only.</summary>
    public LineView? Overlay { get; init; }

    public LineView? In(SeenIn view) => view switch { SeenIn.Before => Before, SeenIn.After => After, _ => Overlay };
}

/// <summary>A line as one view shows it.</summary>
/// <param name="Label">Its label.</param>
/// <param name="Number">Its change.</param>
/// <param name="State">Its look.</param>
/// <param name="Title">What a reader is told.</param>
internal sealed record LineView(string Label, ChangeNumber? Number, LineStyle State, string Title)
{
    /// <summary>Whether it is marked as carrying current.</summary>
    public bool IsLive { get; init; }

    /// <summary>What its ends are called; empty where its label need not say so.</summary>
    public (string From, string To) Ends { get; init; } = ("", "");

    /// <summary>Its label with the name of an end where the line does not show which it is.</summary>
    public string LabelNaming(NamedEnd end) => end switch { NamedEnd.From => $"{Label} to {Ends.From}", NamedEnd.To => $"{Label} to {Ends.To}", _ => Label };

    /// <summary>Whether its label says what the sign at its end stands for.</summary>
    public bool NamesSign { get; init; }
}
