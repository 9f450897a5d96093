namespace Hotside.Drawings.Plans;

/// <summary>How a drawing saves room; by default not at all.</summary>
/// <param name="HasCloseRelays">Whether relays are narrow, with the text of what they feed at the left.</param>
/// <param name="HasSwitchTable">Whether a table says who switches what: of each verdict its small badge alone stands at the load.</param>
/// <param name="HangsHigh">Whether loads stand right below what feeds them, which takes less height.</param>
/// <param name="EndsHigh">Whether what goes on elsewhere ends beside what it leaves, by a line above it, and not in a column below.</param>
/// <param name="FacesAsGiven">Whether every part faces as its symbol is given.</param>
internal readonly record struct PlanStyle(bool HasCloseRelays = false, bool HasSwitchTable = false, bool HangsHigh = false, bool EndsHigh = false, bool FacesAsGiven = false)
{
    /// <summary>What of it shows in symbols and texts; the rest is the layout's.</summary>
    public PlanStyle OfParts() => this with { HangsHigh = false, EndsHigh = false, FacesAsGiven = false };
}
