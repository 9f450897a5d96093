namespace Hotside.Diagnostics;

/// <summary>A stretch of text in a file; lines and columns count from 1, the end lies behind the last character.</summary>
/// <param name="File">The file as it was named, or <c>(text)</c>.</param>
/// <param name="Line">The line on which it begins.</param>
/// <param name="Column">The column at which it begins, in UTF-16 units.</param>
/// <param name="EndLine">The line on which it ends.</param>
/// <param name="EndColumn">The column behind its last character.</param>
public sealed record SourceSpan(string File, int Line, int Column, int EndLine, int EndColumn)
{
    /// <summary><c>file:line:column</c>, which editors make clickable.</summary>
    public override string ToString() => $"{File}:{Line}:{Column}";
}
