using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Symbols.Shapes;

namespace Hotside.Drawings;

/// <summary>The colours of a drawing, by what they mean. Every change shows in shape as well, so a theme may even be grey.</summary>
/// <remarks>Take one and change it: <c>Theme.Paper with { New = Colour.Hex("#00539b") }</c>.</remarks>
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
        Live = Colour.Hex("#4a4417"),
    };

    /// <summary>Black on white, for a copier: what changes shows in shape alone.</summary>
    public static Theme Mono { get; } = new()
    {
        Panel = Colour.Hex("#f2f2f2"),
        Live = Colour.Hex("#d9d9d9"),
        Ink = Colour.Hex("#000000"),
        Quiet = Colour.Hex("#4d4d4d"),
        Wire = Colour.Hex("#000000"),
        TakenOut = Colour.Hex("#000000"),
        New = Colour.Hex("#000000"),
        Moved = Colour.Hex("#000000"),
    };

    /// <summary>For tired eyes and bad light: every text and line at 7 : 1 or more on the sheet.</summary>
    public static Theme HighContrast { get; } = new()
    {
        Panel = Colour.Hex("#ffffff"),
        Ink = Colour.Hex("#000000"),
        Quiet = Colour.Hex("#333333"),
        Wire = Colour.Hex("#000000"),
        TakenOut = Colour.Hex("#8a2f00"),
        New = Colour.Hex("#00488f"),
        Moved = Colour.Hex("#5c0a68"),
    };

    private static readonly ImmutableArray<(string Name, Theme Theme)> All = [("paper", Paper), ("dark", Dark), ("mono", Mono), ("high-contrast", HighContrast)];

    /// <summary>The names that <see cref="Named"/> knows: <c>paper</c>, <c>dark</c>, <c>mono</c>, <c>high-contrast</c>.</summary>
    public static ImmutableArray<string> Names { get; } = [.. All.Select(t => t.Name)];

    /// <summary>A theme by its name, as the command line has it.</summary>
    /// <param name="name">One of <see cref="Names"/>.</param>
    /// <exception cref="ArgumentException">There is no theme of that name; the message names the nearest, or those that there are.</exception>
    public static Theme Named(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return All.FirstOrDefault(t => t.Name == name).Theme
            ?? throw new ArgumentException($"There is no theme \"{name}\"; {(NearestName.Of(name, Names) is { } near ? $"did you mean \"{near}\"?" : $"there are {string.Join(", ", Names)}.")}", nameof(name));
    }

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

    /// <summary>The band under what carries current in a setting, pale enough to be read upon.</summary>
    public Colour Live { get; init; } = Colour.Hex("#ffe58a");

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
        ColourRole.Live => Live,
        _ => Ink,
    };
}
