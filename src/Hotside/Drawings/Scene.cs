using System.Collections.Immutable;
using Hotside.Symbols.Shapes;

namespace Hotside.Drawings;

/// <summary>A picture before it is written: shapes in groups, with what a reader who cannot see it is told.</summary>
/// <param name="Width">Width in units of 0.25 mm.</param>
/// <param name="Height">Height in units.</param>
/// <param name="Title">What it is.</param>
/// <param name="Description">What it shows, in sentences that replace the picture.</param>
/// <param name="Groups">What is drawn.</param>
internal sealed record Scene(double Width, double Height, string Title, string Description, ImmutableArray<SceneGroup> Groups)
{
    /// <summary>Language of the texts, a BCP 47 tag.</summary>
    public string Language { get; init; } = "en";

    /// <summary>Begins every id, so that several pictures fit into one page.</summary>
    public string Id { get; init; } = "hotside";

    /// <summary>The groups of a layer, in the order given.</summary>
    public IEnumerable<SceneGroup> In(Layer layer) => Groups.Where(g => g.Layer == layer);

    /// <summary>Stands for the number of sheets while nobody knows it.</summary>
    public const string SheetsUnknown = "???";

    /// <summary>The picture with the number of sheets filled in.</summary>
    public Scene OfSheets(string count) => this with
    {
        Title = Title.Replace(SheetsUnknown, count, StringComparison.Ordinal),
        Groups = [.. Groups.Select(g => g with { Shapes = [.. g.Shapes.Select(s => s is TextShape text && text.Text.EndsWith(SheetsUnknown, StringComparison.Ordinal) ? text with { Text = text.Text[..^SheetsUnknown.Length] + count } : s)] })],
    };
}
