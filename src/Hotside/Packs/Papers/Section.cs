using System.Collections.Immutable;

namespace Hotside.Packs.Papers;

/// <summary>A page of the pack in the sense of its list: what belongs together under one title, on as many sheets as it takes.</summary>
/// <param name="Key">Its name for files, such as <c>wire-list</c>.</param>
/// <param name="Title">Its title.</param>
/// <param name="Parts">What stands in it, in order.</param>
internal sealed record Section(string Key, string Title, ImmutableArray<FlowPart> Parts)
{
    /// <summary>What stands beside the title.</summary>
    public string Note { get; init; } = "";

    /// <summary>Whether it begins on a sheet of its own, since that sheet goes elsewhere: into the lid, to the owner.</summary>
    public bool IsApart { get; init; }

    /// <summary>Whether it begins on the sheet of the page before only where all of it finds room there.</summary>
    public bool IsWhole { get; init; }

    /// <summary>Whether its sheets lie, since its tables are too wide for standing ones.</summary>
    public bool IsLying { get; init; }

    /// <summary>Pictures in the place of parts: sheets of their own.</summary>
    public ImmutableArray<Drawing> Drawings { get; init; } = [];
}
