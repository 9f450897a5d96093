using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.Checks.Protection;
using Hotside.Circuits;
using Hotside.Sizing;
using Hotside.Studies;

namespace Hotside.Checks;

/// <summary>What a check is given: a circuit with its study, its wiring and its operating points. Each is made once, when first asked for.</summary>
/// <param name="study">The study of the circuit.</param>
/// <param name="sizes">What its conductors carry, may carry and need.</param>
/// <param name="works">What the list of changes says is to be done, with the parts; empty where there is no such list.</param>
internal sealed class CheckedCircuit(CircuitStudy study, Lazy<CircuitSizes> sizes, ImmutableArray<Work> works)
{
    private readonly Lazy<OperatingPoints> points = new(() => new(study));
    private Dictionary<LoadStudy, OperatingPoint>? pointsFor;
    private readonly Lazy<WireGraph> graph = new(() => new(study.Circuit));

    /// <summary>The circuit.</summary>
    public Circuit Circuit => study.Circuit;

    /// <summary>What the list of changes says is to be done to a part.</summary>
    public IEnumerable<string> WorkFor(string part) => works.Where(w => w.Items.Contains(part)).Select(w => w.Sentence);

    /// <summary>On which side each load is switched.</summary>
    public CircuitStudy Study => study;

    /// <summary>The solved settings.</summary>
    public OperatingPoints Points => points.Value;

    /// <summary>What each conductor and each fuse carries, may carry and needs.</summary>
    public CircuitSizes Sizes => sizes.Value;

    /// <summary>The wiring.</summary>
    public WireGraph Graph => graph.Value;

    /// <summary>The wiring that hangs on a battery past every fuse.</summary>
    public ImmutableArray<UnfusedBranch> Unfused => field.IsDefault ? field = UnfusedBranch.Of(this) : field;

    /// <summary>The point in which a load is on by the least that feeds it; <see langword="null"/> where it is never on, or that is a short circuit.</summary>
    public OperatingPoint? PointFor(LoadStudy load) => (pointsFor ??= Points.All.Where(p => p.For is not null).ToDictionary<OperatingPoint, LoadStudy>(p => p.For!, ReferenceEqualityComparer.Instance)).GetValueOrDefault(load);

    /// <summary>The loads that tables list.</summary>
    public IEnumerable<LoadStudy> Loads => study.Loads.Where(l => !l.Element.IsInternal);

    /// <summary>The nodes of the hot poles of sources that always give, batteries as a rule.</summary>
    public ImmutableArray<int> Feeds => field.IsDefault ? field = [.. Circuit.Sources.Where(s => s.Element.When is null).Select(s => Graph.NodeOf(s.Feed)).Distinct().Where(n => n != WireGraph.Return)] : field;

    /// <summary>The batteries as a sentence has them.</summary>
    public string Batteries => Listing.Of(Circuit.Sources.Where(s => s.Element.When is null).Select(s => s.Part.Id));
}
