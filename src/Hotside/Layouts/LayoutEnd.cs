namespace Hotside.Layouts;

/// <summary>What a conductor ends on.</summary>
internal enum EndKind
{
    /// <summary>A pin of a box.</summary>
    Pin,

    /// <summary>The one feed rail at the top; each end is a place of its own.</summary>
    Feed,

    /// <summary>The chassis row at the bottom; each end is a place of its own.</summary>
    Chassis,
}

/// <summary>One end of a conductor; box and pin are empty on a rail.</summary>
internal readonly record struct LayoutEnd(EndKind Kind, string Box, string Pin)
{
    public static LayoutEnd Feed { get; } = new(EndKind.Feed, "", "");

    public static LayoutEnd Chassis { get; } = new(EndKind.Chassis, "", "");

    public static LayoutEnd At(string box, string pin) => new(EndKind.Pin, box, pin);
}
