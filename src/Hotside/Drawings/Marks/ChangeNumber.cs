using System.Collections.Immutable;
using Hotside.Symbols.Shapes;

namespace Hotside.Drawings.Marks;

/// <summary>The number of a change with the colour that it has everywhere, in both views and in the list.</summary>
/// <param name="Text">The number, or several with commas between.</param>
/// <param name="Colour">Its colour; of several that of the first.</param>
internal sealed record ChangeNumber(string Text, ColourRole Colour)
{
    /// <summary>The colour of each of several.</summary>
    public ImmutableArray<ColourRole> Colours { get; init; } = [Colour];
}
