using Hotside.Circuits;
using Hotside.Drawings.Charts;
using Hotside.Symbols.Texts;

namespace Hotside;

/// <summary>Draws kinds of parts by themselves: one with its terminals, or many on a sheet.</summary>
public static class KindSheet
{
    /// <summary>Draws the symbol chart of some kinds: by class, each with its terminals, its id and what it is called; on the smallest sheet of the A series that holds them, larger where none does.</summary>
    /// <param name="kinds">The kinds; they come in the order of their classes, and in the order given within a class.</param>
    /// <param name="options">Colours and words.</param>
    /// <returns>The picture, to be written by one of the outputs.</returns>
    /// <exception cref="ArgumentException"><paramref name="kinds"/> is empty or holds a null.</exception>
    public static Drawing Of(IEnumerable<PartKind> kinds, DrawingOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(kinds);
        options ??= new();
        PartKind[] all = [.. kinds];
        if (all.Length == 0 || all.Contains(null)) throw new ArgumentException("A chart shows at least one kind, and none of them is null.", nameof(kinds));
        return new(KindChart.Of(all, options.Words, Lettering.Normal), View.After, options.Theme);
    }

    /// <summary>Draws one kind with its terminals named and listed.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="options">Colours and words.</param>
    /// <returns>The picture, to be written by one of the outputs.</returns>
    public static Drawing Of(PartKind kind, DrawingOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(kind);
        options ??= new();
        return new(KindCard.Of(kind, options.Words, Lettering.Normal), View.After, options.Theme);
    }
}
