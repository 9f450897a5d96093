using System.Collections.Immutable;

namespace Hotside;

/// <summary>A sheet of paper of a work pack.</summary>
/// <param name="Number">Its number, from 1.</param>
/// <param name="Name">Its name for a file, such as <c>03-changes</c>: its number and the page that begins or goes on on it.</param>
/// <param name="Drawing">What is on it.</param>
public sealed record PackSheet(int Number, string Name, Drawing Drawing)
{
    /// <summary>The pages that begin on it: their names, and how far down in millimetres.</summary>
    internal ImmutableArray<(string Key, double Top)> Begins { get; init; } = [];
}

/// <summary>A page of a work pack in the sense of its list: what belongs together under one title.</summary>
/// <param name="Key">Its name, one of <see cref="WorkPack.AllPages"/>.</param>
/// <param name="Title">Its title.</param>
/// <param name="FirstSheet">The sheet on which it begins.</param>
/// <param name="LastSheet">The sheet on which it ends.</param>
public sealed record PackPage(string Key, string Title, int FirstSheet, int LastSheet);
