using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Sizing.Guards;
using Hotside.Sizing.Tables;
using Hotside.Solving;
using Hotside.Solving.Laws;
using Hotside.Solving.Networks;
using Hotside.Solving.Relays;

namespace Hotside.Orders.Harms;

/// <summary>Judges one state of the vehicle with one battery: what comes to harm in a setting. The network is laid when first asked for.</summary>
internal sealed class StateJudge
{
    // One definition with the check of the finished circuit: a sound charging system holds 1.24 times at most (TM 10-3930-621-12), the next lower system's parts get 1.5 times and more.
    private const double MostVolts = 1.25;

    // A bridge by a spanner or a swinging end; what it draws then is no spark of a coil (own choices, tried on vehicles of the gallery).
    private const double BridgeOhms = 0.05, MostBridge = 3, LiveVolts = 1;

    // No load but a starter draws so much (own choice); a machine's winding between its brushes; a battery that something else charges.
    private const double ShortAmperes = 150, StarterAmperes = 10, DrivenBack = 5, Overcharged = 1.3;

    private readonly Circuit circuit;
    private readonly StateGraph graph;
    private readonly StateContext context;
    private readonly ImmutableArray<(string Wire, int Node)> loose;
    private StateSolver? solver;
    private double[]? near;

    /// <summary>A judge of a state.</summary>
    /// <param name="graph">The state.</param>
    /// <param name="loose">The wires that hang free, with where.</param>
    /// <param name="context">What is known of the alteration.</param>
    public StateJudge(StateGraph graph, IEnumerable<(string Wire, End At)> loose, StateContext context)
    {
        (circuit, this.graph, this.context) = (graph.Circuit, graph, context);
        this.loose = [.. loose.Select(l => (l.Wire, graph.Nodes.NodeOf(l.At)))];
    }

    /// <summary>What comes to harm in a setting.</summary>
    public ImmutableArray<FoundHarm> In(Setting setting)
    {
        solver ??= new(new(circuit), [.. loose.Select(l => new NetworkEdge(l.Node, NetworkEdge.Reference))]);
        int[] state = solver.StateOf(setting.Positions);
        var at = solver.Solve(state, setting.Values, null, near);
        near ??= at.Point.Volts;
        context.Solved++;
        Lazy<Predicate<int>> grounded = new(() => graph.Grounded(setting));
        bool isCranking = solver.Model.Elements.Any(e => e.Part.IsStarter(e.Element) && Math.Abs(solver.AmperesOf(at, e)) > StarterAmperes);
        return
        [
            .. Elements(at), .. Sources(at, isCranking), .. Unreferenced(at, grounded), .. LooseEnds(setting, at),
            .. isCranking ? [] : Overloaded(at), .. Unfused(setting),
        ];
    }

    private IEnumerable<FoundHarm> Elements(StatePoint at)
    {
        foreach (var element in solver!.Model.Elements)
        {
            double volts = StateSolver.VoltsOf(at, element);
            if (RightSigns.Minds(element.Part, element.Element))
            {
                double shown = element.Element.Type == ElementType.Shunt ? solver.AmperesOf(at, element) : volts;
                if (context.Notes is { } isAfter) context.Signs.Note(isAfter, element, shown);
                else if (context.Signs.AreWrong(context.IsNew(element.Part), element, shown))
                    yield return element.Part.Kind.Polarity == "destroyed"
                        ? new(HarmKind.Reversed, Severity.Stop, element.Part.Id, $"{Name(element)}: {Volts(Math.Abs(volts))} the wrong way round")
                        : new(HarmKind.RunsBackward, Severity.Warning, element.Part.Id, $"{Name(element)} runs or reads the other way");
            }
            if (!element.Element.IsConsumer || element.Element.IsInternal || element.Part.Kind.Voltage is "contact" or "brief" or "misreads" or "indifferent") continue;
            double most = Math.Max(MostVolts, SourceLaws.SetPoint(element.RatedVolts) / element.RatedVolts) * element.RatedVolts;
            if (Math.Abs(volts) > most)
                yield return new(HarmKind.OverVoltage, Severity.Stop, element.Part.Id, $"{Name(element)}: {Volts(Math.Abs(volts))} on {Numbers.Plain(element.RatedVolts, 1)} V");
        }
    }

    private IEnumerable<FoundHarm> Sources(StatePoint at, bool isCranking)
    {
        double given = 0;
        foreach (var element in solver!.Model.Elements.Where(e => e.Element.IsSource))
        {
            double amperes = solver.AmperesOf(at, element), volts = StateSolver.VoltsOf(at, element);
            if (element.Element.When is not null)
            {
                if (element.Element.IsMachine && Math.Abs(amperes) > DrivenBack) yield return new(HarmKind.SourceFight, Severity.Stop, element.Part.Id, $"{element.Part.Id} stands and {Amperes(amperes)} flow back through it");
                continue;
            }
            given = Math.Max(given, -amperes);
            if (volts < 0) yield return new(HarmKind.SourceFight, Severity.Stop, element.Part.Id, $"{element.Part.Id} is turned round by another source");
            else if (amperes > 0 && volts > Overcharged * element.RatedVolts) yield return new(HarmKind.SourceFight, Severity.Stop, element.Part.Id, $"{element.Part.Id}: {Volts(volts)} on {Numbers.Plain(element.RatedVolts, 1)} V from another source");
        }
        if (given > ShortAmperes && !isCranking)
        {
            var most = Enumerable.Range(0, circuit.Conductors.Length).MaxBy(i => Math.Abs(solver.AmperesOf(at, i)));
            yield return new(HarmKind.Short, Severity.Stop, circuit.Conductors[most].Id, $"short circuit: {Amperes(given)} through {circuit.Conductors[most].Id}");
        }
    }

    private IEnumerable<FoundHarm> Unreferenced(StatePoint at, Lazy<Predicate<int>> grounded)
    {
        foreach (var element in solver!.Model.Elements)
        {
            if (element.Element.Type == ElementType.Dropper ? !element.Element.IsAgainstCase : element.Element.Type != ElementType.Electronics || element.Part.Kind.Polarity != "destroyed") continue;
            End ground = element.Element.Type == ElementType.Dropper ? Nodes.CaseOf(element.Part) : Nodes.NodeOf(element.Part, element.Element.To);
            if (!context.IsGroundedAfter(ground) || Math.Abs(at.Point.At(element.A)) < LiveVolts || grounded.Value(solver.Model.Nodes.NodeOf(ground))) continue;
            yield return new(HarmKind.NoReference, Severity.Stop, element.Part.Id, $"{element.Part.Id} is fed {Volts(Math.Abs(at.Point.At(element.A)))} without its ground");
        }
    }

    private IEnumerable<FoundHarm> LooseEnds(Setting setting, StatePoint at)
    {
        for (int i = 0; i < loose.Length; i++)
        {
            double volts = Math.Abs(at.Point.Volts[loose[i].Node]);
            if (volts < LiveVolts) continue;
            var (first, left, opened) = Bridged(i, setting, at);
            if (first <= MostBridge) continue;
            yield return left > MostBridge
                ? new(HarmKind.LiveFreeEnd, Severity.Stop, loose[i].Wire, $"free end of {loose[i].Wire}: {Volts(volts)}, no fuse")
                : new(HarmKind.LiveFreeEnd, Severity.Error, loose[i].Wire, $"free end of {loose[i].Wire}: {Volts(volts)}, blows {string.Join(", ", opened)}");
        }
    }

    // What a free end draws when it touches metal, and when all has opened that opens.
    private (double First, double Left, List<string> Opened) Bridged(int end, Setting setting, StatePoint at)
    {
        int bridge = solver!.Model.Network.Edges.Length + end;
        List<ModelElement> open = [];
        double? first = null;
        while (true)
        {
            var point = solver.Solve(at.State, setting.Values, laws => Changed(laws, bridge, open), at.Point.Volts);
            context.Solved++;
            double amperes = Math.Abs(solver.AmperesOf(point, bridge));
            first ??= amperes;
            // The one that carries most of its rating opens first, and spares those before it.
            double Multiple(ModelElement device) => Protection.RatingOf(device) is { } rating ? Math.Abs(solver.AmperesOf(point, device)) / rating : 0;
            var blown = amperes <= MostBridge ? null : solver.Model.Elements.Where(e => !open.Contains(e) && e.Element.Type is ElementType.Fuse or ElementType.Breaker && Multiple(e) > OpeningTime.Opens).MaxBy(Multiple);
            if (blown is null) return (first.Value, amperes, [.. open.Select(e => e.Part.Id).Distinct()]);
            open.Add(blown);
        }
    }

    private Law?[] Changed(Law?[] laws, int bridge, List<ModelElement> open)
    {
        Array.Resize(ref laws, solver!.Network.Edges.Length);
        laws[bridge] = ClampLaw.Resistance(BridgeOhms);
        foreach (var device in open) Array.Clear(laws, device.FirstEdge, device.EdgeCount);
        return laws;
    }

    private IEnumerable<FoundHarm> Overloaded(StatePoint at)
    {
        for (int i = 0; i < circuit.Conductors.Length; i++)
        {
            var wire = circuit.Conductors[i];
            double amperes = Math.Abs(solver!.AmperesOf(at, i));
            if (amperes < 1 || context.AmpacityOf(wire.Wire) is not { } allowed || amperes <= allowed) continue;
            bool isGuarded = solver.Model.Elements.Any(e => e.Element.Type is ElementType.Fuse or ElementType.Breaker && e.Part.Rated(e.Element.Name, Unit.Ampere) <= allowed
                && Math.Abs(solver.AmperesOf(at, e)) > 0.95 * amperes);
            if (!isGuarded) yield return new(HarmKind.OverCurrent, Severity.Warning, wire.Id, $"{wire.Id} carries {Amperes(amperes)}, may {Amperes(allowed)}");
        }
    }

    private IEnumerable<FoundHarm> Unfused(Setting setting)
    {
        bool[]? hot = null;
        foreach (var wire in circuit.Conductors.Where(w => context.WillBeFused(w.Id) && !w.From.IsFree && !w.To.IsFree))
        {
            hot ??= graph.Unfused(setting);
            int a = graph.Nodes.NodeOf(wire.From), b = graph.Nodes.NodeOf(wire.To);
            if (a >= 0 && b >= 0 && hot[a] && hot[b]) yield return new(HarmKind.Unprotected, Severity.Warning, wire.Id, $"{wire.Id} is fed and has no fuse yet");
        }
    }

    private static string Name(ModelElement element) => element.Part.Kind.Elements.Count(e => e.IsConsumer && !e.IsInternal) > 1 ? $"{element.Part.Id}.{element.Element.Name}" : element.Part.Id;

    private static string Volts(double volts) => Numbers.Plain(volts, 1) + " V";

    private static string Amperes(double amperes) => Numbers.Plain(Math.Abs(amperes), Math.Abs(amperes) < 10 ? 1 : 0) + " A";
}
