using Hotside.Circuits;

namespace Hotside.Wording;

/// <summary>What a legend says.</summary>
internal static class LegendText
{
    /// <summary>The meaning of a look.</summary>
    public static string Of(LegendEntry entry, Words words) => entry switch
    {
        LegendEntry.TakeOut => "take out",
        LegendEntry.RunNew => "run new, or fit",
        LegendEntry.MoveOneEnd => "move one end",
        LegendEntry.Renew => "renew, same ends",
        LegendEntry.WhereItLay => "where a moved wire lay",
        LegendEntry.LeaveAsIs => "leave as is",
        LegendEntry.SwapLeads => "leads swapped",
        LegendEntry.Number => "line n of the change list",
        LegendEntry.HotSide => $"switched on the {words.Say("hot")} side",
        LegendEntry.GroundSide => $"on the {words.Say("ground")} side",
        LegendEntry.BothSides => "on both sides",
        LegendEntry.Unswitched => "not switched",
        LegendEntry.InSeries => "fed only through other loads",
        LegendEntry.Dead => "fed by no switch position",
        LegendEntry.GoesElsewhere => "goes on elsewhere",
        LegendEntry.Zone => "zone of the other end; 2.E4 is on sheet 2",
        LegendEntry.MechanicalLink => "moves together",
        _ => throw new ArgumentOutOfRangeException(nameof(entry), entry, "There is no such entry."),
    };

    /// <summary>The meaning of a wire label, by the example of one on the sheet: <c>AWG 14, black (IEC 60757)</c>.</summary>
    /// <param name="wire">A conductor whose label is shown.</param>
    /// <param name="words">Whose words.</param>
    public static string WireLabel(Wire wire, Words words)
    {
        string? size = wire.Size is not { } stated ? null : stated.Gauge is null ? stated.ToString() : "AWG " + stated.Label;
        string? colour = wire.IsBraid ? "bare braid" : wire.Colour is { } seen ? WireNaming.Colour(seen, words) + " (IEC 60757)" : null;
        return Listing.Commas(size, colour);
    }
}
