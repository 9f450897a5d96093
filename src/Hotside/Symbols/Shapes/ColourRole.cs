namespace Hotside.Symbols.Shapes;

/// <summary>What a colour means; a theme says which colour that is.</summary>
internal enum ColourRole
{
    /// <summary>Not painted.</summary>
    None,

    /// <summary>The sheet itself.</summary>
    Paper,

    /// <summary>Tint inside an enclosure.</summary>
    Panel,

    /// <summary>Symbols, texts, frame.</summary>
    Ink,

    /// <summary>What may be overlooked at first.</summary>
    Quiet,

    /// <summary>A conductor left as it is.</summary>
    Wire,

    /// <summary>Taken out.</summary>
    Out,

    /// <summary>Run new, fitted, replaced, renewed.</summary>
    New,

    /// <summary>Moved.</summary>
    Moved,

    /// <summary>The band under what carries current.</summary>
    Live,

    /// <summary>Follows the change of the part that the shape belongs to; ink where there is none.</summary>
    PartInk,
}
