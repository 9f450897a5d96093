using System.Collections.Immutable;
using Hotside.Symbols;

namespace Hotside.Layouts.Passes;

/// <summary>
/// Puts stands into rows and trunks into channels so that conductors run down over as few rows as may be. Ends on the rails weigh most:
/// fuses then hang in one line under the feed and loads stand in one line on chassis, as a draughtsman sets them.
/// </summary>
internal static class Rows
{
    private const int FeedWeight = 10, ChassisWeight = 12, InnerWeight = 4, OnRail = 1, AsItStood = 5000;

    public static RowPlan Of(Netlist netlist, ImmutableArray<bool> directions, Recollection? known, bool hangsHigh)
    {
        Plan plan = new(netlist, [.. directions], known, hangsHigh);
        return plan.Solve();
    }

    /// <summary>The system being built; variables are stands, then nets, then the top and the bottom of the drawing.</summary>
    private sealed class Plan(Netlist netlist, bool[] above, Recollection? known, bool hangsHigh)
    {
        private readonly NetworkSimplex simplex = new();
        private readonly List<int>[] below = [.. Enumerable.Range(0, netlist.Stands.Length + netlist.Nets.Length).Select(_ => new List<int>())];
        private readonly bool[] climbs = new bool[netlist.Taps.Length];

        private int Stands => netlist.Stands.Length;

        public RowPlan Solve()
        {
            for (int i = 0; i < below.Length; i++) simplex.AddVariable();
            int top = simplex.AddVariable(), bottom = simplex.AddVariable();
            foreach (Tap tap in netlist.Taps.Where(t => t.OnTerminal).OrderBy(t => Rank(t.Seen)).ThenBy(t => Rank(netlist.Nets[t.Net].Seen))) Hang(tap);
            for (int i = 0; i < below.Length; i++)
            {
                simplex.AtLeast(top, i, i < Stands ? 1 : 0);
                simplex.AtLeast(i, bottom, 0);
            }
            foreach (Tap tap in netlist.Taps.Where(t => !t.OnTerminal))
                if (tap.Kind == EndKind.Feed) simplex.AtLeast(top, Stands + tap.Net, 0, FeedWeight);
                else simplex.AtLeast(Stands + tap.Net, bottom, 0, ChassisWeight);
            HangLoose(top, bottom);
            foreach (Tap tap in netlist.Taps.Where(t => climbs[t.Id])) simplex.Near(netlist.StandOf(tap), 0, Stands + tap.Net, 0, 1);
            simplex.AtLeast(top, bottom, Math.Max(1, known?.Rows ?? 1), 1);
            foreach (var stand in netlist.Stands)
                if (known?.Of(stand) is { } then) simplex.Near(stand.Id, 0, top, then.Row, AsItStood);
            int[] solution = simplex.Solve() ?? throw new InvalidOperationException("Rows were given a cycle.");
            int rows = solution[bottom] - solution[top];
            int[] rowOf = [.. solution[..Stands].Select(v => v - solution[top])];
            int[] trunkOf = [.. solution[Stands..below.Length].Select(v => v - solution[top])];
            CentreLoners(rows, rowOf, trunkOf);
            SettleTrunks(rows, rowOf, trunkOf);
            return new(rows, [.. rowOf], [.. trunkOf], [.. above], [.. climbs]);
        }

        private static int Rank(SeenIn seen) => seen switch { SeenIn.Both => 0, SeenIn.After => 1, _ => 2 };

        /// <summary>The tap's stand above or below its trunk; a tap that would close a cycle climbs instead.</summary>
        private void Hang(Tap tap)
        {
            int stand = netlist.StandOf(tap), net = Stands + tap.Net;
            if (Closes(stand, net, above[tap.Id]))
            {
                bool canTurn = netlist.Terminals[tap.Terminal].IsSideways && !Closes(stand, net, !above[tap.Id]);
                if (!canTurn)
                {
                    climbs[tap.Id] = true;
                    return;
                }
                above[tap.Id] = !above[tap.Id];
            }
            (int upper, int lower) = above[tap.Id] ? (stand, net) : (net, stand);
            below[upper].Add(lower);
            // Slack lies between parts, not between a part and the rail on which it alone hangs; a battery stands where it is wired to.
            bool onRail = !hangsHigh && netlist.Stands[stand].Boxes.All(b => b.Box.Poles.IsEmpty) && netlist.Nets[tap.Net].Taps is [var one, var other] && netlist.Taps[one == tap.Id ? other : one].Kind != EndKind.Pin;
            simplex.AtLeast(upper, lower, above[tap.Id] ? 0 : 1, (tap.Seen == SeenIn.Both ? 2 * InnerWeight : InnerWeight) + (onRail ? OnRail : 0));
        }

        /// <summary>A part on which nothing hangs below stands on chassis all the same if its like do; one with nothing above under the feed.</summary>
        private void HangLoose(int top, int bottom)
        {
            var wired = netlist.Taps.Where(t => t.OnTerminal).ToLookup(netlist.StandOf, t => netlist.Terminals[t.Terminal].Side);
            HashSet<string> onChassis = AlikeOn(EndKind.Chassis), underFeed = AlikeOn(EndKind.Feed);
            // Where a line leaves the page is no part: all such ends look alike.
            foreach (var stand in netlist.Stands.Where(s => s.Shape.Length > 0 && !s.Boxes.Any(b => b.Box.IsFeedEnd || b.Box.IsReturnEnd)))
            {
                bool hasAbove = wired[stand.Id].Contains(Side.Top), hasBelow = wired[stand.Id].Contains(Side.Bottom);
                if (hasAbove && !hasBelow && onChassis.Contains(stand.Shape)) simplex.AtLeast(stand.Id, bottom, 0, ChassisWeight);
                if (hasBelow && !hasAbove && underFeed.Contains(stand.Shape)) simplex.AtLeast(top, stand.Id, 1, FeedWeight);
            }
        }

        /// <summary>The shapes of the parts that a conductor joins to a rail.</summary>
        private HashSet<string> AlikeOn(EndKind rail) =>
            [.. netlist.Nets.Where(n => n.Taps.Any(t => netlist.Taps[t].Kind == rail)).SelectMany(n => n.Taps).Select(t => netlist.StandOf(netlist.Taps[t])).Where(s => s >= 0).Select(s => netlist.Stands[s].Shape)];

        private bool Closes(int stand, int net, bool standAbove) => standAbove ? Reaches(net, stand) : Reaches(stand, net);

        private bool Reaches(int from, int to)
        {
            HashSet<int> seen = [from];
            Stack<int> open = new([from]);
            while (open.TryPop(out int at))
            {
                if (at == to) return true;
                foreach (int next in below[at])
                    if (seen.Add(next)) open.Push(next);
            }
            return false;
        }

        /// <summary>A part that hangs between the two rails alone, as a battery does, stands half way down; metal stands on the chassis.</summary>
        private void CentreLoners(int rows, int[] rowOf, int[] trunkOf)
        {
            ILookup<int, Net> netsOf = netlist.Taps.Where(t => t.OnTerminal).ToLookup(netlist.StandOf, t => netlist.Nets[t.Net]);
            foreach (Stand stand in netlist.Stands)
            {
                Net[] nets = [.. netsOf[stand.Id].Distinct()];
                bool isEnd = stand.Boxes.Any(b => b.Box.IsFeedEnd || b.Box.IsReturnEnd || b.Box.IsBody);
                bool alone = !isEnd && nets.All(n => n.Joints.IsEmpty && n.Taps.All(t => netlist.StandOf(netlist.Taps[t]) is var s && (s == -1 || s == stand.Id)));
                if (!alone || known?.Of(stand) is not null || nets.SelectMany(n => n.Taps).Any(t => climbs[t])) continue;
                rowOf[stand.Id] = (1 + rows) / 2;
                foreach (Net net in nets)
                    trunkOf[net.Id] = above[net.Taps.First(t => netlist.Taps[t].OnTerminal)] ? rowOf[stand.Id] : rowOf[stand.Id] - 1;
            }
        }

        /// <summary>Within its freedom a trunk lies close to the side where it has more taps.</summary>
        private void SettleTrunks(int rows, int[] rowOf, int[] trunkOf)
        {
            foreach (Net net in netlist.Nets)
            {
                Tap[] taps = [.. net.Taps.Select(t => netlist.Taps[t])];
                int highest = 0, lowest = rows;
                foreach (Tap tap in taps.Where(t => t.OnTerminal && !climbs[t.Id]))
                    if (above[tap.Id]) highest = Math.Max(highest, rowOf[netlist.StandOf(tap)]);
                    else lowest = Math.Min(lowest, rowOf[netlist.StandOf(tap)] - 1);
                int over = taps.Count(t => above[t.Id]), under = taps.Length - over;
                if (highest <= lowest)
                    trunkOf[net.Id] = known?.Of(net) is { } then && then.Channel >= highest && then.Channel <= lowest ? then.Channel : over > under ? highest : under > over ? lowest : Math.Clamp(trunkOf[net.Id], highest, lowest);
            }
            foreach (Tap tap in netlist.Taps.Where(t => climbs[t.Id]))
            {
                int row = rowOf[netlist.StandOf(tap)], trunk = trunkOf[tap.Net];
                climbs[tap.Id] = above[tap.Id] ? row > trunk : row <= trunk;
            }
        }
    }
}
