using System.Collections.Immutable;
using System.Globalization;
using System.Reflection;

namespace Hotside.Diagnostics;

/// <summary>The kind of a finding: an occurrence refers to it. Kinds stand beside the code that reports them.</summary>
/// <param name="Code">Its code, never used again for another: HS1xxx reading, 2xxx circuit, 3xxx checks, 4xxx alteration, 5xxx output.</param>
/// <param name="Severity">How bad it is.</param>
/// <param name="Title">What it is, in a few words.</param>
/// <param name="Message">The message with places <c>{0}</c>, <c>{1}</c> … for what is wrong, in the user's words.</param>
public sealed record DiagnosticKind(string Code, Severity Severity, string Title, string Message)
{
    private static readonly Lazy<ImmutableArray<DiagnosticKind>> all = new(FindAll);

    /// <summary>All kinds that the library can report, by code.</summary>
    public static ImmutableArray<DiagnosticKind> All => all.Value;

    /// <summary>What it means, in a sentence or two.</summary>
    public string Meaning => DiagnosticExplanations.Of(Code).Meaning;

    /// <summary>What to do about it.</summary>
    public string Remedy => DiagnosticExplanations.Of(Code).Remedy;

    /// <summary>
    /// Lines of a job file that bring it about; empty where only a file of great size or a large circuit does. Unless they begin a file of their own they belong to a small
    /// horn circuit: battery G1, rail X1, fuse F1, horn H1, button S1, wires w1 to w5.
    /// </summary>
    public string Example => DiagnosticExplanations.Of(Code).Example;

    /// <summary>The source of the rule; <see langword="null"/> where it is the notation's own.</summary>
    public string? Source { get; init; }

    /// <summary>What it is about.</summary>
    public DiagnosticArea Area => Code[2] switch
    {
        '1' => DiagnosticArea.Reading,
        '2' => DiagnosticArea.Circuit,
        '3' => DiagnosticArea.Study,
        '4' => DiagnosticArea.Alteration,
        _ => DiagnosticArea.Output,
    };

    /// <summary>An occurrence at a place in a text.</summary>
    /// <param name="span">The place.</param>
    /// <param name="arguments">What the message's places stand for.</param>
    internal Diagnostic At(SourceSpan? span, params string[] arguments) => new(this, Text(arguments)) { Span = span };

    /// <summary>An occurrence at things in a circuit, by their ids; whoever has the file adds the place.</summary>
    /// <param name="items">Ids of parts and conductors, the culprit first.</param>
    /// <param name="arguments">What the message's places stand for.</param>
    internal Diagnostic Of(IEnumerable<string> items, params string[] arguments) => new(this, Text(arguments)) { Items = [.. items] };

    /// <summary>The kind of a code.</summary>
    /// <param name="code">The code, such as <c>HS1104</c>, in any case.</param>
    /// <returns>The kind, or <see langword="null"/> when there is none.</returns>
    public static DiagnosticKind? Find(string code)
    {
        ArgumentNullException.ThrowIfNull(code);
        return All.FirstOrDefault(k => string.Equals(k.Code, code, StringComparison.OrdinalIgnoreCase));
    }

    // Kinds stand beside the code that reports them, in all rooms; a list by hand would miss one some day.
    private static ImmutableArray<DiagnosticKind> FindAll() =>
    [
        .. typeof(DiagnosticKind).Assembly.GetTypes().SelectMany(t => t.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic))
            .Where(f => f.FieldType == typeof(DiagnosticKind)).Select(f => (DiagnosticKind)f.GetValue(null)!).OrderBy(k => k.Code, StringComparer.Ordinal),
    ];

    private string Text(string[] arguments) => string.Format(CultureInfo.InvariantCulture, Message, arguments);
}
