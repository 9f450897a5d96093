using System.Collections.Immutable;
using Hotside.Symbols.Parts;
using Hotside.Symbols.Texts;

namespace Hotside.Symbols;

/// <summary>The symbols that Hotside draws, by name. What has none of its own, or has terminals that its symbol cannot place, gets a box.</summary>
internal static class SymbolBook
{
    // Units; a mark stamped on a part is shorter, and a symbol need not grow without bounds.
    private const double LongestMark = 60;

    private static readonly (string Name, Func<TerminalSet, SymbolOptions, Symbol?> Draw)[] Symbols =
    [
        .. BatterySymbol.All,
        .. LampSymbols.All,
        .. MachineSymbols.All,
        .. MeterSymbols.All,
        .. ResistorSymbols.All,
        .. FuseSymbols.All,
        .. DiodeSymbols.All,
        .. ContactSymbols.All,
        .. ChangeOverSymbols.All,
        .. SwitchBoxSymbols.All,
        .. RelaySymbols.All,
        .. StarterSolenoidSymbol.All,
        .. FunctionBoxSymbols.All,
        .. AlternatorSymbol.All,
        .. CutOutSymbol.All,
        .. IgnitionCoilSymbol.All,
        .. DistributorSymbol.All,
        .. ConnectorSymbol.All,
        .. BlockSymbols.All,
        .. WireSymbols.All,
        .. DeviceSymbols.All,
        .. WorksSymbol.All,
        .. NodeSymbols.All,
    ];

    private static readonly Dictionary<string, Func<TerminalSet, SymbolOptions, Symbol?>> ByName =
        Symbols.ToDictionary(s => s.Name, s => s.Draw, StringComparer.Ordinal);

    /// <summary>All names, in the order of the symbol sheet.</summary>
    public static ImmutableArray<string> Names { get; } = [.. Symbols.Select(s => s.Name)];

    /// <summary>
    /// The symbol of a name for a part's terminals. Every terminal has its pin, always: an unknown name, or a symbol that has no place for
    /// one of the terminals, gives a box with named pins.
    /// </summary>
    public static Symbol Of(string? name, IReadOnlyList<SymbolTerminal> terminals, SymbolOptions? options = null)
    {
        options ??= SymbolOptions.None;
        TextStyle marks = options.Lettering.Small;
        terminals = [.. terminals.Select(t => t with { Label = TextMeasure.Shorten(t.Label, marks, LongestMark * options.Lettering.Factor) })];
        if (name is not null && ByName.TryGetValue(name, out Func<TerminalSet, SymbolOptions, Symbol?>? draw))
        {
            var left = new TerminalSet(terminals);
            if (draw(left, options) is { } symbol && left.Count == 0)
                return symbol;
        }

        return BoxSymbol.Of(terminals, options);
    }
}
