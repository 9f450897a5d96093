using System.Collections.Immutable;

namespace Hotside.Circuits;

/// <summary>
/// Parts and conductors with their terminals, joints and settings: one state of a vehicle's wiring. Immutable; safe to share between threads.
/// </summary>
/// <remarks>Compare circuits by their text in a job file; the record's own equality compares arrays by reference.</remarks>
public sealed record Circuit
{
    private readonly Lazy<CircuitIndex> index;

    internal Circuit(ElectricalSystem system, ImmutableArray<Part> parts, ImmutableArray<Conductor> conductors, ImmutableArray<Setting> settings)
    {
        System = system;
        Parts = parts;
        Conductors = conductors;
        Settings = settings;
        index = new(() => new CircuitIndex(this));
    }

    /// <summary>What is said of the supply.</summary>
    public ElectricalSystem System { get; }

    /// <summary>The parts, in the order of the file.</summary>
    public ImmutableArray<Part> Parts { get; }

    /// <summary>The conductors, in the order of the file.</summary>
    public ImmutableArray<Conductor> Conductors { get; }

    /// <summary>The named settings, in the order of the file.</summary>
    public ImmutableArray<Setting> Settings { get; }

    /// <summary>The named sequences of settings, in the order of the file.</summary>
    public ImmutableArray<Sequence> Sequences { get; private init; } = [];

    /// <summary>All that can be in one of several positions, windings' own actuators included, in the order of the parts; shared conditions once.</summary>
    public ImmutableArray<Variable> Variables => index.Value.Variables;

    /// <summary>The sources with their feed and return poles.</summary>
    public ImmutableArray<SourcePoles> Sources => index.Value.Sources;

    /// <summary>A part by its id.</summary>
    /// <param name="id">The id.</param>
    /// <returns>The part, or <see langword="null"/> when there is none.</returns>
    public Part? FindPart(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return index.Value.Parts.GetValueOrDefault(id);
    }

    /// <summary>A conductor by its id.</summary>
    /// <param name="id">The id.</param>
    /// <returns>The conductor, or <see langword="null"/> when there is none.</returns>
    public Conductor? FindConductor(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return index.Value.Conductors.GetValueOrDefault(id);
    }

    /// <summary>The conductors that end on a terminal, in the order of the file.</summary>
    /// <param name="end">The terminal.</param>
    public IEnumerable<Conductor> ConductorsAt(End end) => Conductors.Where(c => c.From == end || c.To == end);

    /// <summary>Whether something is on a terminal of a part: a conductor, another part, or the metal that it stands on.</summary>
    internal bool IsUsed(Part part, string terminal)
    {
        var end = End.At(part.Id, terminal);
        return ConductorsAt(end).Any() || part.Joints.Any(j => j.Terminal == terminal) || Parts.Any(p => p.Joints.Any(j => j.On == end) || p.CaseOn == end)
            || (Nodes.CaseOf(part) == end && part.CaseOn is not null);
    }

    /// <summary>The variable of a part's actuator, or of the condition it shares.</summary>
    /// <param name="part">The part.</param>
    /// <param name="actuator">The actuator's name within its kind.</param>
    internal Variable VariableOf(Part part, string actuator) => index.Value.VariableOf(part, actuator);

    /// <summary>The sources whose poles stand the other way round than the system says.</summary>
    internal IEnumerable<SourcePoles> GroundContradictedBy() =>
        System.Ground == Ground.Isolated ? [] : Sources.Where(s => !s.Element.TakesEitherPolarity && s.PlusIsFeed != (System.Ground == Ground.Negative));

    /// <summary>
    /// Some parts and conductors of the circuit, with some of the joints of those parts; a case that is not on its joint touches nothing. What has several terminals
    /// and is there for one of them is that stud alone.
    /// </summary>
    internal Circuit Only(Predicate<string> isItem, Predicate<End> isJoint, Predicate<End> isStud) => new(
        System,
        [.. Parts.Where(p => isItem(p.Id)).Select(p => p with
        {
            Spec = (p.Kind.Terminals.FirstOrDefault(t => p.Kind.Terminals.Length > 1 && isStud(End.At(p.Id, t.Name))) is { } stud ? StudOf(p, stud) : p.Spec) with
            {
                Joints = [.. p.Joints.Where(j => isJoint(End.At(p.Id, j.Terminal)))],
                Case = isJoint(End.At(p.Id, "case")) ? p.Spec.Case : CaseMount.Insulated,
            },
        })],
        [.. Conductors.Where(c => isItem(c.Id))], []);

    private static PartSpec StudOf(Part part, KindTerminal terminal) => new(new PartKind("stud") { Letter = part.Kind.Letter, Symbol = "stud", Terminals = [terminal] })
    {
        Name = $"{part.Title}, {terminal.Name}", Assembly = part.Assembly, Place = part.Place,
    };

    /// <summary>The same circuit with other wires: the same conductors in the same order.</summary>
    internal Circuit With(ImmutableArray<Conductor> conductors) => new(System, Parts, conductors, Settings) { Sequences = Sequences };

    /// <summary>The same circuit with other settings; sequences keep the steps that are still there under their names.</summary>
    internal Circuit With(ImmutableArray<Setting> settings) => new(System, Parts, Conductors, settings)
    {
        Sequences = [.. Sequences.Select(s => Sequence.Of(s.Name, s.Steps.Select(t => t.Name), settings, out _)).OfType<Sequence>()],
    };

    /// <summary>The same circuit with other sequences of its settings.</summary>
    internal Circuit With(ImmutableArray<Sequence> sequences) => new(System, Parts, Conductors, Settings) { Sequences = sequences };

    /// <summary>A position as a setting would be written: <c>S1 run</c>, <c>S5 turn left</c>.</summary>
    internal string TextOf(SetPosition set) =>
        (Variables.FirstOrDefault(v => v.Part == set.Part && v.Actuator.Name == set.Actuator)?.Label ?? set.Part ?? set.Actuator) + " " + set.Position;

    /// <summary>An end as a sheet has it: <c>K1.85</c>, but <c>X1</c> for a part with a single terminal.</summary>
    /// <param name="end">The end.</param>
    public string TextOf(End end) =>
        end.Part is { } id && FindPart(id) is { Kind.OnlyTerminal: { } only } && only == end.Terminal ? id : end.ToString();
}
