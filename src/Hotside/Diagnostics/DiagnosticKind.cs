using System.Globalization;

namespace Hotside.Diagnostics;

/// <summary>The kind of a finding: an occurrence refers to it. Kinds stand beside the code that reports them.</summary>
/// <param name="Code">Its code, never used again for another: HS1xxx reading, 2xxx circuit, 3xxx checks, 4xxx alteration, 5xxx output.</param>
/// <param name="Severity">How bad it is.</param>
/// <param name="Title">What it is, in a few words.</param>
/// <param name="Message">The message with places <c>{0}</c>, <c>{1}</c> … for what is wrong, in the user's words.</param>
public sealed record DiagnosticKind(string Code, Severity Severity, string Title, string Message)
{
    /// <summary>The source of the rule; <see langword="null"/> where it is the notation's own.</summary>
    public string? Source { get; init; }

    /// <summary>An occurrence at a place in a text.</summary>
    /// <param name="span">The place.</param>
    /// <param name="arguments">What the message's places stand for.</param>
    internal Diagnostic At(SourceSpan? span, params string[] arguments) => new(this, Text(arguments)) { Span = span };

    /// <summary>An occurrence at things in a circuit, by their ids; whoever has the file adds the place.</summary>
    /// <param name="items">Ids of parts and conductors, the culprit first.</param>
    /// <param name="arguments">What the message's places stand for.</param>
    internal Diagnostic Of(IEnumerable<string> items, params string[] arguments) => new(this, Text(arguments)) { Items = [.. items] };

    private string Text(string[] arguments) => string.Format(CultureInfo.InvariantCulture, Message, arguments);
}
