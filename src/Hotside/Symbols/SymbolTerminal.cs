using System.Collections.Immutable;

namespace Hotside.Symbols;

/// <summary>A terminal that a symbol must show.</summary>
/// <param name="Name">Its name in the circuit, which the pin bears too.</param>
/// <param name="Side">The side its kind wishes; a symbol with a drawing of its own may know better.</param>
/// <param name="Label">What is printed beside it: the mark stamped on the part.</param>
internal sealed record SymbolTerminal(string Name, SymbolSide Side, string Label)
{
    /// <summary>Other marks that the trade uses for it, by which a symbol may know it.</summary>
    public ImmutableArray<string> Also { get; init; } = [];

    /// <summary>Whether a wire with a label comes to it, which needs room beside the wires of its neighbours.</summary>
    public bool HasLabel { get; init; }

    /// <summary>A terminal stamped with its own name.</summary>
    public static SymbolTerminal Of(string name, SymbolSide side, params string[] also) => new(name, side, name) { Also = [.. also] };

    /// <summary>Whether the terminal bears one of the marks.</summary>
    public bool Is(string mark) => Matches(Name, mark) || Also.Any(a => Matches(a, mark));

    private static bool Matches(string a, string b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);
}
