namespace Hotside.Symbols;

/// <summary>A contact inside a switch with several.</summary>
/// <param name="From">Terminal on the feed's side.</param>
/// <param name="To">Terminal on the other side.</param>
/// <param name="ClosedIn">The positions that close it, as printed beside it; empty for none.</param>
internal sealed record SymbolContact(string From, string To, string ClosedIn = "")
{
    /// <summary>Whether it is closed at rest.</summary>
    public bool ClosedAtRest { get; init; }

    /// <summary>Whether a breaker lies between the feed's terminal and all contacts that it feeds.</summary>
    public bool BehindBreaker { get; init; }

    /// <summary>Whether a rheostat lies between the contact and its other terminal.</summary>
    public bool BeforeRheostat { get; init; }
}
