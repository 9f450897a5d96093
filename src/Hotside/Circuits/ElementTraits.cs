namespace Hotside.Circuits;

/// <summary>What decides by which law an element draws current, beyond its type.</summary>
[Flags]
internal enum ElementTraits
{
    None = 0,

    /// <summary>A motor whose load grows with the square of its speed: a fan or a centrifugal pump.</summary>
    Fan = 1,

    /// <summary>A motor with its field in series.</summary>
    Series = 2,

    /// <summary>A filament in gas.</summary>
    GasFilled = 4,

    /// <summary>A filament in vacuum.</summary>
    Vacuum = 8,

    /// <summary>A light that conducts either way round, by a bridge of diodes.</summary>
    Bridge = 16,

    /// <summary>A source that light drives.</summary>
    Solar = 32,

    /// <summary>A limiter that opens and closes, and is told by its mean.</summary>
    Pulsing = 64,

    /// <summary>A load with a converter in it, which draws the same power at any voltage.</summary>
    ConstantPower = 128,

    /// <summary>A dropper whose output is its first end: current comes out of the vehicle's return and runs back to the feed, as where plus is grounded.</summary>
    HoldsFirst = 256,
}

/// <summary>The traits as words of a kind's data.</summary>
internal static class ElementTraitWords
{
    /// <summary>Each trait with its word, in the order in which they are written.</summary>
    public static IReadOnlyList<(string Word, ElementTraits Trait)> All { get; } =
    [
        ("fan", ElementTraits.Fan), ("series", ElementTraits.Series), ("gas-filled", ElementTraits.GasFilled), ("vacuum", ElementTraits.Vacuum), ("bridge", ElementTraits.Bridge),
        ("solar", ElementTraits.Solar), ("pulsing", ElementTraits.Pulsing), ("constant power", ElementTraits.ConstantPower),
        ("holds first end", ElementTraits.HoldsFirst),
    ];
}
