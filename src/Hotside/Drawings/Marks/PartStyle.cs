namespace Hotside.Drawings.Marks;

/// <summary>What happens to a part, as far as its symbol shows it.</summary>
internal enum PartStyle
{
    /// <summary>It stays: ink.</summary>
    Kept,

    /// <summary>It goes: dashed, in the colour of taking out.</summary>
    TakenOut,

    /// <summary>It is fitted, or it has replaced another: heavy, in the colour of the new.</summary>
    New,

    /// <summary>Seen before: another will stand here. As light as what stays, in the colour that its number has afterwards too.</summary>
    ToBeReplaced,

    /// <summary>It stands elsewhere or its leads are swapped: heavy, in the colour of moving.</summary>
    Moved,
}
