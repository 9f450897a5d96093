using Hotside.Studies;

namespace Hotside.Wording;

/// <summary>A side in words: within a sentence, on a badge, in a legend.</summary>
internal static class SideText
{
    /// <summary>The order of a legend.</summary>
    public static readonly SwitchedSide[] Order =
        [SwitchedSide.HotSwitched, SwitchedSide.GroundSwitched, SwitchedSide.BothSides, SwitchedSide.Unswitched, SwitchedSide.InSeries, SwitchedSide.Elsewhere, SwitchedSide.Dead];

    /// <summary>As a sentence has it: <c>ground-switched</c>, <c>switched on both sides</c>.</summary>
    public static string Of(SwitchedSide side, Vocabulary words) => side switch
    {
        SwitchedSide.HotSwitched => words.Hot + "-switched",
        SwitchedSide.GroundSwitched => words.Ground + "-switched",
        SwitchedSide.BothSides => "switched on both sides",
        SwitchedSide.Unswitched => "unswitched",
        SwitchedSide.InSeries => "in series",
        SwitchedSide.Elsewhere => "fed from elsewhere",
        // Not "dead": its terminals may well be hot.
        _ => "never on",
    };

    /// <summary>As a badge has it, in capitals.</summary>
    public static string Badge(SwitchedSide side, Vocabulary words) =>
        side == SwitchedSide.BothSides ? "SWITCHED BOTH SIDES" : side == SwitchedSide.Elsewhere ? "FED ELSEWHERE" : Of(side, words).ToUpperInvariant();

    /// <summary>What a badge means.</summary>
    public static string Legend(SwitchedSide side, Vocabulary words) => side switch
    {
        SwitchedSide.HotSwitched => $"switched on the {words.Hot} side",
        SwitchedSide.GroundSwitched => $"switched on the {words.Ground} side",
        SwitchedSide.BothSides => "switched on both sides",
        SwitchedSide.Unswitched => "always fed",
        SwitchedSide.InSeries => "fed through another load",
        SwitchedSide.Elsewhere => "fed from elsewhere: side not known",
        _ => $"never on; may be {words.Hot}",
    };
}
