namespace Hotside.Circuits;

/// <summary>One rated value of a part under the name that its kind gives it: the unit alone (<c>V</c>) or words and the unit (<c>coil A</c>).</summary>
/// <param name="Name">The rating's name in the kind's <see cref="PartKind.Ratings"/>.</param>
/// <param name="Quantity">What is stated.</param>
public sealed record Rating(string Name, StatedValue Quantity);
