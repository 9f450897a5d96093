using Hotside.Diagnostics;

namespace Hotside.Reading;

/// <summary>What can be wrong with the sections of a job file.</summary>
internal static class ReadingProblems
{
    public static readonly DiagnosticKind UnknownSection = new("HS1101", Severity.Error, "Unknown section", "a job file has no section \"{0}\"");
    public static readonly DiagnosticKind WrongShape = new("HS1102", Severity.Error, "Wrong shape", "\"{0}\" must be {1}");
    public static readonly DiagnosticKind UnknownPart = new("HS1103", Severity.Error, "Unknown part", "there is no part \"{0}\"");
    public static readonly DiagnosticKind UnknownTerminal = new("HS1104", Severity.Error, "Unknown terminal", "{0} has no terminal \"{1}\"");
    public static readonly DiagnosticKind TerminalMissing = new("HS1105", Severity.Error, "Terminal not named", "{0} has several terminals; name the one that is meant");
    public static readonly DiagnosticKind NoVersion = new("HS1106", Severity.Error, "Version missing", "the file does not say which version of the notation it is in");
    public static readonly DiagnosticKind WrongVersion = new("HS1107", Severity.Error, "Version unknown", "\"{0}\" is no version of the notation that can be read");
    public static readonly DiagnosticKind SectionMissing = new("HS1108", Severity.Error, "Section missing", "the section \"{0}\" is missing");
    public static readonly DiagnosticKind BadId = new("HS1109", Severity.Error, "Not an id", "\"{0}\" is no id; ids are letters, digits, - and _");
    public static readonly DiagnosticKind IdTaken = new("HS1110", Severity.Error, "Id given twice", "\"{0}\" is the id of a part or wire already");
    public static readonly DiagnosticKind ReservedId = new("HS1111", Severity.Error, "Id not allowed", "\"{0}\" means something else and cannot be an id");
    public static readonly DiagnosticKind UnknownKind = new("HS1112", Severity.Error, "Unknown kind", "there is no kind of part \"{0}\"");
    public static readonly DiagnosticKind TwoNames = new("HS1113", Severity.Error, "Named twice", "already named \"{0}\"; \"{1}\" is neither a rating nor anything else that is known here");
    public static readonly DiagnosticKind NoSuchRating = new("HS1114", Severity.Error, "Rating not known", "{0} has no rating in {1}");
    public static readonly DiagnosticKind RatingTwice = new("HS1115", Severity.Error, "Rated twice", "the rating {0} is given twice");
    public static readonly DiagnosticKind BadQuantity = new("HS1116", Severity.Error, "Quantity not understood", "\"{0}\" cannot be read: {1}");
    public static readonly DiagnosticKind NoAssembly = new("HS1117", Severity.Error, "No such assembly", "there is no assembly \"{0}\"");
    public static readonly DiagnosticKind NoCase = new("HS1118", Severity.Error, "No case", "the case of {0} is no terminal");
    public static readonly DiagnosticKind MapOutside = new("HS1119", Severity.Error, "Mapping outside a replacement", "\"{0}\" maps a terminal, which only \"replace\" does");
    public static readonly DiagnosticKind DigitName = new("HS1120", Severity.Error, "Name begins with a digit", "\"{0}\" begins with a digit and has no unit");
    public static readonly DiagnosticKind BadEnd = new("HS1121", Severity.Error, "End not understood", "\"{0}\" is no end of a wire");
    public static readonly DiagnosticKind BadWire = new("HS1122", Severity.Error, "Wire not understood", "a wire begins with its two ends, \"A to B\", not \"{0}\"");
    public static readonly DiagnosticKind SizeUnit = new("HS1123", Severity.Error, "Size without a unit", "the size \"{0}\" has no unit, and the system line does not say \"sizes in\"");
    public static readonly DiagnosticKind BadColour = new("HS1124", Severity.Error, "Colour not known", "\"{0}\" is no colour");
    public static readonly DiagnosticKind GivenTwice = new("HS1125", Severity.Error, "Given twice", "the {0} is given twice");
    public static readonly DiagnosticKind FreeEnd = new("HS1126", Severity.Error, "Free end", "only a spare may have a free end");
    public static readonly DiagnosticKind BadSystem = new("HS1127", Severity.Error, "System not understood", "\"{0}\" says nothing about a system");
    public static readonly DiagnosticKind SystemIncomplete = new("HS1128", Severity.Error, "System incomplete", "the system line must say {0}");
    public static readonly DiagnosticKind UnknownSetting = new("HS1129", Severity.Error, "Setting not understood", "\"{0}\" names no switch or condition");
    public static readonly DiagnosticKind UnknownPosition = new("HS1130", Severity.Error, "Unknown position", "{0} has no position \"{1}\"");
    public static readonly DiagnosticKind AmbiguousPosition = new("HS1131", Severity.Error, "Position not clear", "{0} has several moving parts with a position \"{1}\"");
    public static readonly DiagnosticKind NoSender = new("HS1132", Severity.Error, "Takes no value", "{0} takes no value in {1}");
    public static readonly DiagnosticKind UnknownVerb = new("HS1133", Severity.Error, "Change not understood", "\"{0}\" is no change");
    public static readonly DiagnosticKind BadChange = new("HS1134", Severity.Error, "Change not understood", "this change is not complete, or not understood; it is written like \"{0}\"");
    public static readonly DiagnosticKind UnknownField = new("HS1135", Severity.Warning, "Unknown field", "a title block has no field \"{0}\" (ISO 7200)");
    public static readonly DiagnosticKind IncludeOutside = new("HS1136", Severity.Error, "File outside", "\"{0}\" does not lie in the job's own folder or below");
    public static readonly DiagnosticKind IncludeMissing = new("HS1137", Severity.Error, "File not found", "the file \"{0}\" cannot be read");
    public static readonly DiagnosticKind IncludeCycle = new("HS1138", Severity.Error, "File read twice", "\"{0}\" is read already; a file includes neither itself nor one twice");
    public static readonly DiagnosticKind NothingSaid = new("HS1139", Severity.Error, "Empty line", "nothing is said about \"{0}\"");
    public static readonly DiagnosticKind WaysRange = new("HS1140", Severity.Error, "Wrong number of ways", "{0} has {1} to {2} ways");
    public static readonly DiagnosticKind WaysMissing = new("HS1141", Severity.Error, "Ways not given", "how many ways does the {0} have?");
    public static readonly DiagnosticKind NotPositive = new("HS1142", Severity.Error, "Value not above 0", "\"{0}\" must be above 0");
    public static readonly DiagnosticKind NoChange = new("HS1143", Severity.Warning, "Reason without a change", "the reason given for {0} is not kept: nothing is changed here");
    public static readonly DiagnosticKind PlaceIsAssembly = new("HS1144", Severity.Warning, "Place is an assembly", "\"at {0}\" is a place in words, but {0} is an assembly");
    public static readonly DiagnosticKind TooManyValues = new("HS1145", Severity.Error, "Too many values", "\"{0}\" has more values than the rating {1} takes");
    public static readonly DiagnosticKind PositionTwice = new("HS1146", Severity.Error, "Position given twice", "{0} is put into two positions at once");
    public static readonly DiagnosticKind UnknownKey = new("HS1147", Severity.Error, "Unknown key", "there is no key \"{0}\" here");
    public static readonly DiagnosticKind BadSame = new("HS1148", Severity.Error, "Pair not understood", "\"same\" cannot be followed: {0}");
    public static readonly DiagnosticKind BadJoint = new("HS1154", Severity.Error, "Joint not understood", "\"{0}\" says no bad joint");
    public static readonly DiagnosticKind NoEndOfWire = new("HS1155", Severity.Error, "No end of the wire", "\"{0}\" does not say one end of this wire");
    public static readonly DiagnosticKind UnknownStep = new("HS1152", Severity.Error, "Unknown setting", "there is no setting \"{0}\"");
}
