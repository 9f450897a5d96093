using Hotside.Diagnostics;

namespace Hotside.Kinds;

/// <summary>What can be wrong with a part kind.</summary>
internal static class KindProblems
{
    public static readonly DiagnosticKind NoId = new("HS1201", Severity.Error, "Kind without a name", "a kind's file names it in the key \"kind\"");
    public static readonly DiagnosticKind UnknownKey = new("HS1202", Severity.Error, "Unknown key", "a kind has no key \"{0}\"");
    public static readonly DiagnosticKind WrongShape = new("HS1203", Severity.Error, "Wrong shape", "\"{0}\" must be {1}");
    public static readonly DiagnosticKind UnknownLike = new("HS1204", Severity.Error, "Unknown kind", "there is no kind \"{0}\" to be like");
    public static readonly DiagnosticKind BadTerminal = new("HS1205", Severity.Error, "Terminal not understood", "\"{0}\" is no side of a symbol");
    public static readonly DiagnosticKind BadName = new("HS1206", Severity.Error, "Name not allowed", "\"{0}\" is no name; names are letters, digits, - and _, terminals may have + and (n)");
    public static readonly DiagnosticKind BadElement = new("HS1207", Severity.Error, "Element not understood", "an element is \"type, A to B, items, when …\", not \"{0}\"");
    public static readonly DiagnosticKind UnknownType = new("HS1208", Severity.Error, "Unknown element", "there is no element type \"{0}\"");
    public static readonly DiagnosticKind UnknownEnd = new("HS1209", Severity.Error, "Unknown end", "the element \"{0}\" ends on \"{1}\", which is no terminal, inner node or case");
    public static readonly DiagnosticKind UnknownItem = new("HS1210", Severity.Error, "Unknown item", "\"{0}\" is no item of {1}");
    public static readonly DiagnosticKind UnknownActuator = new("HS1211", Severity.Error, "Unknown actuator", "\"{0}\" is no actuator or coil of this kind");
    public static readonly DiagnosticKind UnknownPosition = new("HS1212", Severity.Error, "Unknown position", "\"{0}\" is no position of {1}");
    public static readonly DiagnosticKind BadActuator = new("HS1213", Severity.Error, "Actuator not understood", "an actuator is \"position / position, how it moves\", rest first, not \"{0}\"");
    public static readonly DiagnosticKind BadRating = new("HS1214", Severity.Error, "Rating not understood", "the rating \"{0}\" ends in no unit");
    public static readonly DiagnosticKind UnknownElement = new("HS1215", Severity.Error, "Unknown element", "\"{0}\" is no element of this kind");
    public static readonly DiagnosticKind BadWord = new("HS1216", Severity.Error, "Word not allowed", "\"{0}\" is no word for {1}");
    public static readonly DiagnosticKind BadWays = new("HS1217", Severity.Error, "Ways not understood", "ways are a range such as \"1 to 60\", not \"{0}\"");
    public static readonly DiagnosticKind WhenNotLast = new("HS1218", Severity.Error, "Condition not last", "\"when\" takes the rest of the line, so it swallows \"{0}\"");
    public static readonly DiagnosticKind UnknownRating = new("HS1219", Severity.Error, "Unknown rating", "\"{0}\" is no rating of this kind");
    public static readonly DiagnosticKind BadDefault = new("HS1220", Severity.Error, "Default not understood", "a default is a value with where it is from, not \"{0}\"");
}
