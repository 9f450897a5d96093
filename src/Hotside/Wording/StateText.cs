using Hotside.Alterations;

namespace Hotside.Wording;

/// <summary>What becomes of a part, in a word or two under its rating.</summary>
internal static class StateText
{
    /// <summary>The state word of a part; empty where nothing happens to it.</summary>
    public static string Of(PartState state, Moment moment) => moment == Moment.Before
        ? state switch
        {
            PartState.TakenOut => "to be taken out",
            PartState.Replaced or PartState.ReplacedReversed => "to be replaced",
            PartState.Reversed => "leads to be swapped",
            PartState.Remounted => "to be remounted",
            _ => "",
        }
        : state switch
        {
            PartState.Fitted => "fitted",
            PartState.Replaced => "replaced",
            PartState.ReplacedReversed => "replaced reversed",
            PartState.Reversed => "leads swapped",
            PartState.Remounted => "remounted",
            _ => "",
        };
}
