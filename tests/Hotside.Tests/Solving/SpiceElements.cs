using Hotside.Circuits;
using Hotside.Solving.Laws;

namespace Hotside.Tests.Solving;

/// <summary>The branches of an element as ngspice devices between two nodes: resistances, and sources of current by formulas.</summary>
internal static class SpiceElements
{
    private const double Joint = 1e-6, Inf = double.PositiveInfinity;

    /// <summary>What stands between the nodes: <c>r … ohms</c> or <c>b … i=formula</c>, several in parallel; none where nothing conducts.</summary>
    /// <param name="stated">The element.</param>
    /// <param name="u">The voltage from its first end to its second, as text.</param>
    /// <param name="sourceVolts">A source's volts.</param>
    /// <param name="isAtOnce">Whether in the first moment: filaments and ballasts cold, motors standing.</param>
    public static IEnumerable<(char Device, string Value)> Of(StatedElement stated, string u, double? sourceVolts, bool isAtOnce)
    {
        if (sourceVolts is { } volts) return Source(stated, u, volts);
        if (!stated.IsOn) return [];
        var element = stated.Element;
        return element.Type switch
        {
            ElementType.Gap or ElementType.Capacitor or ElementType.Dropper => [],
            ElementType.Diode => [Clamp(u, 50, 0.7, 0, Inf)],
            ElementType.Lamp when isAtOnce && !element.IsOneWay && !stated.Has(ElementTraits.Bridge) => [Resistance(stated.Volts / stated.Amperes / 12)],
            ElementType.Lamp when element.IsOneWay => [Clamp(u, stated.Amperes / (0.4 * stated.Volts), 0.6 * stated.Volts, 0, Inf)],
            ElementType.Lamp when stated.Has(ElementTraits.Bridge) =>
                [Clamp(u, stated.Amperes / (0.4 * stated.Volts), 0.6 * stated.Volts, 0, Inf), Clamp(u, stated.Amperes / (0.4 * stated.Volts), -0.6 * stated.Volts, -Inf, 0)],
            ElementType.Lamp => [('b', SpiceFormulas.Lamp(u, stated.Volts, stated.Amperes, stated.Has(ElementTraits.GasFilled) ? 0.541 : stated.Has(ElementTraits.Vacuum) ? 0.58 : 0.55))],
            ElementType.Motor => [Motor(stated, u, isAtOnce)],
            ElementType.Coil => [Resistance(element, u, stated.Ohms * (1 + (0.00393 * (stated.Around.WindingCelsius - 20))))],
            ElementType.Resistor when isAtOnce && stated.Part.Ratings.FirstOrDefault(r => r.Name == "cold ohm") is { } cold => [Resistance(cold.Quantity.Value)],
            _ when element.IsLink => [Resistance(element, u, LinkOhms(stated))],
            ElementType.Sender => [Resistance(element, u, stated.Rated(Unit.Ohm) ?? stated.Taken(AssumedFigure.Resistance) ?? 0)],
            _ => [Resistance(element, u, stated.Ohms)],
        };
    }

    /// <summary>A resistance in ohms; a millionth of an ohm at least.</summary>
    public static (char Device, string Value) Resistance(double ohms) => ('r', Math.Max(ohms, Joint).ToString("R", System.Globalization.CultureInfo.InvariantCulture));

    private static (char Device, string Value) Resistance(Element element, string u, double ohms) =>
        element.IsOneWay ? Clamp(u, 1 / Math.Max(ohms, Joint), 0, 0, Inf) : Resistance(ohms);

    private static (char Device, string Value) Motor(StatedElement stated, string u, bool isAtOnce)
    {
        double volts = stated.Volts, amperes = stated.Amperes, most = stated.Part.Ratings.FirstOrDefault(r => r.Name == "stall A")?.Quantity.Value ?? 0;
        double ohms = volts / (most > amperes ? most : 4 * amperes);
        return isAtOnce ? Resistance(stated.Element, u, ohms)
            : stated.Element.IsOneWay ? Clamp(u, 1 / ohms, 0, 0, amperes)
            : !stated.Has(ElementTraits.Fan) && !stated.Part.Spec.Options.Contains("fan") ? Clamp(u, 1 / ohms, 0, -amperes, amperes)
            : stated.Has(ElementTraits.Series) ? ('b', SpiceFormulas.SeriesFan(u, volts, amperes, ohms)) : ('b', SpiceFormulas.Fan(u, volts, amperes, ohms));
    }

    // Milliohms of blade fuses by makers' data sheets (from memory).
    private static readonly Dictionary<double, double> Fuses = new() { [1] = 123, [2] = 54, [3] = 31, [5] = 17.9, [7.5] = 10.9, [10] = 7.7, [15] = 4.8, [20] = 3.4, [25] = 2.5, [30] = 2.0, [40] = 1.4 };

    private static double LinkOhms(StatedElement stated)
    {
        var (part, element) = (stated.Part, stated.Element);
        if (stated.Rated(Unit.Ohm) is { } ohms) return ohms;
        if (part.Rated(element.Name, Unit.Metre) is { } metres)
        {
            if (part.Rated(element.Name, Unit.Awg) is { } gauge) return SpiceConductors.OhmsOf(WireSize.Awg((int)gauge), metres, 20);
            if (part.Rated(element.Name, Unit.SquareMillimetre) is { } area) return SpiceConductors.OhmsOf(WireSize.SquareMillimetres(area), metres, 20);
        }
        // Above the greatest blade a fuse drops as much at its rating as that one does.
        if (element.Type == ElementType.Fuse && part.Rated(element.Name, Unit.Ampere) is { } rating) return Fuses.GetValueOrDefault(rating, 1.4 * 40 / rating) / 1000;
        return Joint;
    }

    private static IEnumerable<(char Device, string Value)> Source(StatedElement stated, string u, double volts)
    {
        var (part, element) = (stated.Part, stated.Element);
        bool isNominal = volts is 2 or 4 or 6 or 8 or 12 or 24 or 32 or 36 or 48;
        if (stated.Has(ElementTraits.Solar))
        {
            if (stated.IsOn) yield return Clamp(u, stated.Amperes / (0.25 * volts), 1.75 * volts, -stated.Amperes, 0);
        }
        else if (element.When is not null)
        {
            bool isExciter = part.Kind.Elements.First(e => e.IsSource) != element && stated.Rated(Unit.Ampere) is null;
            double most = isExciter ? 10 : stated.Rated(Unit.Ampere) ?? stated.Taken(AssumedFigure.Current) ?? 0;
            if (!element.TakesEitherPolarity)
            {
                // Through the outputs at 1500 and 6000 turns a minute goes c − d / n; hot, 15 % less.
                if (stated.Around.AlternatorTurns(part) is { } n)
                {
                    double low = part.Ratings.FirstOrDefault(r => r.Name == "low A") is { } mark && !isExciter ? mark.Quantity.Value : 0.4 * most, d = 2000 * (most - low);
                    most = Math.Max(0, most + (d / 6000) - (d / n));
                }
                most *= 1 - (0.15 * (stated.Around.WindingCelsius - 20) / 65);
            }
            bool stands = false;
            if (element.TakesEitherPolarity && stated.Around.Turns(part, 1.5) is { } turns)
            {
                most *= Math.Min(1, (turns - 1200) / 1200);
                stands = most <= 0;
            }
            if (stated.IsOn && !stands) yield return Clamp(u, 20, volts == 6 ? 7.2 : isNominal ? volts / 12 * 14.3 : volts, -most, 0);
            else if (element.TakesEitherPolarity) yield return Resistance(0.5);
        }
        else
        {
            double? hours = part.Rated(element.Name, Unit.AmpereHour);
            double charge = stated.Around.Charge(part, element), twelve = charge >= 0.25 ? 12.0 + ((charge - 0.25) * 0.8) : 11.7 + (charge * 1.2), rest = volts * twelve / (isNominal ? 12 : 12.6);
            double ohms = stated.Rated(Unit.Ohm) ?? (volts * 0.225 / part.Rated(element.Name, Unit.Ampere)) ?? (0.05 * volts / hours) ?? stated.Taken(AssumedFigure.Resistance) ?? 0;
            yield return Clamp(u, 1 / ohms, rest, -Inf, hours is null ? Inf : 0);
            if (hours is { } known) yield return Clamp(u, 0.25 / ohms, rest, 0, (0.2 - (0.18 * charge)) * known);
        }
    }

    private static (char Device, string Value) Clamp(string u, double siemens, double emf, double least, double most) => ('b', SpiceFormulas.Clamp(u, siemens, emf, least, most));
}
