using System.Collections.Immutable;

namespace Hotside.Circuits;

/// <summary>A source with its poles by function: whichever polarity the vehicle has, the feed is hot and the return is grounded.</summary>
/// <param name="Part">The part.</param>
/// <param name="Element">The source within it.</param>
/// <param name="Feed">The hot pole.</param>
/// <param name="Return">The pole on the side of the return.</param>
/// <param name="PlusIsFeed">Whether the plus pole is the hot one.</param>
public sealed record SourcePoles(Part Part, Element Element, End Feed, End Return, bool PlusIsFeed)
{
    /// <summary>The rated voltage in volts; the system's highest where the part states none.</summary>
    public required double Volts { get; init; }

    // Here, and nowhere else, is asked which polarity a vehicle has.
    internal static ImmutableArray<SourcePoles> Of(Circuit circuit)
    {
        var nodes = Nodes.Of(circuit, throughLinks: true);
        var ground = circuit.System.ReturnNode;
        var all = ImmutableArray.CreateBuilder<SourcePoles>();
        foreach (var part in circuit.Parts)
        foreach (var element in part.Kind.Elements.Where(e => e.IsSource))
        {
            End first = Nodes.NodeOf(part, element.From), second = Nodes.NodeOf(part, element.To);
            bool firstGrounded = nodes.AreOne(first, ground), secondGrounded = nodes.AreOne(second, ground);
            // A generator's armature is hot at its terminal whichever way it was polarised; a pole that stands on the return
            // is the return pole; only where neither does (a stack, an isolator) the job's word decides.
            bool firstIsFeed = firstGrounded != secondGrounded ? secondGrounded
                : element.TakesEitherPolarity || circuit.System.Ground != Ground.Positive;
            bool plusIsFeed = element.TakesEitherPolarity ? circuit.System.Ground != Ground.Positive : firstIsFeed;
            all.Add(new(part, element, firstIsFeed ? first : second, firstIsFeed ? second : first, plusIsFeed)
            {
                Volts = part.Rated(element.Name, Unit.Volt) ?? circuit.System.Volts.Max(),
            });
        }
        return all.ToImmutable();
    }
}
