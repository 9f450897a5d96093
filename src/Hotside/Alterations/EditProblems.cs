using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Alterations;

/// <summary>Where an edit stands: the index of its group and its own within the group.</summary>
internal readonly record struct Spot(int Group, int Edit)
{
    /// <summary>No line of the list.</summary>
    public static Spot None { get; } = new(-1, -1);
}

/// <summary>Collects what is wrong with an edit list, and remembers what is broken so that mere consequences stay silent.</summary>
internal sealed class EditProblems
{
    private readonly List<(Diagnostic Diagnostic, Spot Spot)> found = [];
    private readonly HashSet<string> broken = new(StringComparer.Ordinal);

    private bool isUnread;

    /// <summary>Whether any error was found.</summary>
    public bool HasError => isUnread || found.Any(f => f.Diagnostic.Severity >= Severity.Error);

    /// <summary>Whether something about a part or conductor is wrong already.</summary>
    public bool IsBroken(string? id) => id is not null && broken.Contains(id);

    /// <summary>Marks items as wrong without saying so: whoever read the line has said it.</summary>
    public void Break(IEnumerable<string> ids)
    {
        isUnread = true;
        broken.UnionWith(ids);
    }

    /// <summary>Adds a problem; an error breaks the item that it names first.</summary>
    public void Add(Spot spot, Diagnostic diagnostic)
    {
        found.Add((diagnostic, spot));
        if (diagnostic.Severity >= Severity.Error && diagnostic.Items is [var culprit, ..]) broken.Add(culprit);
    }

    /// <summary>All problems by their place in the list, then by code.</summary>
    public ImmutableArray<(Diagnostic, int, int)> InOrder() =>
        [.. found.OrderBy(f => f.Spot.Group).ThenBy(f => f.Spot.Edit).ThenBy(f => f.Diagnostic.Code, StringComparer.Ordinal)
            .Select(f => (f.Diagnostic, f.Spot.Group, f.Spot.Edit))];

    /// <summary>A hint with the name that was most likely meant.</summary>
    public static string? DidYouMean(string name, IEnumerable<string> candidates) =>
        NearestName.Of(name, candidates) is { } near && near != name ? $"did you mean {near}?" : null;
}
