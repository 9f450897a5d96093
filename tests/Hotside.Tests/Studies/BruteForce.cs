using Hotside.Circuits;

namespace Hotside.Tests.Studies;

/// <summary>
/// The verdicts of a small circuit by their definition: every choice of positions, every order of single relay moves, simple paths walked on the plain graph. It shares
/// the circuit's model with the library and nothing else.
/// </summary>
internal sealed class BruteForce
{
    private readonly Circuit circuit;
    private readonly Variable[] free;
    private readonly Variable[] relays;
    private readonly Dictionary<string, int> points = [];
    private readonly List<int> parents = [];
    private readonly List<Piece> pieces = [];
    private readonly int chassis;

    /// <summary>An inner element between two points.</summary>
    public sealed record Piece(Part Part, Element Element, int A, int B);

    public BruteForce(Circuit circuit)
    {
        this.circuit = circuit;
        free = [.. circuit.Variables.Where(v => v.Actuator is { Drive: not ActuatorDrive.Driven, Cycles: false, IsNoControl: false })];
        relays = [.. circuit.Variables.Where(v => v.Actuator.Drive == ActuatorDrive.Driven)];
        foreach (var c in circuit.Conductors.Where(c => !c.From.IsFree && !c.To.IsFree)) Join(Point(c.From.ToString()), Point(c.To.ToString()));
        foreach (var part in circuit.Parts)
        {
            foreach (var joint in part.Joints) Join(Point(part.Id + "." + joint.Terminal), Point(joint.On.ToString()));
            if (part.CaseOn is { } on) Join(Point(part.Id + ".case"), Point(on.ToString()));
            foreach (var e in part.Kind.Elements) pieces.Add(new(part, e, Point(part.Id + "." + e.From), Point(part.Id + "." + e.To)));
        }
        foreach (var p in pieces.Where(p => p.Element is { IsLink: true, Directs: false, When: null })) Join(p.A, p.B);
        chassis = Point((circuit.System.Return ?? End.Chassis).ToString());
        States = [.. Choices(free)];
    }

    public IReadOnlyList<Dictionary<Variable, string>> States { get; }

    /// <summary>What a path through consumers may pass.</summary>
    public IEnumerable<Piece> Windings => pieces.Where(p => p.Element.IsConsumer || p.Element is { IsSource: true, TakesEitherPolarity: true });

    public IEnumerable<Piece> Loads => pieces.Where(p => p.Element.IsConsumer);

    public IReadOnlyList<Variable> Relays => relays;

    /// <summary>The full states that count for a choice of positions: those of rest, or all passed and all that recur when there is no rest.</summary>
    public sealed record Settled(List<Net> Counted, List<Net> Recurring, List<Net> Passed, bool Rests);

    public Settled Settle(Dictionary<Variable, string> positions)
    {
        List<Dictionary<Variable, string>> found = [relays.Aggregate(new Dictionary<Variable, string>(positions), (d, r) => { d[r] = r.Actuator.Rest; return d; })];
        Dictionary<string, int> index = new() { [Key(found[0])] = 0 };
        List<List<int>> moves = [];
        List<Net> nets = [];
        for (int i = 0; i < found.Count; i++)
        {
            nets.Add(new(this, found[i]));
            moves.Add([]);
            foreach (var relay in relays)
            {
                string next = Next(nets[i], relay);
                if (next == found[i][relay]) continue;
                var moved = new Dictionary<Variable, string>(found[i]) { [relay] = next };
                if (!index.TryGetValue(Key(moved), out int to))
                {
                    index[Key(moved)] = to = found.Count;
                    found.Add(moved);
                }
                moves[i].Add(to);
            }
        }
        var rests = nets.Where((_, i) => moves[i].Count == 0).ToList();
        if (rests.Count > 0) return new(rests, rests, nets, true);
        var reach = moves.Select((_, i) => Reach(moves, i)).ToList();
        return new(nets, [.. nets.Where((_, i) => reach[i].All(j => reach[j].Contains(i)))], nets, false);
    }

    /// <summary>The number of a point when all that is always joined is one.</summary>
    public int PointOf(int end) => Root(end);

    /// <summary>The point of the common return.</summary>
    public int Return => Root(chassis);

    public IEnumerable<Piece> Pieces => pieces;

    public bool IsPositive => circuit.System.Ground == Ground.Positive;

    private string Key(Dictionary<Variable, string> state) => string.Join(",", relays.Select(r => state[r]));

    private static HashSet<int> Reach(List<List<int>> moves, int from)
    {
        HashSet<int> seen = [from];
        Stack<int> open = new([from]);
        while (open.TryPop(out int i)) foreach (int to in moves[i].Where(seen.Add)) open.Push(to);
        return seen;
    }

    private string Next(Net net, Variable relay)
    {
        var actuator = relay.Actuator;
        bool Pulls(string coil) => net.Energises(pieces.First(p => p.Part.Id == relay.Part && p.Element.Name == coil));
        foreach (string position in actuator.Positions.Skip(1).Append(actuator.Rest))
            if (actuator.Pulls.Any(p => p.Position == position && p.Coils.Any(Pulls))) return position;
        return actuator.Stays || actuator.KeptBy.Any(Pulls) ? net.State[relay] : actuator.Rest;
    }

    private static IEnumerable<Dictionary<Variable, string>> Choices(IReadOnlyList<Variable> variables)
    {
        IEnumerable<Dictionary<Variable, string>> all = [[]];
        foreach (var v in variables) all = all.SelectMany(d => v.Actuator.Positions.Select(p => new Dictionary<Variable, string>(d) { [v] = p }));
        return all;
    }

    private int Point(string name)
    {
        if (!points.TryGetValue(name, out int i))
        {
            points[name] = i = parents.Count;
            parents.Add(i);
        }
        return i;
    }

    private int Root(int i) => parents[i] == i ? i : Root(parents[i]);

    private void Join(int a, int b) => parents[Root(a)] = Root(b);

    /// <summary>The circuit in one full state.</summary>
    public sealed class Net
    {
        private readonly BruteForce owner;
        private readonly int[] root;
        private readonly List<Piece> passable = [];
        private readonly List<(int Plus, int Minus, double Volts)> sources = [];
        // Potentials of poles within their group of sources; group 0 holds the return.
        private readonly Dictionary<int, (int Group, double Volts)> poles = [];
        private readonly Dictionary<Piece, bool> energised = [];

        public Net(BruteForce owner, Dictionary<Variable, string> state)
        {
            this.owner = owner;
            State = state;
            root = [.. owner.parents.Select((_, i) => owner.Root(i))];
            foreach (var p in owner.pieces.Where(p => p.Element.IsLink && !p.Element.Directs && Conducts(p))) Merge(p.A, p.B);
            foreach (var p in owner.pieces.Where(p => p.Element.IsSource))
            {
                bool gives = Conducts(p), plusFirst = !p.Element.TakesEitherPolarity || owner.circuit.System.Ground != Ground.Positive;
                double volts = p.Part.Ratings.First(r => r.Name == "V").Quantity.Value;
                if (gives) sources.Add(plusFirst ? (p.A, p.B, volts) : (p.B, p.A, volts));
                else if (p.Element.TakesEitherPolarity) passable.Add(p);
            }
            passable.AddRange(owner.pieces.Where(p => (p.Element.IsConsumer || (p.Element.IsInLine && (!p.Element.IsLink || p.Element.Directs))) && Conducts(p)));
            FindPoles();
        }

        public Dictionary<Variable, string> State { get; }

        /// <summary>Whether feed and return, or unequal feeds, or the posts of a source are one point.</summary>
        public bool IsShort { get; private set; }

        /// <summary>Whether each part of class Q joins something here.</summary>
        public bool AreDisconnectsOn => owner.pieces.Where(p => p.Part.Kind.Letter == "Q").GroupBy(p => p.Part).All(part => part.Any(Conducts));

        public bool Fed(Piece load) => !IsShort && Walk(load, null, throughConsumers: false, out _);

        public bool InSeries(Piece load) => !IsShort && Walk(load, null, throughConsumers: true, out _);

        /// <summary>Whether a path through consumers passes both.</summary>
        public bool InSeries(Piece load, Piece other) => !IsShort && Walk(load, other, throughConsumers: true, out _);

        public bool Energises(Piece coil)
        {
            if (!energised.TryGetValue(coil, out bool known))
                energised[coil] = known = Fed(coil) || (InSeries(coil) && Math.Abs(Volts(coil)) >= 2.0 / 3 * coil.Part.Ratings.First(r => r.Name == "V").Quantity.Value);
            return known;
        }

        /// <summary>Whether each of a load's ways stands, for the pair of poles and the direction in which it is fed somewhere.</summary>
        public (bool Hot, bool Return) Ways(Piece load, string key)
        {
            string[] asked = key.Split(':', '>');
            bool isForward = asked[3] == "True", higherIsHot = asked[2] == "0" || Math.Abs(double.Parse(asked[1], null)) >= Math.Abs(double.Parse(asked[2], null));
            int hotEnd = isForward == higherIsHot ? load.A : load.B, coldEnd = hotEnd == load.A ? load.B : load.A;
            // A pole that stands on the common return stands whatever becomes of the other.
            bool hot = false, back = asked[0] == "0" && PolesAt(asked[higherIsHot ? 2 : 1]).Any(p => Arrives(p, coldEnd, load, !higherIsHot));
            foreach (var (hi, lo, _, name) in Pairs())
            {
                if (name != key) continue;
                hot |= Arrives(higherIsHot ? hi : lo, hotEnd, load, higherIsHot);
                back |= Arrives(higherIsHot ? lo : hi, coldEnd, load, !higherIsHot);
            }
            return (hot, back);
        }

        private IEnumerable<int> PolesAt(string volts) => poles.Where(p => p.Value.Group == 0 && p.Value.Volts == double.Parse(volts, null)).Select(p => p.Key);

        /// <summary>The pairs of poles and directions in which a load is fed here.</summary>
        public IEnumerable<string> FeedingKeys(Piece load) =>
            IsShort ? [] : Pairs().Where(p => From(p.Hi, p.Lo, p.Forward, load, null, false)).Select(p => p.Key);

        public bool AreJoined(int a, int b) => root[a] == root[b];

        public bool Conducts(Piece p) => p.Element.When is not { } when || when.Tests.All(t =>
        {
            var variable = owner.circuit.Variables.First(v => v.Actuator.Name == t.Actuator && (v.Part == p.Part.Id || v.Part is null));
            return t.Positions.Contains(State.GetValueOrDefault(variable, variable.Actuator.Rest)) || p.Element.IsNoControl;
        });

        private void Merge(int a, int b)
        {
            (int from, int to) = (root[a], root[b]);
            for (int i = 0; i < root.Length; i++) if (root[i] == from) root[i] = to;
        }

        private void FindPoles()
        {
            IsShort = sources.Any(s => root[s.Plus] == root[s.Minus]);
            if (IsShort) return;
            poles[root[owner.chassis]] = (0, 0);
            int group = 0;
            Spread();
            // A source that stands on nothing known feeds what hangs across its own posts.
            foreach (var (plus, minus, volts) in sources)
            {
                if (poles.ContainsKey(root[plus])) continue;
                poles[root[minus]] = (++group, 0);
                Spread();
            }
            // Equal poles are one feed.
            var all = poles.ToArray();
            foreach (var (a, pa) in all)
            foreach (var (b, pb) in all)
                if (a < b && pa.Group == pb.Group && AreEqual(pa.Volts, pb.Volts) && poles.ContainsKey(a) && poles.ContainsKey(b))
                {
                    poles.Remove(a);
                    Merge(a, b);
                }

            void Spread()
            {
                for (bool grows = true; grows;)
                {
                    grows = false;
                    foreach (var (plus, minus, volts) in sources)
                    {
                        bool hasPlus = poles.TryGetValue(root[plus], out var p), hasMinus = poles.TryGetValue(root[minus], out var m);
                        if (hasPlus && hasMinus && p.Group == m.Group && !AreEqual(p.Volts, m.Volts + volts)) IsShort = true;
                        if (hasPlus == hasMinus) continue;
                        grows = true;
                        if (hasMinus) poles[root[plus]] = (m.Group, m.Volts + volts);
                        else poles[root[minus]] = (p.Group, p.Volts - volts);
                    }
                }
            }
        }

        // The poles of a source that stands on nothing are points like others to everybody else's paths.
        private bool IsBarrier(int point, int pole) => poles.TryGetValue(point, out var p) && (p.Group == 0 || p.Group == poles[pole].Group);

        private static bool AreEqual(double a, double b) => a == b || (Math.Sign(a) == Math.Sign(b) && Math.Abs(a - b) < 0.25 * Math.Max(Math.Abs(a), Math.Abs(b)));

        private IEnumerable<(int Hi, int Lo, bool Forward, string Key)> Pairs()
        {
            foreach (var (a, pa) in poles)
            foreach (var (b, pb) in poles)
                if (pa.Group == pb.Group && pa.Volts > pb.Volts)
                    foreach (bool forward in new[] { true, false })
                        yield return (a, b, forward, string.Create(null, $"{Math.Min(pa.Group, 1)}:{pa.Volts}>{pb.Volts}:{forward}"));
        }

        private bool Walk(Piece load, Piece? other, bool throughConsumers, out string key)
        {
            key = "";
            foreach (var (hi, lo, forward, name) in Pairs())
                if (From(hi, lo, forward, load, other, throughConsumers))
                {
                    key = name;
                    return true;
                }
            return false;
        }

        // Walks with the current from the higher pole; the load must be passed in the direction asked for.
        private bool From(int hi, int lo, bool forward, Piece load, Piece? other, bool throughConsumers)
        {
            if (!passable.Contains(load) || (load.Element.IsOneWay && !forward) || root[load.A] == root[load.B]) return false;
            HashSet<int> met = [hi];
            return Go(hi, false, other is null);

            bool Go(int at, bool hasLoad, bool hasOther)
            {
                if (at == lo) return hasLoad && hasOther;
                if (at != hi && IsBarrier(at, hi)) return false;
                foreach (var p in passable)
                {
                    bool isLoad = p == load;
                    if (!isLoad && !throughConsumers && !p.Element.IsInLine) continue;
                    foreach (bool isForward in new[] { true, false })
                    {
                        if (p.Element.Directs && !isForward) continue;
                        if (isLoad && isForward != forward) continue;
                        int from = root[isForward ? p.A : p.B], to = root[isForward ? p.B : p.A];
                        if (from != at || !met.Add(to)) continue;
                        if (Go(to, hasLoad || isLoad, hasOther || p == other)) return true;
                        met.Remove(to);
                    }
                }
                return false;
            }
        }

        // Whether a pole reaches a point through what is in line, contact by contact. What is joined to another pole is reached, but not passed: so a lamp that a
        // contact shorts still has its ways, and one whose end a contact turns to the other pole has not.
        private bool Arrives(int pole, int point, Piece load, bool outward)
        {
            HashSet<int> met = [.. root.Select((r, i) => (r, i)).Where(x => x.r == pole).Select(x => owner.Root(x.i))];
            Stack<int> open = new(met);
            while (open.TryPop(out int at))
            {
                if (at == owner.Root(point)) return true;
                if (root[at] != pole && IsBarrier(root[at], pole)) continue;
                foreach (var p in owner.pieces.Where(p => p != load && p.Element.IsInLine && Conducts(p)))
                {
                    int a = owner.Root(p.A), b = owner.Root(p.B);
                    if (a == at && (!p.Element.Directs || outward) && met.Add(b)) open.Push(b);
                    if (b == at && (!p.Element.Directs || !outward) && met.Add(a)) open.Push(a);
                }
            }
            return false;
        }

        /// <summary>Volts across a load, by Gauss's elimination; one-way elements by trying every choice of which conduct.</summary>
        public double Volts(Piece load)
        {
            var directed = passable.Where(p => p.Element.Directs).ToArray();
            for (int mask = (1 << directed.Length) - 1; mask >= 0; mask--)
            {
                bool IsOn(Piece p) => Array.IndexOf(directed, p) is var i && (i < 0 || (mask >> i & 1) == 1);
                double[] v = Potentials(IsOn);
                if (directed.All(p => IsOn(p) == v[root[p.A]] >= v[root[p.B]] - 1e-9)) return v[root[load.A]] - v[root[load.B]];
            }
            return 0;
        }

        private double[] Potentials(Predicate<Piece> isOn)
        {
            int n = root.Length;
            double[,] m = new double[n, n + 1];
            void Add(int a, int b, double g, double amperes)
            {
                m[a, a] += g;
                m[b, b] += g;
                m[a, b] -= g;
                m[b, a] -= g;
                m[a, n] += amperes;
                m[b, n] -= amperes;
            }
            for (int i = 0; i < n; i++) m[i, i] += root[i] == i && i != root[owner.chassis] ? 1e-9 : 1e9;
            foreach (var p in passable.Where(p => isOn(p) && root[p.A] != root[p.B])) Add(root[p.A], root[p.B], 1 / Ohms(p), 0);
            foreach (var (plus, minus, volts) in sources) Add(root[plus], root[minus], 200, 200 * volts);
            for (int k = 0; k < n; k++)
            {
                for (int i = k + 1; i < n; i++)
                {
                    double f = m[i, k] / m[k, k];
                    if (f != 0) for (int j = k; j <= n; j++) m[i, j] -= f * m[k, j];
                }
            }
            double[] v = new double[n];
            for (int k = n - 1; k >= 0; k--)
            {
                v[k] = m[k, n];
                for (int j = k + 1; j < n; j++) v[k] -= m[k, j] * v[j];
                v[k] /= m[k, k];
            }
            return v;
        }

        public static double Ohms(Piece p)
        {
            double Rating(string name) => p.Part.Ratings.First(r => r.Name == name).Quantity.Value;
            return p.Element.Type is ElementType.Diode or ElementType.Dropper ? 0.02
                : p.Element.IsSource ? 0.5
                : p.Part.Ratings.Any(r => r.Name == "ohm") ? Rating("ohm")
                : p.Part.Ratings.Any(r => r.Name == "A") ? Rating("V") / Rating("A")
                : Rating("V") * Rating("V") / Rating("W");
        }
    }
}
