using Hotside.Circuits;
using UnitsNet;

namespace Hotside.Packs.Lists;

/// <summary>How long a wire is cut, how much wire is bought, and how both are written.</summary>
internal static class Lengths
{
    // A loop for service at each end, and waste: common practice, no source.
    private static readonly Length Loop = Length.FromMillimeters(150);
    private const double Waste = 0.15;

    /// <summary>How long a wire is cut: 150 mm more at each end. A braid is bought to length and a lead of its own comes with its ends.</summary>
    public static Length? Cut(Wire wire) => wire.LengthInMetres is not { } metres ? null : Length.FromMeters(metres) + (HasLoops(wire) ? 2 * Loop : Length.Zero);

    /// <summary>Whether it is cut longer than it runs.</summary>
    public static bool HasLoops(Wire wire) => !wire.IsBraid && wire is not { Size: null, Name: not null };

    /// <summary>What is bought for what is cut, to a tenth of a metre upwards.</summary>
    public static Length Bought(Length cut) => Length.FromMeters(Math.Ceiling((cut.Meters * (1 + Waste) * 10) - 1e-9) / 10);

    /// <summary>Metres with two decimals: <c>1.70 m</c>; asks for a measure where there is none.</summary>
    public static string Text(Length? length) => length is { } given ? Numbers.Fixed(given.Meters, 2) + " m" : "measure";

    /// <summary>Metres and feet: <c>1.7 m (5.6 ft)</c>.</summary>
    public static string InBoth(Length length) => $"{Numbers.Fixed(length.Meters, 1)} m ({Numbers.Fixed(length.Feet, 1)} ft)";

    /// <summary>A size with its section: <c>14 AWG (2.08 mm²)</c>, <c>2.5 mm²</c>.</summary>
    public static string Size(WireSize size) => size.Gauge is null ? size.ToString() : $"{size} ({Numbers.Plain(size.Area, size.Area < 10 ? 2 : 1)} mm²)";
}
