using Hotside.Diagnostics;

namespace Hotside.Studies;

/// <summary>What a study of switching finds.</summary>
internal static class StudyProblems
{
    public static readonly DiagnosticKind Short = new("HS3001", Severity.Stop, "Short circuit", "feed and return are joined without a load when {0}");
    public static readonly DiagnosticKind NeverSettles = new("HS3002", Severity.Error, "Never settles", "{0} comes to no rest when {1}: it pulls in and drops out again and again");
    public static readonly DiagnosticKind Race = new("HS3003", Severity.Warning, "Race", "when {1}, it depends on which of {0} is quicker");
    public static readonly DiagnosticKind BothCoils = new("HS3004", Severity.Warning, "Both windings at once", "both windings of a relay that stays are fed when {0}; where it ends nobody knows");
    public static readonly DiagnosticKind Dead = new("HS3005", Severity.Warning, "Load never on", "nothing ever feeds {0}");
    public static readonly DiagnosticKind WrongPolarity = new("HS3006", Severity.Error, "Wrong way round", "{0} is connected the wrong way round for its polarity");
    public static readonly DiagnosticKind Approximate = new("HS3007", Severity.Note, "Worked out approximately", "the circuit is too tangled to be worked out exactly; sides are told from what is joined for good");
    public static readonly DiagnosticKind Tap = new("HS3008", Severity.Warning, "Unequal discharge", "{0} is fed from between {1} and the next battery, so {1} is discharged more");
    public static readonly DiagnosticKind BackFeed = new("HS3009", Severity.Warning, "Back-feed", "{0} can now be fed past {1}, through which every way went before");
    public static readonly DiagnosticKind Untried = new("HS3010", Severity.Note, "Orders not tried", "the relays {0} influence each other in too many ways for every order to be tried");
    public static readonly DiagnosticKind SneakPath = new("HS3011", Severity.Warning, "Sneak path", "with \"{0}\", a current flows through {1}, which nothing feeds then");
}
