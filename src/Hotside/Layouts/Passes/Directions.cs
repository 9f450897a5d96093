using System.Collections.Immutable;

namespace Hotside.Layouts.Passes;

/// <summary>Says of each tap whether it lies above its trunk: lower pins and the feed do, upper pins and chassis do not.</summary>
internal static class Directions
{
    public static ImmutableArray<bool> Of(Netlist netlist, Heights heights, Recollection? known)
    {
        bool[] above = [.. netlist.Taps.Select(t => t.OnTerminal && netlist.Terminals[t.Terminal].IsSideways && known?.Of(t) is { } then ? then.Above : IsAbove(netlist, heights, t))];
        foreach (IGrouping<(int, Side), Tap> side in netlist.Taps
            .Where(t => t.OnTerminal && netlist.Terminals[t.Terminal].IsSideways)
            .GroupBy(t => (netlist.StandOf(t), netlist.Terminals[t.Terminal].Side)))
            UncrossCorner(netlist, side, above);
        return [.. above];
    }

    private static bool IsAbove(Netlist netlist, Heights heights, Tap tap)
    {
        if (BySide(netlist, tap) is { } said) return said;
        // What all else lies above or below is reached without turning back.
        bool[] others = [.. netlist.Nets[tap.Net].Taps.Select(t => BySide(netlist, netlist.Taps[t])).OfType<bool>().Distinct()];
        if (others.Length == 1) return !others[0];
        IEnumerable<double> far =
            from line in netlist.Nets[tap.Net].Lines.Select(l => netlist.Lines[l])
            where line.From.Terminal == tap.Terminal || line.To.Terminal == tap.Terminal
            select heights.At(line.From.Terminal == tap.Terminal ? line.To : line.From);
        return heights.OfTerminal[tap.Terminal] > far.Average();
    }

    // What its kind or its side says; nothing of a side that leads neither up nor down.
    private static bool? BySide(Netlist netlist, Tap tap) =>
        !tap.OnTerminal ? tap.Kind == EndKind.Feed : netlist.Terminals[tap.Terminal] is { IsSideways: false } terminal ? terminal.Side == Side.Bottom : null;

    /// <summary>
    /// Of the terminals on one side the upper ones go up and the lower ones down, or their conductors cross in the corner; the split
    /// is made where it disagrees with the heights least.
    /// </summary>
    private static void UncrossCorner(Netlist netlist, IEnumerable<Tap> side, bool[] above)
    {
        Tap[] taps = [.. side];
        int[] downwards = [.. taps.Select(t => t.Terminal).Distinct().OrderBy(t => netlist.Terminals[t].Y)];
        if (downwards.Length < 2) return;
        int split = Enumerable.Range(0, downwards.Length + 1).MinBy(s => taps.Count(t => above[t.Id] != (Array.IndexOf(downwards, t.Terminal) >= s)));
        foreach (Tap tap in taps) above[tap.Id] = Array.IndexOf(downwards, tap.Terminal) >= split;
    }
}
