using Hotside.Circuits;

namespace Hotside.Studies.Figures;

/// <summary>A figure that the circuit does not state and that was taken for computing.</summary>
/// <param name="Of">A conductor's id, or an element such as <c>H1.horn</c>.</param>
/// <param name="Value">What was taken.</param>
/// <param name="Source">Where it is from: what a kind commonly has with its source, or the library's own choice.</param>
public sealed record AssumedValue(string Of, StatedValue Value, string Source);
