using System.Collections.Immutable;
using Hotside.Circuits;
using UnitsNet;

namespace Hotside.Packs.Lists;

/// <summary>A wire to be cut new.</summary>
/// <param name="Wire">Its id.</param>
/// <param name="From">One end, such as <c>K1.87</c>.</param>
/// <param name="To">The other end.</param>
/// <param name="Size">Its size; <see langword="null"/> when not known.</param>
/// <param name="Colour">Its colour's code (IEC 60757); <c>braid</c> for a bare one, empty when not known.</param>
/// <param name="Length">How long it runs; <see langword="null"/> when it has to be measured first.</param>
/// <param name="Cut">How long it is cut: 150 mm more at each end, but for a braid; <see langword="null"/> when it has to be measured first.</param>
public sealed record CutLine(string Wire, string From, string To, WireSize? Size, string Colour, Length? Length, Length? Cut)
{
    /// <summary>What goes on the end <see cref="From"/>, as far as the part there tells; else empty.</summary>
    public string TerminalFrom { get; init; } = "";

    /// <summary>What goes on the end <see cref="To"/>.</summary>
    public string TerminalTo { get; init; } = "";

    /// <summary>The numbers of the changes that ask for it.</summary>
    public ImmutableArray<int> Changes { get; init; } = [];

    /// <summary>What a list calls its size: its name where it has none.</summary>
    internal string SizeText { get; init; } = "";

    // For cutting: thick wire first, one colour after the other, long pieces first, so that what is left of one serves the next.
    internal static ImmutableArray<CutLine> All(IEnumerable<WireEntry> wires) =>
    [
        .. wires.Where(w => w.IsCutNew).OrderByDescending(w => w.Wire.Size?.Area ?? 0).ThenBy(w => w.Size, StringComparer.Ordinal).ThenBy(w => Wording.WireChangeText.Colour(w.Wire), StringComparer.Ordinal)
            .ThenByDescending(w => w.CutLength?.Meters ?? double.MaxValue).ThenBy(w => w.Id, NaturalOrder.Instance)
            .Select(w => new CutLine(w.Id, w.Ends.From, w.Ends.To, w.Wire.Size, Wording.WireChangeText.Colour(w.Wire), w.Wire.LengthInMetres is { } metres ? UnitsNet.Length.FromMeters(metres) : null, w.CutLength)
            {
                TerminalFrom = w.Terminals.From, TerminalTo = w.Terminals.To, Changes = w.Numbers, SizeText = w.Size,
            }),
    ];
}
