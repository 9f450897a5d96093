using Hotside.Symbols.Shapes;

namespace Hotside.Drawings;

/// <summary>The colours of a drawing, by what they mean. Every change shows in shape as well, so a theme may even be grey.</summary>
/// <remarks>Take one of the two and change it: <c>Theme.Paper with { New = Colour.Hex("#00539b") }</c>.</remarks>
public sealed record Theme
{
    /// <summary>Dark lines on white, for print and for light pages.</summary>
    public static Theme Paper { get; } = new();

    /// <summary>Light lines on a dark ground, for screens.</summary>
    public static Theme Dark { get; } = new()
    {
        Ground = Colour.Hex("#14181d"),
        Panel = Colour.Hex("#1d232a"),
        Ink = Colour.Hex("#e8ebee"),
        Quiet = Colour.Hex("#a3adb8"),
        Wire = Colour.Hex("#929ca6"),
        TakenOut = Colour.Hex("#ff9a4d"),
        New = Colour.Hex("#4fb0f0"),
        Moved = Colour.Hex("#f2c4f0"),
    };

    /// <summary>The sheet.</summary>
    public Colour Ground { get; init; } = Colour.Hex("#ffffff");

    /// <summary>The tint inside an enclosure.</summary>
    public Colour Panel { get; init; } = Colour.Hex("#f3f5f7");

    /// <summary>Symbols, texts, frame.</summary>
    public Colour Ink { get; init; } = Colour.Hex("#1b1f24");

    /// <summary>What may be overlooked at first.</summary>
    public Colour Quiet { get; init; } = Colour.Hex("#55606b");

    /// <summary>Conductors left as they are.</summary>
    public Colour Wire { get; init; } = Colour.Hex("#2c333b");

    /// <summary>What is taken out.</summary>
    public Colour TakenOut { get; init; } = Colour.Hex("#b84a00");

    /// <summary>What is run new, fitted, replaced or renewed.</summary>
    public Colour New { get; init; } = Colour.Hex("#0072b2");

    /// <summary>What is moved.</summary>
    public Colour Moved { get; init; } = Colour.Hex("#6d2a78");

    /// <summary>The colour of a role.</summary>
    internal Colour Of(ColourRole role) => role switch
    {
        ColourRole.Paper => Ground,
        ColourRole.Panel => Panel,
        ColourRole.Quiet => Quiet,
        ColourRole.Wire => Wire,
        ColourRole.Out => TakenOut,
        ColourRole.New => New,
        ColourRole.Moved => Moved,
        _ => Ink,
    };
}
