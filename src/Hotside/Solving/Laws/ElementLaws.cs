using Hotside.Circuits;

namespace Hotside.Solving.Laws;

/// <summary>The law of every element that is no source and no regulator, from its kind's data and what its part states.</summary>
internal static class ElementLaws
{
    /// <summary>The resistance of a silicon diode that conducts, in ohms: own choice, since nobody states Shockley's constants of a diode in a vehicle.</summary>
    public const double DiodeOhms = 0.02;

    private const double DiodeVolts = 0.7;

    // A light-emitting diode with its resistor: own choice.
    private const double LedShare = 0.6;

    // Stalled, a motor draws so many times its rated current (own choice; two to four times for starters is common practice, no source).
    private const double StallRatio = 4;

    /// <summary>The law of an element.</summary>
    /// <param name="part">Its part.</param>
    /// <param name="element">The element: no source, no dropper.</param>
    /// <param name="figures">What it draws.</param>
    /// <param name="surroundings">Under what it works.</param>
    public static ElementLaw Of(Part part, Element element, ElementFigures figures, Surroundings surroundings) => element.Type switch
    {
        ElementType.Gap or ElementType.Capacitor => ElementLaw.None,
        _ when HasConverter(part, element) => ElementLaw.By(ClampLaw.Resistance(1 / Law.Leak)) with { Watts = figures.Watts() },
        ElementType.Diode => ElementLaw.By(new ClampLaw(1 / DiodeOhms, DiodeVolts, Least: 0)),
        ElementType.Lamp => Light(element, figures),
        ElementType.Motor => Motor(part, element, figures),
        ElementType.Coil => ElementLaw.By(OneWay(element, ClampLaw.Resistance(figures.Ohms() * CopperResistance.FactorAt(surroundings.WindingCelsius)))),
        ElementType.Resistor when part.RatedAside(RatingRule.Cold, element.Name, Unit.Ohm) is { } cold =>
            ElementLaw.By(ClampLaw.Resistance(figures.Ohms())) with { AtOnce = [ClampLaw.Resistance(Math.Max(cold, CopperResistance.Contact))] },
        _ => ElementLaw.By(OneWay(element, ClampLaw.Resistance(element.IsLink ? LinkOhms(part, element, figures, surroundings.ConductorCelsius) : figures.Ohms()))),
    };

    // By a word of the kind, or as its part says.
    private static bool HasConverter(Part part, Element element) =>
        element.Traits.HasFlag(ElementTraits.ConstantPower) || (element.IsConsumer && !element.IsInternal && part.Spec.Options.Contains("converter"));

    private static ElementLaw Light(Element element, ElementFigures figures)
    {
        double volts = figures.Volts, amperes = figures.Amperes();
        if (element.IsOneWay || element.Traits.HasFlag(ElementTraits.Bridge))
        {
            double siemens = amperes / ((1 - LedShare) * volts);
            ClampLaw forward = new(siemens, LedShare * volts, Least: 0);
            return element.IsOneWay ? ElementLaw.By(forward) : ElementLaw.By(forward, new ClampLaw(siemens, -LedShare * volts, Most: 0));
        }
        LampLaw lamp = new(volts, amperes, element.Traits.HasFlag(ElementTraits.GasFilled) ? LampLaw.InGas : element.Traits.HasFlag(ElementTraits.Vacuum) ? LampLaw.InVacuum : LampLaw.Usual);
        return ElementLaw.By(lamp) with { AtOnce = [ClampLaw.Resistance(lamp.ColdOhms)] };
    }

    private static ElementLaw Motor(Part part, Element element, ElementFigures figures)
    {
        double volts = figures.Volts, amperes = figures.Amperes();
        double stall = part.RatedAside(RatingRule.Stall, element.Name, Unit.Ampere) ?? 0;
        double ohms = volts / (stall > amperes ? stall : StallRatio * amperes);
        bool turnsFan = element.Traits.HasFlag(ElementTraits.Fan) || part.Spec.Options.Contains("fan");
        Law turning = element.IsOneWay ? new ClampLaw(1 / ohms, 0, 0, amperes)
            : !turnsFan ? new ClampLaw(1 / ohms, 0, -amperes, amperes)
            : element.Traits.HasFlag(ElementTraits.Series) ? new SeriesFanLaw(volts, amperes, ohms) : new FanLaw(volts, amperes, ohms);
        return ElementLaw.By(turning) with { AtOnce = [OneWay(element, ClampLaw.Resistance(ohms))] };
    }

    private static ClampLaw OneWay(Element element, ClampLaw law) => element.IsOneWay ? law with { Least = 0 } : law;

    // What is not known of a contact is a good joint.
    private static double LinkOhms(Part part, Element element, ElementFigures figures, double celsius)
    {
        if (figures.Stated(Unit.Ohm) is { } ohms) return Math.Max(ohms, CopperResistance.Contact);
        WireSize? size = part.Rated(element.Name, Unit.Awg) is { } gauge ? WireSize.Awg((int)gauge)
            : part.Rated(element.Name, Unit.SquareMillimetre) is { } area ? WireSize.SquareMillimetres(area) : null;
        if (size is { } known && part.Rated(element.Name, Unit.Metre) is { } metres) return Math.Max(CopperResistance.OhmsPerMetre(known) * metres * CopperResistance.FactorAt(celsius), CopperResistance.Contact);
        if (element.Type == ElementType.Fuse && part.Rated(element.Name, Unit.Ampere) is { } rating) return FuseResistance.Of(rating);
        return CopperResistance.Contact;
    }
}
