using Hotside.Packs.Papers;

namespace Hotside.Packs.Pages;

/// <summary>The schematics: before and after on one sheet where a paper that folds into the pack holds them, else a set of sheets with an overview.</summary>
internal static class SchematicPage
{
    public const string Key = "schematics";

    /// <summary>The sheets.</summary>
    /// <param name="source">The job.</param>
    /// <param name="first">The number of the first of them.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="ArgumentException">The paper that was asked for is too small for parts of the drawing.</exception>
    public static Section Of(PackSource source, int first, CancellationToken cancel)
    {
        DrawingOptions options = new() { Theme = source.Options.Theme, Text = source.Options.Text, Words = source.Options.Words, FirstSheet = first };
        var drawings = source.Options.Schematics is { } page ? source.Job.DrawSheets(View.Pair, options with { Page = page }, cancel)
            : source.Options.Page == Page.Letter ? source.Job.DrawFolded(View.Pair, [Page.Letter, Page.Tabloid], [Page.Tabloid, Page.A2, Page.A1], Page.Letter, options, cancel)
            : source.Job.DrawFolded(View.Pair, [Page.A4, Page.A3], [Page.A3, Page.A2, Page.A1], Page.A4, options, cancel);
        return new(Key, source.IsAltered ? "Schematics, before and after" : "Schematics", []) { Drawings = drawings };
    }
}
