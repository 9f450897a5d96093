using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Solving.Laws;
using Hotside.Solving.Networks;

namespace Hotside.Solving;

/// <summary>A circuit as a network: conductors first, then the elements of its parts, each with its law in every position.</summary>
internal sealed class CircuitModel
{
    private readonly ImmutableArray<NetworkEdge>.Builder ends = ImmutableArray.CreateBuilder<NetworkEdge>();
    private readonly ImmutableArray<ModelEdge>.Builder edges = ImmutableArray.CreateBuilder<ModelEdge>();
    private readonly List<Injection> regulators = [];
    private readonly List<Assumption> assumptions = [];
    private readonly Dictionary<Variable, int> indices = [];
    private readonly Dictionary<string, CircuitModel> others = new(StringComparer.Ordinal);

    /// <summary>The model of a circuit.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="surroundings">Under what it works; <see langword="null"/>: the usual.</param>
    public CircuitModel(Circuit circuit, Surroundings? surroundings = null)
    {
        Circuit = circuit;
        Surroundings = surroundings ?? Surroundings.Usual;
        Nodes = new(circuit);
        for (int i = 0; i < circuit.Variables.Length; i++) indices[circuit.Variables[i]] = i;
        foreach (var conductor in circuit.Conductors) Add(conductor);
        var sources = circuit.Sources.ToDictionary(s => (s.Part.Id, s.Element.Name));
        Elements = [.. circuit.Parts.SelectMany(p => p.Kind.Elements.Select(e => Lay(p, e, sources.GetValueOrDefault((p.Id, e.Name)))))];
        Edges = edges.ToImmutable();
        Network = new(Nodes.Count, ends.ToImmutable()) { Straight = [.. Edges.Select(e => e.IsStraight)] };
        Regulators = [.. regulators];
        Assumptions = [.. assumptions];
    }

    /// <summary>The circuit.</summary>
    public Circuit Circuit { get; }

    /// <summary>Under what it works.</summary>
    public Surroundings Surroundings { get; }

    /// <summary>Its nodes.</summary>
    public TerminalNodes Nodes { get; }

    /// <summary>What may conduct where.</summary>
    public Network Network { get; }

    /// <summary>The law of each edge; those of the conductors come first, one each.</summary>
    public ImmutableArray<ModelEdge> Edges { get; }

    /// <summary>The elements, parts in the order of the circuit.</summary>
    public ImmutableArray<ModelElement> Elements { get; }

    /// <summary>What has a current that is sought apart: regulators in line, loads of constant power.</summary>
    public ImmutableArray<Injection> Regulators { get; }

    /// <summary>What is not stated and was taken.</summary>
    public ImmutableArray<Assumption> Assumptions { get; }

    /// <summary>The model under what a setting says of temperatures, charge and speeds: nodes and edges are the same, laws are not. Itself where it says nothing of them.</summary>
    public CircuitModel Under(ImmutableArray<SetValue> values)
    {
        if (!Surroundings.AreIn(values)) return this;
        string key = string.Join('|', values.Select(v => v.Part + " " + v.Quantity));
        lock (others) return others.TryGetValue(key, out var known) ? known : others[key] = new(Circuit, Surroundings.With(values));
    }

    /// <summary>The index of a variable among the circuit's.</summary>
    public int IndexOf(Part part, string actuator) => indices[Circuit.VariableOf(part, actuator)];

    /// <summary>The index of a variable that a setting names; <see langword="null"/> when the circuit has none such.</summary>
    public int? IndexOf(SetPosition set)
    {
        for (int i = 0; i < Circuit.Variables.Length; i++)
            if (Circuit.Variables[i].Part == set.Part && Circuit.Variables[i].Actuator.Name == set.Actuator)
                return i;
        return null;
    }

    /// <summary>The positions of all variables in a setting; what it does not name rests.</summary>
    public int[] StateOf(IEnumerable<SetPosition> positions)
    {
        int[] state = new int[Circuit.Variables.Length];
        foreach (var set in positions)
            if (IndexOf(set) is { } variable)
                state[variable] = Math.Max(Circuit.Variables[variable].Actuator.Positions.IndexOf(set.Position), 0);
        return state;
    }

    /// <summary>The law of each edge in a state.</summary>
    /// <param name="state">The position of each variable.</param>
    /// <param name="before">The state that is being left; the same where nothing moves.</param>
    /// <param name="values">What is given a value: senders, batteries, temperatures, speeds.</param>
    /// <param name="isAtOnce">Whether in the first moment, when filaments are cold and motors stand.</param>
    public Law?[] LawsIn(int[] state, int[] before, ImmutableArray<SetValue> values, bool isAtOnce = false)
    {
        var laws = new Law?[Edges.Length];
        var edgesThen = Under(values).Edges;
        for (int e = 0; e < laws.Length; e++) laws[e] = edgesThen[e].LawIn(state, before, isAtOnce);
        foreach (var value in values.Where(v => v.Quantity.Unit == Unit.Ohm))
            foreach (var element in Elements.Where(e => e.Part.Id == value.Part && e.Element.Type is ElementType.Sender or ElementType.Resistor))
                for (int e = element.FirstEdge; e < element.FirstEdge + element.EdgeCount; e++)
                    laws[e] = ClampLaw.Resistance(Math.Max(value.Quantity.Value, CopperResistance.Contact));
        return laws;
    }

    private void Add(Conductor conductor)
    {
        if (conductor.From.IsFree || conductor.To.IsFree)
        {
            ends.Add(new(NetworkEdge.Reference, NetworkEdge.Reference));
            edges.Add(new(null, null, []));
            return;
        }
        double? known = CopperResistance.Of(conductor.Wire, Surroundings.CelsiusOf(conductor));
        double ohms = (known ?? CopperResistance.Contact) + Surroundings.JointOhms(conductor);
        if (known is null) assumptions.Add(new(conductor.Id, AssumedFigure.Conductor, CopperResistance.Contact, Assumption.Own));
        ends.Add(new(Nodes.NodeOf(conductor.From), Nodes.NodeOf(conductor.To)));
        edges.Add(new(ClampLaw.Resistance(ohms), null, []));
    }

    private ModelElement Lay(Part part, Element element, SourcePoles? source)
    {
        int first = edges.Count;
        var (from, to) = source is null ? (Circuits.Nodes.NodeOf(part, element.From), Circuits.Nodes.NodeOf(part, element.To))
            : source.PlusIsFeed ? (source.Feed, source.Return) : (source.Return, source.Feed);
        int a = Nodes.NodeOf(from), b = Nodes.NodeOf(to), regulator = -1;
        ElementFigures figures = new(part, element, Circuit.System.Volts[0], assumptions);
        if (element.Type == ElementType.Dropper)
        {
            regulator = regulators.Count;
            regulators.Add(Droppers.Of(part, element, figures, a, b, element.IsAgainstCase ? Nodes.NodeOf(Circuits.Nodes.CaseOf(part)) : element.Against is { } third ? Nodes.NodeOf(Circuits.Nodes.NodeOf(part, third)) : NetworkEdge.Reference));
            // Without a leak past it, a current into an output on nothing would seem to go nowhere.
            ends.Add(new(a, b));
            edges.Add(new(ClampLaw.Resistance(1 / Law.Leak), null, []));
        }
        else
        {
            var law = source is null ? ElementLaws.Of(part, element, figures, Surroundings) : SourceLaws.Of(part, element, source.Volts, figures, Surroundings);
            var when = TestsOf(part, element);
            if (law.Watts > 0)
            {
                regulator = regulators.Count;
                regulators.Add(new PowerLoad(a, b, law.Watts, PowerLoad.UsualLockOut * figures.Volts, element.IsOneWay));
            }
            for (int i = 0; i < Math.Max(law.Closed.Length, law.Open.Length); i++)
            {
                ends.Add(new(a, b));
                edges.Add(new(law.Closed.ElementAtOrDefault(i), law.Open.ElementAtOrDefault(i), when) { AtOnce = law.AtOnce.ElementAtOrDefault(i) });
            }
        }
        return new(part, element, a, b, first, edges.Count - first, regulator) { RatedVolts = source?.Volts ?? figures.Volts };
    }

    private ImmutableArray<StateTest> TestsOf(Part part, Element element) => element.When is not { } when ? [] :
    [
        .. when.Tests.Select(t => new StateTest(IndexOf(part, t.Actuator), [.. Circuit.VariableOf(part, t.Actuator).Actuator.Positions.Select(p => t.Positions.Contains(p))])),
    ];
}
