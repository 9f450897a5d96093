using Hotside.Studies;

namespace Hotside;

/// <summary>Says in words what was found of a load.</summary>
public static class LoadText
{
    /// <summary>The side, by what, and when: <c>hot-switched by K1; on when S1 pressed</c>.</summary>
    /// <param name="load">The load.</param>
    public static string Summary(this LoadStudy load)
    {
        ArgumentNullException.ThrowIfNull(load);
        string by = string.Join(", ", load.Chain.Concat(load.SwitchedBy));
        string text = load.Side switch
        {
            SwitchedSide.HotSwitched => "hot-switched",
            SwitchedSide.GroundSwitched => "ground-switched",
            SwitchedSide.BothSides => "switched on both sides",
            SwitchedSide.Unswitched => "unswitched",
            SwitchedSide.InSeries => "in series with " + string.Join(", ", load.InSeriesWith),
            _ => load.DeadBecause is { } why ? $"never on ({why})" : "never on",
        };
        if (by.Length > 0 && load.Side is not (SwitchedSide.InSeries or SwitchedSide.Unswitched)) text += " by " + by;
        if (load.Side is not (SwitchedSide.Dead or SwitchedSide.Unswitched)) text += "; on when " + load.Control;
        if (load.Until is { } until) text += $", until {until.Part} {until.Position}";
        if (load.Holds is { } hold) text += $"; {hold.Relay} then holds until {hold.Released}";
        if (!load.ShortedBy.IsEmpty) text += "; shorted by " + string.Join(", ", load.ShortedBy);
        return load.IsApproximate ? text + " (approximate)" : text;
    }
}
