using Hotside.Circuits;

namespace Hotside.Wording;

/// <summary>The current that a load is rated for.</summary>
internal static class LoadCurrent
{
    /// <summary>The rated current of an element: as stated, else power by voltage, else voltage by resistance.</summary>
    /// <param name="part">The part.</param>
    /// <param name="element">The element.</param>
    /// <returns>Amperes; <see langword="null"/> when the ratings do not tell.</returns>
    public static double? Of(Part part, Element element)
    {
        if (part.Rated(element.Name, Unit.Ampere) is { } stated) return stated;
        if (part.Rated(element.Name, Unit.Volt) is not { } volts) return null;
        if (part.Rated(element.Name, Unit.Watt) is { } watts && volts > 0) return watts / volts;
        return part.Rated(element.Name, Unit.Ohm) is { } ohms and > 0 ? volts / ohms : null;
    }
}
