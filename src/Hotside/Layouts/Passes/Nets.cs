using System.Collections.Immutable;
using Hotside.Symbols;

namespace Hotside.Layouts.Passes;

/// <summary>
/// Gathers conductors into nets: joined at joints always, at terminals when a view shows both. A join is refused when some view would
/// then see two potentials in one net: an old feed and the fuse fitted into it share a terminal but are never one tree.
/// </summary>
internal static class Nets
{
    /// <param name="union">Both circuits.</param>
    /// <param name="heights">Which end of a conductor is up.</param>
    /// <param name="apart">The conductors, by number, that run beside the nets they belong to.</param>
    /// <param name="signs">The conductors, by number, that end at a chassis sign of their own: they are no nets.</param>
    public static Netlist Of(Union union, Heights heights, IReadOnlySet<int> apart, ImmutableHashSet<int> signs)
    {
        HashSet<int> stands = [];
        while (JointInTheWay(union, stands, apart) is { } joint) stands.Add(joint);
        return Build(StandUp(union, heights, stands), apart, signs);
    }

    /// <summary>A joint that cannot be a point on one trunk: it would tie apart potentials, two rails, or a net without any tap.</summary>
    private static int? JointInTheWay(Union union, HashSet<int> stands, IReadOnlySet<int> apart)
    {
        Gathering gathering = new(union);
        for (int joint = 0; joint < union.Joints.Length; joint++)
        {
            if (stands.Contains(joint)) continue;
            int[] lines = [.. union.Lines.Where(l => l.From.Joint == joint || l.To.Joint == joint).OrderBy(l => Order(l.Seen)).Select(l => l.Id)];
            if (lines.Any(line => !gathering.Join(lines[0], line))) return joint;
            if (union.Joints[joint].IsRail && lines.Length > 0 && !gathering.TakeRail(lines[0])) return joint;
        }
        gathering.JoinAtTerminals(apart);
        foreach (IGrouping<int, Line> net in union.Lines.GroupBy(l => gathering.Find(l.Id)))
            if (net.All(l => Floats(l.From) && Floats(l.To))) return net.First().From.Joint;
        return null;

        bool Floats(LineEnd end) => end.OnJoint && !stands.Contains(end.Joint);
    }

    /// <summary>Conductors of both views are joined first, then those of after: after is the circuit that stays.</summary>
    private static int Order(SeenIn seen) => seen switch { SeenIn.Both => 0, SeenIn.After => 1, _ => 2 };

    /// <summary>Makes stands of joints, with one terminal above for what is hotter and one below for the rest.</summary>
    private static Union StandUp(Union union, Heights heights, HashSet<int> standing)
    {
        List<Stand> stands = [.. union.Stands];
        List<Terminal> terminals = [.. union.Terminals];
        Dictionary<int, (int Above, int Below)> ends = [];
        foreach (int joint in standing.Order())
        {
            LayoutBox box = union.Joints[joint];
            stands.Add(new(stands.Count, box.Seen, [new(box, 0, 0)], 0, 0, false));
            ends[joint] = (terminals.Count, terminals.Count + 1);
            terminals.Add(new(terminals.Count, stands.Count - 1, Side.Top, 0, 0, box.Seen));
            terminals.Add(new(terminals.Count, stands.Count - 1, Side.Bottom, 0, 0, box.Seen));
        }
        ImmutableArray<Line> lines = [.. union.Lines.Select(l => l with { From = End(l.From, l.To), To = End(l.To, l.From) })];
        return union with { Stands = [.. stands], Terminals = [.. terminals], Lines = lines };

        LineEnd End(LineEnd end, LineEnd far) =>
            !end.OnJoint || !ends.TryGetValue(end.Joint, out (int Above, int Below) pair) ? end
            : new(EndKind.Pin, heights.At(far) > heights.OfJoint[end.Joint] ? pair.Above : pair.Below, -1);
    }

    private static Netlist Build(Union union, IReadOnlySet<int> apart, ImmutableHashSet<int> signs)
    {
        Gathering gathering = new(union);
        gathering.JoinAtJoints();
        gathering.JoinAtTerminals(apart);
        List<Net> nets = [];
        List<Tap> taps = [];
        foreach (IGrouping<int, Line> group in union.Lines.Where(l => !signs.Contains(l.Id)).GroupBy(l => gathering.Find(l.Id)))
        {
            Line[] lines = [.. group];
            int first = taps.Count;
            Dictionary<int, int> known = [];
            foreach (Line line in lines)
                foreach (var (end, isFrom) in new[] { (line.From, true), (line.To, false) })
                    if (end.OnTerminal && known.TryGetValue(end.Terminal, out int tap))
                        taps[tap] = taps[tap] with { Seen = taps[tap].Seen | line.Seen, Ends = taps[tap].Ends.Add(new(line.Id, isFrom)) };
                    else if (!end.OnJoint)
                    {
                        if (end.OnTerminal) known[end.Terminal] = taps.Count;
                        taps.Add(new(taps.Count, nets.Count, end.Kind, end.Terminal, line.Seen, [new(line.Id, isFrom)]));
                    }
            ImmutableArray<int> joints = [.. lines.SelectMany(l => new[] { l.From.Joint, l.To.Joint }).Where(j => j >= 0).Distinct()];
            SeenIn seen = lines.Aggregate((SeenIn)0, (mask, l) => mask | l.Seen);
            nets.Add(new(nets.Count, seen, [.. lines.Select(l => l.Id)], [.. Enumerable.Range(first, taps.Count - first)], joints, gathering.Electric(group.Key)) { RunsApart = lines.Length == 1 && apart.Contains(lines[0].Id) });
        }
        return new(union.Stands, union.Terminals, union.Lines, union.Joints, [.. nets], [.. taps]) { Signs = signs };
    }

    /// <summary>Lines being gathered into nets, with what each set is joined to in each view.</summary>
    private sealed class Gathering
    {
        private readonly Union union;
        private readonly DisjointSets sets;
        private readonly int[] before, after;
        private readonly HashSet<int> withRail = [];

        public Gathering(Union union)
        {
            this.union = union;
            sets = new(union.Lines.Length);
            before = JoinedIn(SeenIn.Before);
            after = JoinedIn(SeenIn.After);
        }

        public int Find(int line) => sets.Find(line);

        public (int Before, int After) Electric(int set) => (before[set], after[set]);

        public bool Join(int a, int b)
        {
            (a, b) = (sets.Find(a), sets.Find(b));
            if (a == b) return true;
            if (Apart(before, a, b) || Apart(after, a, b) || (withRail.Contains(a) && withRail.Contains(b))) return false;
            bool rail = withRail.Contains(a) || withRail.Contains(b);
            (int first, int second) = (Math.Max(before[a], before[b]), Math.Max(after[a], after[b]));
            sets.Join(a, b);
            a = sets.Find(a);
            (before[a], after[a]) = (first, second);
            if (rail) withRail.Add(a);
            return true;
        }

        public bool TakeRail(int line) => withRail.Add(sets.Find(line));

        public void JoinAtJoints()
        {
            for (int joint = 0; joint < union.Joints.Length; joint++)
            {
                int[] lines = [.. union.Lines.Where(l => l.From.Joint == joint || l.To.Joint == joint).Select(l => l.Id)];
                foreach (int line in lines) Join(lines[0], line);
                if (union.Joints[joint].IsRail && lines.Length > 0) TakeRail(lines[0]);
            }
        }

        /// <summary>Also joins two forms of a line between the same points, though no view shows both: they share one way.</summary>
        public void JoinAtTerminals(IReadOnlySet<int> apart)
        {
            Line[][] meetings = [.. union.Lines
                .Where(l => !apart.Contains(l.Id)).SelectMany(l => new[] { l.From.Terminal, l.To.Terminal }.Where(t => t >= 0).Distinct().Select(t => (Terminal: t, Line: l)))
                .GroupBy(e => e.Terminal, e => e.Line).Select(g => g.ToArray())];
            foreach (SeenIn wanted in new[] { SeenIn.Both, SeenIn.After, SeenIn.Before, (SeenIn)0 })
                foreach (Line[] meeting in meetings)
                    for (int i = 0; i < meeting.Length; i++)
                        for (int j = i + 1; j < meeting.Length; j++)
                            if ((meeting[i].Seen & meeting[j].Seen) == wanted && (wanted != 0 || SamePoints(meeting[i], meeting[j])))
                                Join(meeting[i].Id, meeting[j].Id);
        }

        private static bool SamePoints(Line a, Line b) => (a.From == b.From && a.To == b.To) || (a.From == b.To && a.To == b.From);

        private static bool Apart(int[] view, int a, int b) => view[a] >= 0 && view[b] >= 0 && view[a] != view[b];

        private int[] JoinedIn(SeenIn view)
        {
            DisjointSets joined = new(union.Lines.Length);
            Dictionary<LineEnd, int> known = [];
            Line[] shown = [.. union.Lines.Where(l => (l.Seen & view) != 0)];
            foreach (Line line in shown)
                foreach (LineEnd end in new[] { line.From, line.To })
                    if (end.OnTerminal || end.OnJoint)
                    {
                        if (known.TryGetValue(end, out int other)) joined.Join(other, line.Id);
                        else known[end] = line.Id;
                    }
            int[] result = [.. Enumerable.Repeat(-1, union.Lines.Length)];
            foreach (Line line in shown) result[line.Id] = joined.Find(line.Id);
            return result;
        }
    }
}
