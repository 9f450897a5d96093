namespace Hotside.Circuits;

/// <summary>Something that can be in one of several positions: an actuator of a part, or a condition that parts share.</summary>
/// <param name="Part">The part's id; <see langword="null"/> for a shared condition.</param>
/// <param name="Actuator">The actuator, with its positions.</param>
public sealed record Variable(string? Part, Actuator Actuator)
{
    /// <summary>Its name as a setting would have it: <c>S1</c> where the part has no other, else <c>S5 turn</c>, or <c>engine</c>.</summary>
    public required string Label { get; init; }

    /// <summary>Whether both mean the same actuator.</summary>
    /// <param name="other">The other variable.</param>
    public bool Equals(Variable? other) => other is not null && other.Part == Part && other.Actuator.Name == Actuator.Name;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Part, Actuator.Name);

    /// <inheritdoc/>
    public override string ToString() => Label;
}
