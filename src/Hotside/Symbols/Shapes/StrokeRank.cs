namespace Hotside.Symbols.Shapes;

/// <summary>Width of a line, in steps of √2 after ISO 128-2.</summary>
internal enum StrokeRank
{
    /// <summary>0.25 mm: enclosures, links, rules.</summary>
    Thin,

    /// <summary>0.35 mm: symbols, conductors left as is.</summary>
    Medium,

    /// <summary>0.5 mm: blades, polarity marks, symbols of fitted parts, conductors taken out.</summary>
    Heavy,

    /// <summary>0.7 mm: rails, frame, short plates of a battery.</summary>
    Rail,

    /// <summary>1 mm: conductors run new, moved or renewed; the bar of a badge.</summary>
    Change,
}
