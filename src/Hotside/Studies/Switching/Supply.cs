using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Studies.Switching;

/// <summary>A pole of a source, or the common return.</summary>
/// <param name="Point">Its point.</param>
/// <param name="When">When it has its potential against the return.</param>
/// <param name="End">The terminal itself.</param>
internal sealed record Pole(int Point, Condition When, End End);

/// <summary>Two groups of poles between which a load may be fed; the poles of a group are equal.</summary>
/// <param name="Hot">The poles farther from the return.</param>
/// <param name="Return">The poles nearer to it, or the common return.</param>
/// <param name="Others">All other poles: a path meets none of them.</param>
/// <param name="HotIsHigher">Whether current leaves the hot poles rather than the return.</param>
internal sealed record Supply(ImmutableArray<Pole> Hot, ImmutableArray<Pole> Return, ImmutableArray<Pole> Others, bool HotIsHigher)
{
    /// <summary>All poles: the hot ones, the return's, the others.</summary>
    public ImmutableArray<Pole> Poles { get; } = [.. Hot, .. Return, .. Others];

    /// <summary>The most volts between a pole of one group and one of the other, by what they are rated.</summary>
    public required double Volts { get; init; }

    /// <summary>Whether these are a source's own posts, of which neither need stand on anything.</summary>
    public bool IsAcrossPosts { get; init; }
}
