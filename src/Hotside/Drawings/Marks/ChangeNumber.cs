using Hotside.Symbols.Shapes;

namespace Hotside.Drawings.Marks;

/// <summary>The number of a change with the colour that it has everywhere, on both sheets and in the list.</summary>
/// <param name="Text">The number.</param>
/// <param name="Colour">Its colour.</param>
internal sealed record ChangeNumber(string Text, ColourRole Colour);
