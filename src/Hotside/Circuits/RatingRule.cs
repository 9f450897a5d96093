using System.Collections.Immutable;

namespace Hotside.Circuits;

/// <summary>A rating that parts of a kind may state, and the elements it belongs to.</summary>
/// <param name="Name">The unit alone (the main rating of that unit) or words and the unit: <c>V</c>, <c>coil A</c>.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Elements">The elements it belongs to; at least one.</param>
/// <param name="IsOneEach">Whether a value is stated for each element in turn (<c>45/35 W</c>) rather than the same for all.</param>
public sealed record RatingRule(string Name, Unit Unit, ImmutableArray<string> Elements, bool IsOneEach)
{
    /// <summary>What such a part commonly has, for one that states nothing; whatever is computed from it says so. <see langword="null"/> when nothing is known.</summary>
    public RatingDefault? Default { get; init; }

    /// <summary>Words that begin the name of a rating which tells of another state than the rated one: a motor that stands, a resistor before it is warm, a machine that turns slowly.</summary>
    internal const string Stall = "stall", Cold = "cold", Low = "low";

    /// <summary>Ratings that no kind need list.</summary>
    internal const string Duty = "duty %", ContactOhms = "contact ohm";

    /// <summary>Whether it tells of another state than the rated one.</summary>
    internal bool IsAside => Name.Split(' ')[0] is Stall or Cold or Low;

    /// <summary>Whether a value may be rated so: above 0, a resistance 0 or more, a part 0 to 100 %.</summary>
    internal bool IsInRange(StatedValue stated) =>
        stated.Values.Concat(stated.UpTo is { } top ? [top] : []).All(v => (v > 0 && (Unit != Unit.Percent || v <= 100)) || (v == 0 && Unit is Unit.Ohm or Unit.Percent) || Unit is Unit.Awg or Unit.Celsius);

    /// <summary>What a statement says of one of the elements.</summary>
    internal double ValueFor(string element, StatedValue stated) => stated.Values[IsOneEach ? Math.Min(Elements.IndexOf(element), stated.Values.Length - 1) : 0];

    /// <summary>The same, a range at its middle.</summary>
    internal double MiddleFor(string element, StatedValue stated) => stated.UpTo is { } top ? (stated.Value + top) / 2 : ValueFor(element, stated);

    /// <summary>How many values it takes: one, or one for each element.</summary>
    internal int MostValues => IsOneEach ? Elements.Length : 1;

    /// <summary>Whether it is the main rating of its unit, stated by the quantity alone.</summary>
    public bool IsMain => !Name.Contains(' ', StringComparison.Ordinal);
}
