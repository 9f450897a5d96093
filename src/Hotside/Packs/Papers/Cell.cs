using Hotside.Symbols.Shapes;

namespace Hotside.Packs.Papers;

/// <summary>A cell of a table: a mark, a text, or both.</summary>
/// <param name="Text">The text; a line feed begins a new paragraph.</param>
internal sealed record Cell(string Text)
{
    /// <summary>A cell with a box to tick.</summary>
    public static readonly Cell Tick = new("") { Mark = Marks.TickBox };

    /// <summary>Nothing.</summary>
    public static readonly Cell Empty = new("");

    /// <summary>What stands before the text.</summary>
    public Piece Mark { get; init; } = Piece.Empty;

    /// <summary>What stands below the text in smaller letters; empty when nothing does.</summary>
    public string Note { get; init; } = "";

    /// <summary>Whether it is bold though its column is not.</summary>
    public bool IsBold { get; init; }

    /// <summary>A text is a cell.</summary>
    public static implicit operator Cell(string text) => new(text);
}
