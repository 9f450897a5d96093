using System.Collections.Immutable;

namespace Hotside.Circuits;

/// <summary>
/// A rated value as a person states it: <c>8 A</c>, a value an element (<c>45/35 W</c>), a range (<c>0..90 ohm</c>) or a count (<c>2x21 W</c>).
/// </summary>
/// <remarks>It is a statement, not a measurement: for computing take <see cref="Value"/> or <see cref="Values"/>, which are plain numbers in <see cref="Unit"/>.</remarks>
public sealed record StatedValue
{
    /// <summary>States a single value.</summary>
    /// <param name="value">The value in <paramref name="unit"/>; finite.</param>
    /// <param name="unit">Its unit.</param>
    /// <exception cref="ArgumentException"><paramref name="value"/> is not finite.</exception>
    public StatedValue(double value, Unit unit) : this([value], unit) { }

    /// <summary>States one or more values, one an element in the order of the kind's rating.</summary>
    /// <param name="values">At least one finite value in <paramref name="unit"/>.</param>
    /// <param name="unit">Their unit.</param>
    /// <exception cref="ArgumentException"><paramref name="values"/> is empty or holds a value that is not finite.</exception>
    public StatedValue(ImmutableArray<double> values, Unit unit)
    {
        if (values.IsDefaultOrEmpty || !values.All(double.IsFinite))
            throw new ArgumentException("A stated value has at least one value, and every value is finite.", nameof(values));
        Values = values;
        Unit = unit;
    }

    /// <summary>The values in <see cref="Unit"/>; at least one.</summary>
    public ImmutableArray<double> Values { get; }

    /// <summary>The unit of all values.</summary>
    public Unit Unit { get; }

    /// <summary>The upper end of a range whose lower end is <see cref="Value"/>; <see langword="null"/> when it is no range.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is not finite.</exception>
    public double? UpTo
    {
        get;
        init => field = value is null || double.IsFinite(value.Value) ? value : throw new ArgumentOutOfRangeException(nameof(value), value, "The end of a range is finite.");
    }

    /// <summary>How many alike things the value is meant for (<c>2x21 W</c>); 1 or more, default 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is below 1.</exception>
    public int Count
    {
        get;
        init => field = value >= 1 ? value : throw new ArgumentOutOfRangeException(nameof(value), value, "A count is 1 or more.");
    } = 1;

    /// <summary>The first (most often the only) value, in <see cref="Unit"/>.</summary>
    public double Value => Values[0];

    /// <summary>Whether both state the same; arrays are compared by content.</summary>
    /// <param name="other">The other statement.</param>
    public bool Equals(StatedValue? other) =>
        other is not null && Unit == other.Unit && Count == other.Count && UpTo == other.UpTo && Values.AsSpan().SequenceEqual(other.Values.AsSpan());

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Unit, Count, UpTo, Value, Values.Length);

    /// <summary>As it is written in a job file, such as <c>45/35 W</c>.</summary>
    public override string ToString() => QuantityText.Of(this);
}
