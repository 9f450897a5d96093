namespace Hotside.Circuits;

/// <summary>What a rating commonly is, with where that is from.</summary>
/// <param name="Quantity">The value or the range.</param>
/// <param name="Source">The standard or handbook, or "common practice, no source", or "from memory".</param>
public sealed record RatingDefault(StatedValue Quantity, string Source)
{
    /// <summary>The voltage, the current or whatever else it holds at; <see langword="null"/> when it holds at all.</summary>
    public StatedValue? At { get; init; }

    /// <summary>As it is written in a kind: <c>0.14 A at 12 V, from …</c>.</summary>
    public override string ToString() => $"{Quantity}{(At is null ? "" : " at " + At)}, from {Source}";
}
