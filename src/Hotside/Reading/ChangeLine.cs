using System.Collections.Immutable;
using Hotside.Diagnostics;
using Hotside.Notation;

namespace Hotside.Reading;

/// <summary>One change as written: the verb, the ids it names, and the line or map behind it.</summary>
/// <param name="Verb">The verb.</param>
/// <param name="VerbSpan">Its place.</param>
/// <param name="Ids">The ids, with their places.</param>
/// <param name="Items">The items behind the colon.</param>
/// <param name="Span">The place of the whole.</param>
internal sealed record ChangeLine(string Verb, SourceSpan VerbSpan, ImmutableArray<LineItem> Ids, ImmutableArray<LineItem> Items, SourceSpan Span)
{
    /// <summary>Whether the verb is followed by <c>reversed</c>.</summary>
    public bool Reversed { get; init; }

    /// <summary>The text behind the colon as it stands, for a sentence.</summary>
    public string Rest { get; init; } = "";
}
