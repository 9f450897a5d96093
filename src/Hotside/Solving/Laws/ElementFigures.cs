using Hotside.Circuits;

namespace Hotside.Solving.Laws;

/// <summary>
/// What an element of a part draws at which volts: as the part states; else as its kind commonly has it, at equal power where that is known for other volts; else
/// <see cref="UsualWatts"/>. Whatever is not stated is written down as an assumption.
/// </summary>
internal sealed class ElementFigures(Part part, Element element, double systemVolts, ICollection<Assumption> assumed)
{
    // A sender that nobody states, in ohms: own choice, the middle of common ones. A resistor: own choice, no source; most are in line with something that is to work all the same.
    private const double SenderOhms = 50, ResistorOhms = 1;

    /// <summary>The volts it is made for.</summary>
    public double Volts { get; } = RatedVolts(part, element, systemVolts);

    /// <summary>The volts that an element is made for: what its part states, else the system's.</summary>
    public static double RatedVolts(Part part, Element element, double systemVolts) => part.Rated(element.Name, Unit.Volt) ?? systemVolts;

    /// <summary>A stated value, a range at its middle; <see langword="null"/> when none is stated.</summary>
    public double? Stated(Unit unit) => part.RatedMiddle(element.Name, unit);

    /// <summary>Its resistance at rated volts in ohms, above 0.</summary>
    public double Ohms()
    {
        double ohms = Stated(Unit.Ohm) ?? Volts / Stated(Unit.Ampere) ?? (Volts * Volts / Stated(Unit.Watt))
            ?? Usual(Unit.Ohm) ?? Volts / Usual(Unit.Ampere) ?? (Volts * Volts / Usual(Unit.Watt)) ?? UsualOhms();
        return Math.Max(ohms, CopperResistance.Contact);
    }

    /// <summary>Its rated current in amperes, above 0.</summary>
    public double Amperes() =>
        Stated(Unit.Ampere) ?? (Stated(Unit.Watt) / Volts) ?? (Stated(Unit.Ohm) is > 0 and var ohms ? Volts / ohms : (double?)null)
        ?? Usual(Unit.Ampere) ?? ((Usual(Unit.Watt) ?? UsualWatts()) / Volts);

    /// <summary>Its rated power in watts, above 0.</summary>
    public double Watts() => Stated(Unit.Watt) ?? (Volts * Amperes());

    /// <summary>What a kind commonly has, in a unit; <see langword="null"/> when it does not say.</summary>
    public double? Usual(Unit unit)
    {
        foreach (var rule in part.Kind.RulesOf(element.Name, unit))
            if (rule.Default is { } usual && usual.At is null or { Unit: Unit.Volt })
            {
                double there = rule.MiddleFor(element.Name, usual.Quantity), ratio = usual.At is { } at ? at.Value / Volts : 1;
                double here = unit switch { Unit.Ampere => there * ratio, Unit.Ohm => there / ratio / ratio, Unit.Volt => there / ratio, _ => there };
                return Assume(unit switch { Unit.Ampere => AssumedFigure.Current, Unit.Ohm => AssumedFigure.Resistance, Unit.Volt => AssumedFigure.Voltage, _ => AssumedFigure.Power }, here, usual.Source);
            }
        return null;
    }

    /// <summary>Writes an assumption down.</summary>
    /// <returns>The value.</returns>
    public double Assume(AssumedFigure what, double value, string source = Assumption.Own)
    {
        assumed.Add(new(part.Id + "." + element.Name, what, value, source));
        return value;
    }

    private double UsualOhms() => element.Type switch
    {
        ElementType.Sender => Assume(AssumedFigure.Resistance, SenderOhms),
        ElementType.Resistor => Assume(AssumedFigure.Resistance, ResistorOhms),
        _ => Volts * Volts / UsualWatts(),
    };

    // Own choice, no source: of the size that such things commonly have.
    private double UsualWatts() => Assume(AssumedFigure.Power, element.Type switch
    {
        ElementType.Lamp => 21,
        ElementType.Motor or ElementType.Heater or ElementType.Horn => 60,
        ElementType.Coil => 2,
        _ => 1,
    });
}
