using System.Collections.Immutable;

namespace Hotside.Layouts.Passes;

/// <summary>Turns over the parts whose upper pins are nearer to chassis than their lower ones, where the symbol allows.</summary>
internal static class Turning
{
    private const double Clear = 0.01;

    public static Union Of(Union union, Heights heights, LayoutMemory? memory)
    {
        HashSet<int> wired = [.. union.Lines.SelectMany(l => new[] { l.From.Terminal, l.To.Terminal })];
        ILookup<int, Terminal> byStand = union.Terminals.Where(t => wired.Contains(t.Id)).ToLookup(t => t.Stand);
        ImmutableArray<Stand> stands = [.. union.Stands.Select(s => s with { Turned = HangsUpsideDown(s) })];
        return union with { Stands = stands, Terminals = [.. union.Terminals.Select(t => stands[t.Stand].Turned ? Turned(t) : t)] };

        bool HangsUpsideDown(Stand stand) =>
            stand.Boxes.All(b => b.Box.MayTurnOver)
            && (memory is not null && memory.Boxes.TryGetValue(stand.Boxes[0].Box.Id, out var known) ? known.Turned
                : Mean(stand, Side.Top) is { } top && Mean(stand, Side.Bottom) is { } bottom && top < bottom - Clear);

        double? Mean(Stand stand, Side side) =>
            byStand[stand.Id].Where(t => t.Side == side).Select(t => (double?)heights.OfTerminal[t.Id]).Average();

        Terminal Turned(Terminal t) => t with { Side = t.Side.TurnedOver(), Y = stands[t.Stand].Height - t.Y };
    }
}
