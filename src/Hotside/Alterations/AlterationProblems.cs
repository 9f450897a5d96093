using Hotside.Diagnostics;

namespace Hotside.Alterations;

/// <summary>What can be wrong with a list of changes.</summary>
internal static class AlterationProblems
{
    public static readonly DiagnosticKind UnknownId = new("HS4001", Severity.Error, "Unknown id", "there is no part or wire \"{0}\" to {1}");
    public static readonly DiagnosticKind IdTaken = new("HS4002", Severity.Error, "Id given twice", "\"{0}\" is there already");
    public static readonly DiagnosticKind ChangedTwice = new("HS4003", Severity.Error, "Changed twice", "{0} is changed twice");
    public static readonly DiagnosticKind WireHangs = new("HS4004", Severity.Error, "Wire left hanging", "{0} still ends on {1}, which is taken out");
    public static readonly DiagnosticKind JointHangs = new("HS4005", Severity.Error, "Joint left hanging", "{0} is still bolted to {1}, which is taken out");
    public static readonly DiagnosticKind NotThere = new("HS4006", Severity.Error, "End is not there", "{0} does not end on {1}");
    public static readonly DiagnosticKind UnknownPart = new("HS4007", Severity.Error, "Unknown part", "there is no part \"{0}\" after the changes");
    public static readonly DiagnosticKind UnknownTerminal = new("HS4008", Severity.Error, "Unknown terminal", "{0} has no terminal \"{1}\" after the changes");
    public static readonly DiagnosticKind NotMapped = new("HS4009", Severity.Error, "Terminal not carried over", "{0} ends on {1}, and a {2} has no such terminal");
    public static readonly DiagnosticKind NothingNew = new("HS4010", Severity.Error, "Nothing changes", "this changes nothing about {0}");
    public static readonly DiagnosticKind NotTwoTerminals = new("HS4011", Severity.Error, "Cannot be reversed", "{0} has no two terminals whose wires could trade ends");
    public static readonly DiagnosticKind NotAWire = new("HS4012", Severity.Error, "Not a wire", "{0} is a part; only wires are {1}");
    public static readonly DiagnosticKind NotAPart = new("HS4013", Severity.Error, "Not a part", "{0} is a wire; only parts are {1}");
    public static readonly DiagnosticKind NoCase = new("HS4014", Severity.Error, "No case", "the case of {0} is no terminal, so its mount changes no circuit");
    public static readonly DiagnosticKind BadMap = new("HS4015", Severity.Error, "Mapping not understood", "\"{0}\" is no terminal of {1}");
    public static readonly DiagnosticKind ToItself = new("HS4016", Severity.Error, "Wire to itself", "both ends of {0} would be {1}");
    public static readonly DiagnosticKind Later = new("HS4020", Severity.Note, "Order of work", "{0} needs {1}, which a later line brings; it is numbered after that");
    public static readonly DiagnosticKind OnReversed = new("HS4021", Severity.Note, "End on a reversed part", "{0} is meant as it is after the change: {1} is reversed");
    public static readonly DiagnosticKind AboutAnother = new("HS4022", Severity.Note, "Work put on another part", "the sentence speaks of {0}, but the line is about {1}");
}
