using Hotside.Circuits;
using Hotside.Solving.Networks;

namespace Hotside.Solving.Laws;

/// <summary>Regulators and limiters in line, from their kind's data and what their part states.</summary>
internal static class Droppers
{
    // A series regulator as makers' data sheets have it, from memory: what it drops at least, and how it holds.
    private const double Drop = 1.5, DropOhms = 0.5, OutputOhms = 0.02;

    // A heated strip joins its contacts and parts them: its mean is held, and nothing else drops.
    private const double ContactOhms = 0.001;

    /// <summary>The regulator of an element between nodes.</summary>
    public static SeriesRegulator Of(Part part, Element element, ElementFigures figures, int first, int second, int against)
    {
        bool isTurned = element.Traits.HasFlag(ElementTraits.HoldsFirst);
        var (input, output) = isTurned ? (second, first) : (first, second);
        double set = part.Rated(element.Name, Unit.Volt) ?? figures.Usual(Unit.Volt) ?? double.PositiveInfinity;
        double most = figures.Stated(Unit.Ampere) ?? double.PositiveInfinity;
        return element.Traits.HasFlag(ElementTraits.Pulsing)
            ? new(input, output, against, 0, ContactOhms, set, ContactOhms, double.PositiveInfinity, WorksEitherWay: true) { IsTurned = isTurned }
            : new(input, output, against, Drop, DropOhms, set, OutputOhms, most, WorksEitherWay: false) { IsTurned = isTurned };
    }
}
