using Hotside.Solving.Laws;
using Hotside.Studies.Operating;

namespace Hotside.Studies.Switching;

/// <summary>When a coil that is fed only through other consumers gets enough to pull in; paths cannot tell, the operating point does.</summary>
internal sealed class PullIn
{
    /// <summary>The least volts with which a relay pulls in, in parts of its rated volts; relays differ.</summary>
    public const double Least = Solving.Relays.Relay.UsualPull;

    // Where there are few states, or few undecided variables, every choice is computed. Beyond, samples decide as long as they agree: all at rest, all in their last position, and each position
    // alone. Where they come near to what pulls in, or no more can be computed, the answer is marked.
    private const int Searched = 6;
    private const int FewStates = 1_000, MostSplits = 24, MostPoints = 150;
    private const double Near = 0.5;

    private readonly ContactGraph graph;
    private readonly DecisionSpace space;
    private readonly Branch coil;
    private readonly Neighbourhood place;
    private readonly (Branch Winding, Neighbourhood Place)[] fellows;
    private readonly double needed;
    private readonly bool isSmall;
    private int points, splits;

    private PullIn(ContactGraph graph, Neighbourhoods neighbourhoods, LoadFeed feed)
    {
        this.graph = graph;
        space = graph.Positions.Space;
        coil = feed.Load;
        place = neighbourhoods.Of(coil);
        var together = coil.Part.Kind.Actuators.SelectMany(a => a.Pulls).Select(p => p.Coils).Where(c => c.Contains(coil.Element.Name)).ToArray();
        fellows = [.. graph.Loads.Where(l => l != coil && l.Part == coil.Part && together.Any(c => c.Contains(l.Element.Name))).Select(l => (l, neighbourhoods.Of(l)))];
        isSmall = place.Branches.SelectMany(b => space.SupportOf(b.When)).Distinct().Aggregate(1.0, (states, v) => states * space.ArityOf(v)) <= FewStates;
        needed = Least * ElementFigures.RatedVolts(coil.Part, coil.Element, graph.Circuit.System.Volts[0]);
    }

    private bool IsApproximate { get; set; }

    /// <summary>When a coil pulls in through other consumers, as a function of free positions and of relays.</summary>
    /// <param name="graph">The circuit.</param>
    /// <param name="feeding">Its paths.</param>
    /// <param name="neighbourhoods">What may share current with what.</param>
    /// <param name="coil">The coil.</param>
    /// <returns>The states, and whether they were told from samples that leave a doubt.</returns>
    public static (Condition When, bool IsApproximate) InSeries(ContactGraph graph, Feeding feeding, Neighbourhoods neighbourhoods, LoadFeed coil)
    {
        var only = feeding.InSeries(coil);
        if (only.IsNever) return (only, feeding.IsStringGivenUp(coil.Load));
        PullIn search = new(graph, neighbourhoods, coil);
        var left = only & !search.TooLittle(feeding, only);
        int[] known = new int[graph.Positions.Space.VariableCount];
        Array.Fill(known, -1);
        known[graph.Positions.Candour] = 0;
        var when = search.Decide(known, left) & left;
        return (when, search.IsApproximate || feeding.IsStringGivenUp(coil.Load));
    }

    // States in which all that leads from the feed to the coil's surroundings, or from there to the return, taken together lets too little through. A coil gets no more
    // current than goes over such a cut, and none of it from a point lower than its own end: U ≤ V·G / (G + g), G the cut's conductance and g the coil's.
    private Condition TooLittle(Feeding feeding, Condition only)
    {
        var little = space.NeverHolds;
        if (feeding.OnlySupply is not { } ways) return little;
        double own = 1 / graph.OhmsOf(coil);
        foreach (var way in new[] { ways.Hot, ways.Return })
        {
            var reached = way.Reached;
            var apart = only & !(reached[coil.Source] | reached[coil.Target]);
            if (apart.IsNever) continue;
            double cut = place.Branches.Where(b => b != coil && b.Role == BranchRole.Consumer && b.Source != b.Target)
                .Where(b => !(apart & b.When & ((reached[b.Source] & !reached[b.Target]) | (reached[b.Target] & !reached[b.Source]))).IsNever)
                .Sum(b => 1 / graph.OhmsOf(b));
            if (ways.Supply.Volts * cut / (cut + own) < needed) little |= apart;
        }
        return little;
    }

    private Condition Decide(int[] known, Condition left)
    {
        graph.Positions.Cancel.ThrowIfCancellationRequested();
        if (left.IsNever) return left;
        if (left.IsOpen && (isSmall || splits < MostSplits)) return Split(left.TopVariable, known, left);
        if (left.IsOpen)
        {
            // One of the states that are left speaks for all.
            IsApproximate = true;
            known = [.. space.AnyState(left).Select((value, v) => known[v] >= 0 ? known[v] : space.SupportOf(left).Contains(v) ? value : -1)];
        }
        int[] undecided = [.. place.Branches.Select(b => b.When.Given(known)).Where(c => c.IsOpen).SelectMany(c => space.SupportOf(c)).Distinct().Order()];
        if (undecided.Length == 0) return Told(Volts(known) >= needed);
        bool isSearched = isSmall || (splits < MostSplits && points < MostPoints);
        if (isSmall || (isSearched && undecided.Length <= Searched)) return Split(undecided[0], known, left);
        double[] samples = [.. Samples(known, undecided)];
        bool any = samples.Any(v => v >= needed);
        if (isSearched && any && !samples.All(v => v >= needed)) return Split(undecided[0], known, left);
        IsApproximate |= samples.Any(v => v > Near * needed);
        return Told(any);
    }

    private Condition Told(bool pulls) => pulls ? space.AlwaysHolds : space.NeverHolds;

    private Condition Split(int variable, int[] known, Condition left)
    {
        splits++;
        var result = space.NeverHolds;
        for (int value = 0; value < space.ArityOf(variable); value++)
        {
            int[] more = (int[])known.Clone();
            more[variable] = value;
            result |= space.Where(variable, value) & Decide(more, left.Given(variable, value));
        }
        return result;
    }

    private IEnumerable<double> Samples(int[] known, int[] undecided)
    {
        yield return Volts(known);
        int[] last = (int[])known.Clone();
        foreach (int variable in undecided) last[variable] = space.ArityOf(variable) - 1;
        yield return Volts(last);
        if (points >= MostPoints) yield break;
        foreach (int variable in undecided)
            for (int value = 1; value < space.ArityOf(variable); value++)
            {
                int[] one = (int[])known.Clone();
                one[variable] = value;
                yield return Volts(one);
            }
    }

    // The volts that pull, what is undecided at rest: none where another winding undoes them.
    private double Volts(int[] known)
    {
        points++;
        int[] state = [.. known.Select(v => Math.Max(v, 0))];
        var point = place.Point(state);
        IsApproximate |= point.IsUnsettled;
        return fellows.Any(f => IsOpposed(f.Place.Point(state).AmperesThrough(f.Winding), point.AmperesThrough(coil))) ? 0 : Math.Abs(point.VoltsAcross(coil));
    }

    // Two windings of one plunger with the same current the opposite way round undo each other: so a starter solenoid lets go although its main contact
    // still feeds both windings, one behind the other. That half the current is enough for it is our own choice, no source.
    private static bool IsOpposed(double other, double own) => other * own < 0 && Math.Abs(other) > Math.Abs(own) / 2;
}
