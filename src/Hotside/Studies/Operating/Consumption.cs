using Hotside.Circuits;
using Hotside.Solving.Laws;

namespace Hotside.Studies.Operating;

/// <summary>The resistance that stands for an element where only its order matters: whether something pulls in or glows. The figures are those of the operating point.</summary>
internal static class Consumption
{
    /// <summary>The inner resistance of a source in ohms (own choice, no source): any that is in order.</summary>
    public const double Source = 0.005;

    /// <summary>The resistance of an element that conducts, in ohms, above 0.</summary>
    /// <param name="part">Its part.</param>
    /// <param name="element">The element.</param>
    /// <param name="systemVolts">The system's voltage, for what states none.</param>
    public static double ResistanceOf(Part part, Element element, double systemVolts) =>
        element.IsSource ? SourceLaws.StandingOhms
        : element.Type is ElementType.Diode or ElementType.Dropper ? ElementLaws.DiodeOhms
        : new ElementFigures(part, element, systemVolts, []).Ohms();
}
