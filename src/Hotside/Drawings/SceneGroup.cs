using System.Collections.Immutable;
using Hotside.Symbols.Shapes;

namespace Hotside.Drawings;

/// <summary>Shapes that belong together: a part, a conductor, a mark, a piece of the sheet.</summary>
/// <param name="Layer">When it is painted.</param>
/// <param name="Shapes">Its shapes, painted before its children.</param>
internal sealed record SceneGroup(Layer Layer, ImmutableArray<Shape> Shapes)
{
    /// <summary>Its id without the scene's prefix; any text, made a valid and unique id when written.</summary>
    public string? Id { get; init; }

    /// <summary>Class names without their prefix, such as <c>part</c>.</summary>
    public ImmutableArray<string> Classes { get; init; } = [];

    /// <summary>Names (small letters) and values of its data attributes, in the order written.</summary>
    public ImmutableArray<(string Name, string Value)> Data { get; init; } = [];

    /// <summary>Which circuit's picture it belongs to; <see langword="null"/> for what belongs to the sheet.</summary>
    public View? View { get; init; }

    /// <summary>What a reader is told about it.</summary>
    public string? Title { get; init; }

    /// <summary>Groups inside it.</summary>
    public ImmutableArray<SceneGroup> Children { get; init; } = [];

    /// <summary>Furniture that a reader who cannot see it need not hear of.</summary>
    public bool AriaHidden { get; init; }
}
