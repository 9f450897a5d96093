using Hotside.Diagnostics;

namespace Hotside.Notation;

/// <summary>One piece of a line between commas.</summary>
/// <param name="Text">The piece, trimmed; without its quotes.</param>
/// <param name="Span">Its place.</param>
internal sealed record LineItem(string Text, SourceSpan Span)
{
    /// <summary>Whether it stood in quotes, so that it is a name whatever it looks like.</summary>
    public bool IsQuoted { get; init; }

    /// <summary>Whether it is the reason of a change: the text behind <c>because</c>.</summary>
    public bool IsReason { get; init; }

    /// <summary>The place of some of its characters; the whole place where characters and columns do not run in step.</summary>
    public SourceSpan Part(int start, int length) =>
        Span.Line == Span.EndLine && Span.EndColumn - Span.Column == Text.Length && !IsQuoted
            ? Span with { Column = Span.Column + start, EndColumn = Span.Column + start + Math.Max(1, length) } : Span;

    /// <summary>The piece's words.</summary>
    public string[] Words => Text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
}
