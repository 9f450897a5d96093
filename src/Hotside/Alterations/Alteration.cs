using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Alterations;

/// <summary>The set of changes that turns a before circuit into an after circuit. Immutable.</summary>
public sealed record Alteration
{
    internal Alteration(string title, Circuit before, Circuit after, ImmutableArray<Change> changes)
    {
        Title = title;
        Before = before;
        After = after;
        Changes = changes;
    }

    /// <summary>What the alteration is called.</summary>
    public string Title { get; }

    /// <summary>The circuit as it was.</summary>
    public Circuit Before { get; }

    /// <summary>The circuit as it will be; the same object as <see cref="Before"/> where nothing changes.</summary>
    public Circuit After { get; }

    /// <summary>The changes in the order of work: what a change needs comes before it.</summary>
    public ImmutableArray<Change> Changes { get; }
}
