using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Solving.Laws;

/// <summary>The law of a source, from its plus pole to its minus pole: what it gives is negative.</summary>
internal static class SourceLaws
{
    /// <summary>Brushes and armature of a machine that stands, in ohms: own choice, no source.</summary>
    public const double StandingOhms = 0.5;

    // Regulator and machine as one resistance; an exciter's diodes: own choices.
    private const double MachineOhms = 0.05, ExciterAmperes = 10;

    // A battery of 12 V at rest, empty, a quarter full and so on (TM 5-3805-262-20: at most 11.7 V and at least 12.6 V at the ends).
    private static readonly double[] RestOfTwelve = [11.7, 12.0, 12.2, 12.4, 12.6];

    // The regulator's set-point: 14.3 V at 12 V (TM 5-3820-233-35/1), 7.2 V at 6 V (within 7.0 to 7.5 V, from memory).
    private const double SetShare = 14.3 / 12, SixVoltSetPoint = 7.2;

    // Cells: at 25 °C about half the resistance of the cranking test, 7.2 V at the cranking current and −18 °C (SAE J537; the half is common practice, no source).
    private const double CrankingShare = (12.6 - 7.2) / 12 / 2, OhmAmpereHoursPerVolt = 0.05;

    // Charging takes four times the resistance, and 2 % of the ampere-hours where the battery is full, 20 % where it is empty: own choice within common practice.
    private const double ChargeRatio = 4, FullCharge = 0.02, EmptyCharge = 0.18;

    // A panel of 12 V nominal has 21 V open and 18 V at full current (common practice, no source).
    private const double SolarOpen = 1.75, SolarFull = 1.5;

    /// <summary>The law of a source of some volts.</summary>
    public static ElementLaw Of(Part part, Element element, double volts, ElementFigures figures, Surroundings surroundings)
    {
        if (element.Traits.HasFlag(ElementTraits.Solar)) return ElementLaw.By(Panel(volts, figures));
        if (element.When is null) return ElementLaw.By([.. Battery(part, element, volts, figures, surroundings.ChargeOf(part, element))]);
        // Of an alternator's two sources the first is the output, and its rating is for that alone.
        bool isExciter = part.Kind.Elements.First(e => e.IsSource) != element && figures.Stated(Unit.Ampere) is null;
        double most = isExciter ? ExciterAmperes : figures.Stated(Unit.Ampere) ?? figures.Usual(Unit.Ampere) ?? figures.Assume(AssumedFigure.Current, 360 / volts);
        if (element.TakesEitherPolarity && surroundings.SpeedOf(part, Generators.UsualRatio) is { } turns)
        {
            most *= Generators.ShareAt(turns);
            // Too slow, it is no more than its winding, and its cut-out is open.
            if (most <= 0) return new([ClampLaw.Resistance(StandingOhms)], [ClampLaw.Resistance(StandingOhms)]);
        }
        if (!element.TakesEitherPolarity && (surroundings.SpeedOf(part, Alternators.UsualRatio) ?? surroundings.AlternatorSpeed) is { } speed)
            most = Alternators.OutputAt(speed, part.RatedAside(RatingRule.Low, element.Name, Unit.Ampere) ?? figures.Assume(AssumedFigure.Current, most * Alternators.UsualLow), most);
        if (!element.TakesEitherPolarity) most *= Alternators.ShareAt(surroundings.WindingCelsius);
        ImmutableArray<Law> running = [new ClampLaw(1 / MachineOhms, SetPoint(volts), Least: -most, Most: 0)];
        return new(running, element.TakesEitherPolarity ? [ClampLaw.Resistance(StandingOhms)] : []);
    }

    /// <summary>The volts that a regulator holds, for nominal volts; volts that are no nominal ones are taken as held.</summary>
    public static double SetPoint(double volts) => volts == 6 ? SixVoltSetPoint : IsNominal(volts) ? volts * SetShare : volts;

    /// <summary>The volts of a battery at rest, for nominal volts; volts that are no nominal ones are taken as those of a full one.</summary>
    /// <param name="volts">The volts stated.</param>
    /// <param name="charge">How much of its charge it has, from 0 to 1.</param>
    public static double RestVolts(double volts, double charge)
    {
        double place = Math.Clamp(charge, 0, 1) * (RestOfTwelve.Length - 1);
        int below = Math.Min((int)place, RestOfTwelve.Length - 2);
        double twelve = RestOfTwelve[below] + ((place - below) * (RestOfTwelve[below + 1] - RestOfTwelve[below]));
        return volts * twelve / (IsNominal(volts) ? 12 : RestOfTwelve[^1]);
    }

    /// <summary>The inner resistance of a battery in ohms; where it states neither that nor its cranking amperes, by its ampere-hours.</summary>
    public static double BatteryOhms(Part part, Element element, double volts) => StatedOhms(part, element, volts) ?? UsualOhms(part, element, volts);

    private static double? StatedOhms(Part part, Element element, double volts) =>
        part.RatedMiddle(element.Name, Unit.Ohm) ?? (volts * CrankingShare / part.Rated(element.Name, Unit.Ampere));

    private static double UsualOhms(Part part, Element element, double volts) => OhmAmpereHoursPerVolt * volts / (part.Rated(element.Name, Unit.AmpereHour) ?? UsualAmpereHours);

    private static bool IsNominal(double volts) => volts is 2 or 4 or 6 or 8 or 12 or 24 or 32 or 36 or 48;

    private static IEnumerable<Law> Battery(Part part, Element element, double volts, ElementFigures figures, double charge)
    {
        double? ampereHours = part.Rated(element.Name, Unit.AmpereHour);
        double ohms = StatedOhms(part, element, volts) ?? figures.Assume(AssumedFigure.Resistance, UsualOhms(part, element, volts));
        double rest = RestVolts(volts, charge), siemens = 1 / Math.Max(ohms, CopperResistance.Contact);
        if (ampereHours is null) yield return new ClampLaw(siemens, rest);
        else
        {
            yield return new ClampLaw(siemens, rest, Most: 0);
            yield return new ClampLaw(siemens / ChargeRatio, rest, Least: 0, Most: (FullCharge + (EmptyCharge * (1 - charge))) * ampereHours.Value);
        }
    }

    // A battery of which nothing but the volts is known (own choice).
    private const double UsualAmpereHours = 60;

    private static ClampLaw Panel(double volts, ElementFigures figures)
    {
        double most = figures.Amperes();
        return new(most / ((SolarOpen - SolarFull) * volts), SolarOpen * volts, -most, 0);
    }
}
