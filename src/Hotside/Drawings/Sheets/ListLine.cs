using Hotside.Drawings.Marks;

namespace Hotside.Drawings.Sheets;

/// <summary>One line of the change list.</summary>
/// <param name="Number">The change's number and colour.</param>
/// <param name="Line">The line that the change is drawn with; <see langword="null"/> where there is only something to test or to mind.</param>
/// <param name="Text">What to do, as an order.</param>
internal sealed record ListLine(ChangeNumber Number, LineStyle? Line, string Text)
{
    /// <summary>The outline of the part that the change is about, in the place of a line; <see langword="null"/> where it is about wires.</summary>
    public PartStyle? Part { get; init; }

    /// <summary>Where it is drawn, to be told behind the text; empty where that need not be said.</summary>
    public string Place { get; init; } = "";
}
