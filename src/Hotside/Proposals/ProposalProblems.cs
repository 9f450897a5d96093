using Hotside.Diagnostics;

namespace Hotside.Proposals;

/// <summary>What is told of a file that a proposal begins with.</summary>
internal static class ProposalProblems
{
    public static readonly DiagnosticKind AlterationLeftOut = new("HS4301", Severity.Note, "Alteration left out",
        "the file's alteration is left out: the proposal begins with the circuit before it");

    public static readonly DiagnosticKind LineLeftOut = new("HS4302", Severity.Note, "Line made a comment",
        "line {0} names what only the old alteration had, and is made a comment");

    public static readonly DiagnosticKind SupplyStays = new("HS4303", Severity.Note, "Supply stays",
        "a single job leaves the supply at {0}; {1} is left to a proposal for the whole vehicle");

    public static readonly DiagnosticKind QuestionOpen = new("HS4304", Severity.Warning, "Question open",
        "{0}: {1}");

    public static readonly DiagnosticKind NothingProposed = new("HS4305", Severity.Note, "Nothing to propose",
        "nothing is to be altered: {0}");
}
