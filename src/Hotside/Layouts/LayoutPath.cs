namespace Hotside.Layouts;

/// <summary>A way of the current inside a box, between two of its pins or places inside: what is hot on one side is nearly as hot on the other where it conducts well.</summary>
/// <param name="From">A pin, or any other name for a place inside.</param>
/// <param name="To">The other end.</param>
/// <param name="Conductance">How well it conducts, where a conductor of the drawing has 4: in line 10, in series 1, a load 0.25, what is open 0.02.</param>
internal sealed record LayoutPath(string From, string To, double Conductance);

/// <summary>A pin whose height a source holds: its hot pole is as hot as anything, its other pole is the return.</summary>
internal sealed record LayoutPole(string Pin, bool IsHot);
