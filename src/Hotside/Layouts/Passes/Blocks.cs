using System.Collections.Immutable;

namespace Hotside.Layouts.Passes;

/// <summary>Stands and nets that hang together when the rails are taken away; laid out alone and set side by side.</summary>
internal sealed record Block(ImmutableArray<int> Stands, ImmutableArray<int> Nets);

/// <summary>Finds the blocks, in file order: no conductor of one can cross a conductor of another.</summary>
internal static class Blocks
{
    /// <summary>All as one block.</summary>
    public static ImmutableArray<Block> Undivided(Netlist netlist) => [new([.. Enumerable.Range(0, netlist.Stands.Length)], [.. Enumerable.Range(0, netlist.Nets.Length)])];

    public static ImmutableArray<Block> Of(Netlist netlist)
    {
        int stands = netlist.Stands.Length;
        DisjointSets sets = new(stands + netlist.Nets.Length);
        foreach (Tap tap in netlist.Taps.Where(t => t.OnTerminal)) sets.Join(netlist.StandOf(tap), stands + tap.Net);
        return [.. Enumerable.Range(0, stands + netlist.Nets.Length)
            .GroupBy(sets.Find)
            .Select(g => new Block([.. g.Where(i => i < stands)], [.. g.Where(i => i >= stands).Select(i => i - stands)]))];
    }
}
