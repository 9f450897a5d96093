using Hotside.Circuits;
using Hotside.Sizing.Heating;
using Hotside.Sizing.Tables;
using Hotside.Solving;

namespace Hotside.Sizing.Guards;

/// <summary>Within what time a fuse, a breaker or a fusible link opens.</summary>
internal static class DeviceTimes
{
    // A link of copper begins at the temperature of the table's air and parts where copper melts, in °C.
    private const double Air = 30, Melting = 1083;

    // Preece's law is for a bare wire in air; a link is short, insulated, and cooled by its ends: it surely melts from so many times that current on (own choice).
    private const double SurelyMelts = 1.5;

    /// <summary>The word of a fuse's kind for glass.</summary>
    public const string Glass = "glass";

    /// <summary>Whether anything is known of its times: not of a link that states no gauge.</summary>
    public static bool AreKnown(ModelElement device) => !IsLink(device) || LinkArea(device) is not null;

    /// <summary>
    /// What it carries for good in amperes, by which multiples are told: its rating; of a link by its gauge that from which 1.35 times is where bare copper of its size melts in
    /// air (Preece).
    /// </summary>
    public static double? RatingOf(ModelElement device) =>
        LinkArea(device) is { } area ? SteadyHeat.MeltingAmperes(area) / OpeningTime.Opens : Protection.RatingOf(device);

    /// <summary>The pattern of a fuse or breaker of some rating.</summary>
    public static FusePattern PatternOf(ModelElement device, double rating) =>
        device.Element.Type == ElementType.Breaker ? FusePattern.Breaker : device.Part.Spec.Options.Contains(Glass) ? FusePattern.Glass : OpeningTime.PatternOf(rating);

    /// <summary>The opening time at a current.</summary>
    /// <param name="device">The device; one of whose times something is known.</param>
    /// <param name="rating">Its rating in amperes.</param>
    /// <param name="amperes">The current, above 0.</param>
    /// <returns><see langword="null"/> where it does not open.</returns>
    public static OpeningTime? At(ModelElement device, double rating, double amperes) =>
        LinkArea(device) is { } area ? OfLink(area, amperes) : OpeningTime.At(PatternOf(device, rating), amperes / rating);

    // Without loss of heat it melts no sooner (Stauffacher, General Electric Review 31, 1928). With a loss in proportion to the rise, whose end value at the melting current is
    // just the melting point, it takes −ln(1 − x) / x times as long, x being the square of the melting current over the current.
    private static OpeningTime? OfLink(double area, double amperes)
    {
        double melts = SteadyHeat.MeltingAmperes(area), least = Adiabatic.Seconds(area, Air, Melting, amperes), x = SurelyMelts * melts / amperes;
        if (amperes <= melts * OpeningTime.Carries / OpeningTime.Opens) return null;
        x *= x;
        return new(least, x >= 1 ? null : least * -Math.Log(1 - x) / x);
    }

    private static bool IsLink(ModelElement device) => device.Part.Kind.RulesOf(device.Element.Name, Unit.Awg).Any();

    private static double? LinkArea(ModelElement device) => device.Part.Rated(device.Element.Name, Unit.Awg) is { } gauge ? WireSize.Awg((int)gauge).Area : null;
}
