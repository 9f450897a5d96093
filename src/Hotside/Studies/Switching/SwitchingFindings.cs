using Hotside.Diagnostics;

namespace Hotside.Studies.Switching;

/// <summary>The kinds of findings that come from how a circuit is switched.</summary>
internal static class SwitchingFindings
{
    public static readonly DiagnosticKind ShortCircuit = new("HS3001", Severity.Stop, "Short circuit",
        "feed and return are one point when {0}: a short circuit");

    public static readonly DiagnosticKind NeverSettles = new("HS3002", Severity.Error, "Relay never settles",
        "{0} never comes to rest when {1}: every position lets it move again");

    public static readonly DiagnosticKind Race = new("HS3003", Severity.Error, "Relays race",
        "which of {0} stays in when {1} depends on which is quicker");

    public static readonly DiagnosticKind BothCoils = new("HS3004", Severity.Warning, "Both coils at once",
        "{0} is pulled both ways when {1}; where it goes is anybody's guess");

    public static readonly DiagnosticKind DeadLoad = new("HS3005", Severity.Warning, "Never on",
        "{0} can never come on: {1}");

    public static readonly DiagnosticKind TurnedRound = new("HS3006", Severity.Error, "Turned round",
        "{0} lets current through one way only and is connected the other way round");

    public static readonly DiagnosticKind Approximate = new("HS3007", Severity.Note, "Verdict by what is joined for good",
        "the positions of this circuit are too entangled to be worked out; the verdicts of {0} are told from what is joined for good");

    public static readonly DiagnosticKind UnequalDischarge = new("HS3008", Severity.Warning, "Unequal discharge",
        "{0} hangs on the tap of a bank and draws from {1} alone");

    public static readonly DiagnosticKind BackFeed = new("HS3009", Severity.Warning, "Back-feed past a disconnect",
        "{0} is now fed when {1}, past {2}, which cut it off before");

    public static readonly DiagnosticKind OrdersNotTried = new("HS3010", Severity.Note, "Orders of moves not tried",
        "{0} influence each other and are too many to try every order of their moves; the verdicts take it that all move together");

    public static readonly DiagnosticKind Sneak = new("HS3011", Severity.Warning, "Sneak path",
        "through {2} comes about {1} V to {0} when {3}, where nothing is meant to feed it");

    public static readonly DiagnosticKind FaintSneak = new("HS3013", Severity.Note, "Faint sneak path",
        "through {2} comes about {1} V to {0} when {3}; too little to work by, as a rule");

    public static readonly DiagnosticKind SecondFeed = new("HS3014", Severity.Note, "Feed past a disconnect",
        "{0} has a feed of its own when {1}, past {2}, which cut it off before");

    public static readonly DiagnosticKind WeakCoil = new("HS3015", Severity.Warning, "Coil below pull-in",
        "{0} gets about {1} V of its {2} V when {3}; it may not pull in");

    public static readonly DiagnosticKind OnlyInSeries = new("HS3016", Severity.Note, "Fed through other loads",
        "{0} is fed only through {1}");

    public static readonly DiagnosticKind LostReturn = new("HS3017", Severity.Warning, "No return of its own",
        "{0} has no return of its own: its current goes back through {1}");

    public static readonly DiagnosticKind GivenUp = new("HS3018", Severity.Note, "Search given up",
        "there are too many ways through other loads to look at all: {0} may also be on, or get current against the verdict, where nothing is said of it");

    public static readonly DiagnosticKind DoubtfulPullIn = new("HS3019", Severity.Note, "Pull-in told from samples",
        "whether {0} pulls in through other loads was computed for some positions only; verdicts that hang on it are marked approximate");

    /// <summary>All kinds, in the order of their codes.</summary>
    public static readonly DiagnosticKind[] All =
    [
        ShortCircuit, NeverSettles, Race, BothCoils, DeadLoad, TurnedRound, Approximate, UnequalDischarge, BackFeed,
        OrdersNotTried, Sneak, FaintSneak, SecondFeed, WeakCoil, OnlyInSeries, LostReturn, GivenUp, DoubtfulPullIn,
    ];
}
