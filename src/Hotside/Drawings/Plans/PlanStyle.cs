namespace Hotside.Drawings.Plans;

/// <summary>How a drawing saves room; by default not at all.</summary>
/// <param name="HasCloseRelays">Whether relays are narrow, with the text of what they feed at the left.</param>
/// <param name="HasSwitchTable">Whether a table says who switches what: of each verdict its small badge alone stands at the load.</param>
internal readonly record struct PlanStyle(bool HasCloseRelays = false, bool HasSwitchTable = false);
