using Hotside.Circuits;

namespace Hotside.Studies.Operating;

/// <summary>The resistance that stands for an element, from what its part states; where it states nothing, a usual figure (own choice, no source).</summary>
internal static class Consumption
{
    /// <summary>The inner resistance of a source in ohms.</summary>
    public const double Source = 0.005;

    /// <summary>A one-way element that conducts, in ohms.</summary>
    public const double OneWay = 0.02;

    /// <summary>The brushes and armature of a machine that stands, in ohms.</summary>
    public const double StandingMachine = 0.5;

    /// <summary>The resistance of an element that conducts, in ohms, above 0.</summary>
    /// <param name="part">Its part.</param>
    /// <param name="element">The element.</param>
    /// <param name="systemVolts">The system's voltage, for what states none.</param>
    public static double ResistanceOf(Part part, Element element, double systemVolts)
    {
        if (element.IsSource) return StandingMachine;
        if (element.Type is ElementType.Diode or ElementType.Dropper) return OneWay;
        if (MiddleOf(part, element) is { } ohms) return Math.Max(ohms, 0.001);
        if (element.Type == ElementType.Sender) return 50;
        if (!element.IsConsumer) return 1;
        double volts = RatedVolts(part, element, systemVolts);
        double amperes = part.Rated(element.Name, Unit.Ampere) ?? (part.Rated(element.Name, Unit.Watt) / volts) ?? UsualAmperes(element.Type);
        return volts / Math.Max(amperes, 1e-6);
    }

    /// <summary>The volts a consumer is made for.</summary>
    public static double RatedVolts(Part part, Element element, double systemVolts) => part.Rated(element.Name, Unit.Volt) ?? systemVolts;

    // A range such as a sender's is taken in its middle.
    private static double? MiddleOf(Part part, Element element) =>
        part.Rated(element.Name, Unit.Ohm) is not { } lower ? null
        : part.Ratings.Select(r => r.Quantity).FirstOrDefault(q => q.Unit == Unit.Ohm && q.Value == lower) is { UpTo: { } upper } ? (lower + upper) / 2
        : lower;

    private static double UsualAmperes(ElementType type) => type switch
    {
        ElementType.Lamp => 2,
        ElementType.Motor or ElementType.Heater or ElementType.Horn => 5,
        ElementType.Coil => 0.2,
        _ => 0.1,
    };
}
