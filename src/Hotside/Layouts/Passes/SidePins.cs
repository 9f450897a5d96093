using System.Collections.Immutable;

namespace Hotside.Layouts.Passes;

/// <summary>
/// The column in which each terminal's conductor runs, from the stand's left edge. Conductors of terminals on the left and right side
/// bend into columns of their own beside the stand: the outermost terminal takes the nearest.
/// </summary>
internal sealed record SidePins(ImmutableArray<int> ColumnOf, ImmutableArray<int> ReachLeft, ImmutableArray<int> ReachRight)
{
    private const int Pitch = 2;

    public static SidePins Of(Netlist netlist, RowPlan rows)
    {
        int[] column = [.. netlist.Terminals.Select(t => t.X)];
        int[] left = new int[netlist.Stands.Length], right = new int[netlist.Stands.Length];
        Dictionary<int, bool> goesDown = [];
        foreach (Tap tap in netlist.Taps.Where(t => t.OnTerminal)) goesDown.TryAdd(tap.Terminal, rows.Above[tap.Id]);
        foreach (int pin in netlist.Signs.Select(l => HungLead.PinOf(netlist.Lines[l])).OfType<int>()) goesDown.TryAdd(pin, true);
        foreach (IGrouping<(int Stand, Side Side), Terminal> side in netlist.Terminals
            .Where(t => t.IsSideways && goesDown.ContainsKey(t.Id)).GroupBy(t => (t.Stand, t.Side)))
        {
            Terminal[] up = [.. side.Where(t => !goesDown[t.Id]).OrderBy(t => t.Y)];
            Terminal[] down = [.. side.Where(t => goesDown[t.Id]).OrderByDescending(t => t.Y)];
            bool interleaved = up.Length > 0 && down.Length > 0 && down[^1].Y <= up[^1].Y;
            int width = netlist.Stands[side.Key.Stand].Width, before = interleaved ? up.Length : 0;
            for (int k = 0; k < up.Length; k++) Place(up[k], k + 1);
            for (int k = 0; k < down.Length; k++) Place(down[k], before + k + 1);
            (side.Key.Side == Side.Left ? left : right)[side.Key.Stand] = Pitch * Math.Max(up.Length, before + down.Length);

            void Place(Terminal terminal, int place) =>
                column[terminal.Id] = side.Key.Side == Side.Left ? -Pitch * place : width + (Pitch * place);
        }
        return new([.. column], [.. left], [.. right]);
    }
}
