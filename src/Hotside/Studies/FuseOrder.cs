using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Studies;

/// <summary>From the battery outward: what stands before other fuses feeds them and goes in first, or they are not tried at all.</summary>
/// <param name="study">The circuit, studied.</param>
internal sealed class FuseOrder(CircuitStudy study)
{
    private readonly ImmutableArray<ImmutableArray<string>> ways = [.. study.Loads.SelectMany(l => l.Paths)
        .Select(p => p.HotWay.Where(id => study.Circuit.FindPart(id) is { } part && IsFuse(part)).ToImmutableArray())];

    /// <summary>How many fuses stand before one on the ways of the loads, at most; of one on no load's way it is the greatest number, for it feeds none of the others.</summary>
    /// <param name="part">The fuse, or the block of fuses.</param>
    public int Before(string part) => ways.Select(w => w.IndexOf(part)).Where(at => at >= 0).DefaultIfEmpty(int.MaxValue).Max();

    // What a hand pulls: not the breaker within a switch.
    private static bool IsFuse(Part part) =>
        part.Kind.Elements is { IsEmpty: false } elements && (elements.Any(e => e.Type == ElementType.Fuse) || elements.All(e => e.Type == ElementType.Breaker));
}
