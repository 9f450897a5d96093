namespace Hotside.Layouts;

/// <summary>A way of the current inside a box, between two of its pins or places inside: what is hot on one side is nearly as hot on the other where it conducts well.</summary>
/// <param name="From">A pin, or any other name for a place inside.</param>
/// <param name="To">The other end.</param>
/// <param name="Conductance">1 for a load, more for what is in line.</param>
internal sealed record LayoutPath(string From, string To, double Conductance);

/// <summary>A pin whose height a source holds: its hot pole is as hot as anything, its other pole is the return.</summary>
internal sealed record LayoutPole(string Pin, bool IsHot);
