using System.Collections.Immutable;
using Hotside.Layouts;

namespace Hotside.Tests.Layouts;

/// <summary>
/// How much of a drawing keeps its place when a conductor is taken out and all is laid out again: the share of the boxes left that stand where they
/// stood, after the shift of the whole that serves most of them.
/// </summary>
internal sealed record BenchKept(string Without, LayoutInput Input, Layout Layout, double Percent)
{
    // A dozen conductors stand for all of a circuit.
    private const int Deletions = 12;

    /// <summary>One result for each of about a dozen conductors, in file order.</summary>
    public static ImmutableArray<BenchKept> Of(LayoutInput input, Layout layout, bool withPrevious)
    {
        string[] conductors = [.. input.Wires.Select(w => w.Conductor).Distinct(StringComparer.Ordinal)];
        int step = Math.Max(1, conductors.Length / Deletions);
        return [.. conductors.Where((_, i) => i % step == 0).Select(c => Of(input, layout, c, withPrevious))];
    }

    private static BenchKept Of(LayoutInput input, Layout layout, string conductor, bool withPrevious)
    {
        ImmutableArray<LayoutWire> wires = [.. input.Wires.Where(w => w.Conductor != conductor)];
        var used = wires.SelectMany(w => new[] { w.From.Box, w.To.Box }).ToHashSet(StringComparer.Ordinal);
        var left = input with { Wires = wires, Boxes = [.. input.Boxes.Where(b => used.Contains(b.Id))] };
        var drawn = Layout.Of(left, new(), withPrevious ? layout : null);
        var stood = layout.Boxes.ToDictionary(b => b.Id, StringComparer.Ordinal);
        int most = drawn.Boxes.CountBy(b => (b.X - stood[b.Id].X, b.Y - stood[b.Id].Y)).Max(g => g.Value);
        return new(conductor, left, drawn, 100.0 * most / drawn.Boxes.Length);
    }
}
