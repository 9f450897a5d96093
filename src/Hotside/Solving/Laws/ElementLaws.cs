using Hotside.Circuits;

namespace Hotside.Solving.Laws;

/// <summary>The law of every element that is no source and no regulator, from its kind's data and what its part states.</summary>
internal static class ElementLaws
{
    // A silicon diode: own choice, since nobody states Shockley's constants of a diode in a vehicle.
    private const double DiodeVolts = 0.7, DiodeOhms = 0.02;

    // A light-emitting diode with its resistor: own choice.
    private const double LedShare = 0.6;

    // Stalled, a motor draws so many times its rated current (own choice; two to four times for starters is common practice, no source).
    private const double StallRatio = 4;

    // A sender that nobody states, in ohms: own choice, the middle of common ones.
    private const double SenderOhms = 50;

    /// <summary>The law of an element.</summary>
    /// <param name="part">Its part.</param>
    /// <param name="element">The element: no source, no dropper.</param>
    /// <param name="figures">What it draws.</param>
    /// <param name="celsius">The temperature of conductors.</param>
    public static ElementLaw Of(Part part, Element element, ElementFigures figures, double celsius) => element.Type switch
    {
        ElementType.Gap or ElementType.Capacitor => ElementLaw.None,
        ElementType.Diode => ElementLaw.By(new ClampLaw(1 / DiodeOhms, DiodeVolts, Least: 0)),
        ElementType.Lamp => ElementLaw.By([.. Light(element, figures)]),
        ElementType.Motor => ElementLaw.By(Motor(part, element, figures)),
        ElementType.Sender => ElementLaw.By(ClampLaw.Resistance(Math.Max(
            figures.Stated(Unit.Ohm) ?? figures.Usual(Unit.Ohm) ?? figures.Assume(AssumedFigure.Resistance, SenderOhms), CopperResistance.Contact))),
        _ => ElementLaw.By(OneWay(element, ClampLaw.Resistance(element.IsLink ? LinkOhms(part, element, figures, celsius) : figures.Ohms()))),
    };

    private static IEnumerable<Law> Light(Element element, ElementFigures figures)
    {
        double volts = figures.Volts, amperes = figures.Amperes();
        if (element.IsOneWay || element.Traits.HasFlag(ElementTraits.Bridge))
        {
            double siemens = amperes / ((1 - LedShare) * volts);
            yield return new ClampLaw(siemens, LedShare * volts, Least: 0);
            if (!element.IsOneWay) yield return new ClampLaw(siemens, -LedShare * volts, Most: 0);
        }
        else yield return new LampLaw(volts, amperes, element.Traits.HasFlag(ElementTraits.GasFilled) ? LampLaw.InGas : element.Traits.HasFlag(ElementTraits.Vacuum) ? LampLaw.InVacuum : LampLaw.Usual);
    }

    private static Law Motor(Part part, Element element, ElementFigures figures)
    {
        double volts = figures.Volts, amperes = figures.Amperes();
        double stall = Math.Max(part.Ratings.FirstOrDefault(r => r.Name == "stall A")?.Quantity.Value ?? 0, 0);
        double ohms = volts / (stall > amperes ? stall : StallRatio * amperes);
        bool turnsFan = element.Traits.HasFlag(ElementTraits.Fan) || part.Spec.Options.Contains("fan");
        if (element.IsOneWay) return new ClampLaw(1 / ohms, 0, 0, amperes);
        return !turnsFan ? new ClampLaw(1 / ohms, 0, -amperes, amperes)
            : element.Traits.HasFlag(ElementTraits.Series) ? new SeriesFanLaw(volts, amperes, ohms) : new FanLaw(volts, amperes, ohms);
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
