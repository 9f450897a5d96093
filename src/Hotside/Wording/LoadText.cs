using Hotside.Studies;
using Hotside.Wording;

namespace Hotside;

/// <summary>Says in words what was found of a load.</summary>
public static class LoadText
{
    /// <summary>The side, by what, and when: <c>hot-switched by K1; on when S1 pressed</c>.</summary>
    /// <param name="load">The load.</param>
    /// <param name="words">Whose words.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="words"/> is none of the two.</exception>
    public static string Summary(this LoadStudy load, Words words = Words.American)
    {
        ArgumentNullException.ThrowIfNull(load);
        var vocabulary = Vocabulary.Of(words);
        string by = string.Join(", ", load.Chain.Concat(load.OwnSwitches));
        if (by.Length > 0 && !load.DisconnectedBy.IsEmpty) by += $" (behind {string.Join(", ", load.DisconnectedBy)})";
        string text = load.Side switch
        {
            SwitchedSide.InSeries => "in series with " + string.Join(", ", load.InSeriesWith),
            SwitchedSide.Dead when load.DeadBecause is { } why => $"never on ({why})",
            SwitchedSide.Elsewhere => "fed from elsewhere: " + string.Join(" or ", load.FedFrom),
            var side => SideText.Of(side, vocabulary),
        };
        if (by.Length > 0 && load.Side is not (SwitchedSide.InSeries or SwitchedSide.Unswitched or SwitchedSide.Elsewhere)) text += " by " + by;
        if (!load.IsNeverFed && load.Side != SwitchedSide.Unswitched) text += load.Control.Whole is { } all && all.Shared.Length > 0 ? "; on in more combinations than can be listed" : "; on when " + load.Control;
        if (load.Until is { } until) text += $", until {until.Part} {until.Position}";
        if (load.Holds is { } hold) text += $"; {hold.Relay} then holds until {hold.Released}";
        if (!load.ShortedBy.IsEmpty) text += "; shorted by " + string.Join(", ", load.ShortedBy);
        return load.IsApproximate ? text + " (approximate)" : text;
    }
}
