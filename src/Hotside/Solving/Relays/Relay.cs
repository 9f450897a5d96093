using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Solving.Laws;
using Hotside.Solving.Networks;

namespace Hotside.Solving.Relays;

/// <summary>An actuator that windings move, and by which volts.</summary>
internal sealed class Relay
{
    /// <summary>In parts of its rated volts, where a relay moves at the latest: 8 V of 12 V by the data sheet of a plug-in relay (ISO 7588-1 pattern).</summary>
    public const double UsualPull = 2.0 / 3;

    // By the same sheet, where it falls back at the earliest.
    private const double UsualDrop = 0.1;

    private readonly Actuator actuator;
    private readonly ImmutableArray<(int Position, ImmutableArray<ModelElement> Coils)> pulls;
    private readonly ImmutableArray<ModelElement> kept;
    private readonly double pullsAt, dropsAt;

    private Relay(CircuitModel model, Part part, Actuator actuator)
    {
        this.actuator = actuator;
        Variable = model.IndexOf(part, actuator.Name);
        var coils = model.Elements.Where(e => e.Part == part).ToDictionary(e => e.Element.Name);
        ImmutableArray<ModelElement> Named(IEnumerable<string> names) => [.. names.Select(n => coils[n])];
        pulls = [.. actuator.Pulls.Select(p => (actuator.Positions.IndexOf(p.Position), Named(p.Coils)))];
        kept = Named(actuator.KeptBy);
        // A winding moves by its current: hot, it wants as much more voltage as it resists more. A cut-out's spring is made to make up for that (common practice, no source).
        double warm = actuator.Returns ? 1 : CopperResistance.FactorAt(model.Surroundings.WindingCelsius);
        (pullsAt, dropsAt) = (warm * (actuator.PullsAt ?? UsualPull), warm * (actuator.DropsAt ?? UsualDrop));
    }

    /// <summary>The index of its actuator among the circuit's variables.</summary>
    public int Variable { get; }

    /// <summary>Its last position, as if it had been pulled; rest for one that something else opens, as reverse current does a cut-out.</summary>
    public int Pulled => actuator.Returns ? 0 : actuator.Positions.Length - 1;

    /// <summary>The relays of a circuit.</summary>
    public static ImmutableArray<Relay> Of(CircuitModel model) =>
    [
        .. model.Circuit.Parts.SelectMany(p => p.Kind.Actuators.Where(a => a.Drive == ActuatorDrive.Driven).Select(a => new Relay(model, p, a))),
    ];

    /// <summary>The position where it goes or stays.</summary>
    /// <param name="at">Its position.</param>
    /// <param name="point">The volts.</param>
    /// <param name="laws">The law of each edge: a winding that is open moves nothing, whatever its volts.</param>
    public int Wants(int at, NetworkPoint point, Law?[] laws)
    {
        int? wanted = null;
        foreach (var (position, coils) in pulls)
        {
            bool isThere = position == at;
            bool pulled = coils.Any(c => Has(c, pullsAt)) || (isThere && (kept.IsEmpty ? coils : kept).Any(c => Has(c, dropsAt)));
            // Of several pulls at once, which nobody defines, another position than rest wins, the earlier one.
            if (pulled && (wanted is null or 0)) wanted = position;
        }
        if (wanted is { } found) return found;
        return actuator.Stays || (at != 0 && kept.Any(c => Has(c, dropsAt))) ? at : 0;

        bool Has(ModelElement coil, double share)
        {
            if (coil is { EdgeCount: > 0, Regulator: < 0 } && laws[coil.FirstEdge] is null) return false;
            double volts = point.At(coil.A) - point.At(coil.B);
            return (coil.Element.IsOneWay ? volts : Math.Abs(volts)) >= share * coil.RatedVolts;
        }
    }
}
