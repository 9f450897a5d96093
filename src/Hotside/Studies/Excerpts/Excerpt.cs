using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Studies.Excerpts;

/// <summary>What belongs to some loads of a circuit: all that feeds and controls them, and nothing else.</summary>
/// <param name="Items">The ids of parts and conductors.</param>
/// <param name="Joints">The terminals bolted to something without a conductor; <c>case</c> for a part that stands on something with its case.</param>
/// <param name="Loads">The names of the loads: those asked for, the coils of their relays, and those that lie in series with them.</param>
/// <param name="Studs">The only terminal in use of parts that have more and through which no current passes: wires meet on it, and that is all.</param>
internal sealed record Excerpt(ImmutableHashSet<string> Items, ImmutableHashSet<End> Joints, ImmutableHashSet<string> Loads, ImmutableHashSet<End> Studs)
{
    /// <summary>What belongs to loads.</summary>
    public static Excerpt Of(CircuitStudy study, IEnumerable<LoadStudy> loads) => new ExcerptSearch(study).Find(loads);

    /// <summary>The circuit with nothing else in it. Settings, which name parts, are left out. What is a stud in one of two circuits only is shown whole in both.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="other">The excerpt of the other circuit.</param>
    public Circuit From(Circuit circuit, Excerpt other) =>
        circuit.Only(Items.Contains, Joints.Contains, e => Studs.Contains(e) && (!other.Items.Contains(e.Part!) || other.Studs.Any(o => o.Part == e.Part)));
}
