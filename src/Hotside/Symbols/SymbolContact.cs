namespace Hotside.Symbols;

/// <summary>A contact inside a switch with several.</summary>
/// <param name="From">Terminal on the feed's side.</param>
/// <param name="To">Terminal on the other side.</param>
/// <param name="ClosedIn">The positions that close it, as printed beside it; empty for none.</param>
internal sealed record SymbolContact(string From, string To, string ClosedIn = "");
