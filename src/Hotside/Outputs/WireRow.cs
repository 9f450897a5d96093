namespace Hotside;

/// <summary>A wire's line in the wire list. What is not known is empty.</summary>
/// <param name="Numbers">The numbers of the changes that concern it, with commas between; empty when none does.</param>
/// <param name="Id">Its id.</param>
/// <param name="From">One end, such as <c>K1.85</c>: as it will be, or as it was for a wire that is taken out.</param>
/// <param name="To">The other end.</param>
/// <param name="Size">Its size with the unit, such as <c>14 AWG</c>.</param>
/// <param name="Colour">Its colour's code (IEC 60757), such as <c>RD/WH</c>; <c>braid</c> for a bare one.</param>
/// <param name="LengthInMetres">Its length in metres, above 0; <see langword="null"/> when not measured.</param>
/// <param name="Loom">The loom it runs in.</param>
/// <param name="Change">What becomes of it, in words: <c>moved from S1.1 to K1.85</c>.</param>
public sealed record WireRow(string Numbers, string Id, string From, string To, string Size, string Colour, double? LengthInMetres, string Loom, string Change);
