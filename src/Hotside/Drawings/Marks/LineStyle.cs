namespace Hotside.Drawings.Marks;

/// <summary>What happens to a conductor; each has a line of its own.</summary>
internal enum LineStyle
{
    /// <summary>Left as is: medium, solid.</summary>
    Kept,

    /// <summary>Taken out: heavy, dashed.</summary>
    TakenOut,

    /// <summary>Run new: a double line.</summary>
    New,

    /// <summary>One end moved: as wide as the double line, solid.</summary>
    Moved,

    /// <summary>Renewed between the same ends, or to be: a double line with its core dashed.</summary>
    Renewed,

    /// <summary>Where a moved conductor lay: heavy, dotted, unlike what is taken out.</summary>
    WhereItLay,
}
