using Hotside.Diagnostics;

namespace Hotside.Notation;

/// <summary>What can be wrong with the file before any of it has a meaning.</summary>
internal static class YamlProblems
{
    public static readonly DiagnosticKind Syntax = new("HS1001", Severity.Error, "Not YAML", "the file's layout cannot be read here: {0}");
    public static readonly DiagnosticKind TooLarge = new("HS1002", Severity.Error, "File too large", "the file is longer than {0} characters");
    public static readonly DiagnosticKind TooDeep = new("HS1003", Severity.Error, "Nested too deeply", "lists and maps are nested deeper than {0}");
    public static readonly DiagnosticKind Alias = new("HS1004", Severity.Error, "Anchor or alias", "anchors (&) and aliases (*) are not part of the notation");
    public static readonly DiagnosticKind TwoDocuments = new("HS1005", Severity.Error, "Two documents", "a second document begins here; a job file is one document");
    public static readonly DiagnosticKind DuplicateKey = new("HS1006", Severity.Error, "Key given twice", "\"{0}\" is given twice");
    public static readonly DiagnosticKind Tab = new("HS1007", Severity.Error, "Tab for indentation", "this line is indented with a tab");
    public static readonly DiagnosticKind Control = new("HS1008", Severity.Error, "Control character", "there is a control character (U+{0}) here");
    public static readonly DiagnosticKind SwallowedByComment = new("HS1009", Severity.Warning, "Text taken as a comment", "\"{0}\" is taken as a comment");
    public static readonly DiagnosticKind SecondColon = new("HS1010", Severity.Error, "Second colon", "a second \": \" stands in this line");
    public static readonly DiagnosticKind LeadingQuote = new("HS1011", Severity.Error, "Quote at the start", "only the first piece of this line is in quotes");
    public static readonly DiagnosticKind KeyWithoutValue = new("HS1012", Severity.Error, "Comma within braces", "within {{ }} a comma ends the text, so \"{0}\" stands alone");
    public static readonly DiagnosticKind Empty = new("HS1013", Severity.Error, "Nothing there", "there is nothing in this file");
    public static readonly DiagnosticKind TooLong = new("HS1014", Severity.Error, "Text too long", "a text is longer than {0} characters");
    public static readonly DiagnosticKind TooMany = new("HS1015", Severity.Error, "Too much", "the file holds more than {0} texts");
    public static readonly DiagnosticKind NoColon = new("HS1021", Severity.Error, "Colon missing", "no colon and space stand behind \"{0}\"");
    public static readonly DiagnosticKind OutOfStep = new("HS1022", Severity.Error, "Indentation out of step", "this line begins neither where its section's lines do nor as a section of its own");
    public static readonly DiagnosticKind NotAJob = new("HS1023", Severity.Error, "Not a job file", "this is no job file: a job file is made of sections, such as \"parts:\" and \"wires:\"");
    public static readonly DiagnosticKind TagGiven = new("HS1016", Severity.Error, "Tag", "tags (!) are not part of the notation");
}
