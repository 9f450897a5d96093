namespace Hotside.Symbols;

/// <summary>Where a terminal's wire meets the symbol.</summary>
/// <param name="Terminal">The terminal's name.</param>
/// <param name="X">Modules from the left edge.</param>
/// <param name="Y">Modules from the top edge.</param>
/// <param name="Side">The side that the wire leaves on.</param>
internal sealed record SymbolPin(string Terminal, int X, int Y, SymbolSide Side);
