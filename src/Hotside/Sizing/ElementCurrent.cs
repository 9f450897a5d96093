using Hotside.Circuits;
using UnitsNet;

namespace Hotside.Sizing;

/// <summary>The greatest steady current through something in line: a contact, a fuse, a diode, a resistor.</summary>
/// <param name="Part">The part.</param>
/// <param name="Element">The element.</param>
/// <param name="Current">The current, 0 or more.</param>
/// <param name="Basis">How it was found.</param>
public sealed record ElementCurrent(Part Part, Element Element, ElectricCurrent Current, CurrentBasis Basis);
