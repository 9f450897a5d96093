namespace Hotside.Symbols;

/// <summary>The side of a symbol on which a wire leaves.</summary>
internal enum SymbolSide
{
    /// <summary>Towards the feed.</summary>
    Top,

    /// <summary>Towards the chassis.</summary>
    Bottom,

    /// <summary>To the left.</summary>
    Left,

    /// <summary>To the right.</summary>
    Right,

    /// <summary>Any side: a splice, a stud.</summary>
    Any,
}
