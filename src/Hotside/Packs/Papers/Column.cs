namespace Hotside.Packs.Papers;

/// <summary>A column of a table.</summary>
/// <param name="Head">What stands above it; may be empty.</param>
internal sealed record Column(string Head)
{
    /// <summary>Whether its cells end at the right, as numbers do.</summary>
    public bool IsRight { get; init; }

    /// <summary>Whether its cells are bold.</summary>
    public bool IsBold { get; init; }

    /// <summary>The least width; what is written into by hand has nothing printed to measure.</summary>
    public double Least { get; init; }

    /// <summary>How eagerly it takes room that is left; 0 not at all.</summary>
    public double Share { get; init; }

    /// <summary>How much of the room it gets against others where there is too little.</summary>
    public double Weight { get; init; } = 1;

    /// <summary>Whether it is written into: lines part it from its neighbours.</summary>
    public bool IsBlank { get; init; }

    /// <summary>A column to tick.</summary>
    public static Column Tick(string head = "") => new(head) { Least = 24 };

    /// <summary>A column to write into, so many millimetres wide at least.</summary>
    public static Column Blank(string head, double millimetres, double share = 0) => new(head) { Least = millimetres * 4, IsBlank = true, Share = share };
}
