using Hotside.Circuits;

namespace Hotside.Studies.Operating;

/// <summary>The resistance of an element at its rating, for the simple solution that tells whether a current flows at all.</summary>
internal static class Resistance
{
    /// <summary>Internal resistance of every source, in ohms: a battery in fair condition (common practice, no source).</summary>
    public const double Source = 0.01;

    /// <summary>Ohms, above 0: stated, or from what is rated, or a value usual for such an element (common practice, no source).</summary>
    public static double Of(Part part, Element element, double systemVolts)
    {
        if (part.Rated(element.Name, Unit.Ohm) is > 0 and var ohms) return ohms;
        double volts = part.Rated(element.Name, Unit.Volt) ?? systemVolts;
        if (part.Rated(element.Name, Unit.Watt) is > 0 and var watts) return volts * volts / watts;
        if (part.Rated(element.Name, Unit.Ampere) is > 0 and var amperes && element.Type != ElementType.Contact) return volts / amperes;
        return Usual(part, element) * (volts * volts / 144);
    }

    // Values at 12 V; at another voltage an element of the same power has them by the square of the volts.
    private static double Usual(Part part, Element element) => element.Type switch
    {
        ElementType.Motor => part.Kind.Voltage == "brief" ? 0.05 : 3,
        ElementType.Coil => element.IsInternal ? 4 : 80,
        ElementType.Gauge => 60,
        ElementType.Electronics => 200,
        ElementType.Resistor or ElementType.Sender or ElementType.Dropper => 1,
        ElementType.Diode => 0.1,
        _ => 7,
    };
}
