using Hotside.Circuits;
using UnitsNet;

namespace Hotside.Studies.Figures;

/// <summary>What an element of a part has and carries: a load, a source, a contact, a fuse.</summary>
/// <param name="Part">The part.</param>
/// <param name="Element">The element.</param>
/// <param name="Voltage">
/// Volts from its first end to its second, counted as if the feed were plus, whichever pole is grounded; of a source, from its plus pole to its minus pole.
/// </param>
/// <param name="Current">The current from its first end to its second, counted from the feed to the return; of a source, what it gives, below 0 what it takes.</param>
/// <param name="RatedVoltage">The volts it is made for: as stated, else the system's.</param>
/// <param name="RatedCurrent">What it draws at these volts, for a consumer; else 0.</param>
public sealed record ElementFigure(Part Part, Element Element, ElectricPotential Voltage, ElectricCurrent Current, ElectricPotential RatedVoltage, ElectricCurrent RatedCurrent)
{
    // Less of its rated current, or of its rated volts, shows in no lamp and moves nothing (own choice). A cold filament draws much at next to no volts.
    private const double LeastShare = 0.01, LeastVolts = 0.02;

    /// <summary>The part's id, with the element where the part has several loads: <c>H1</c>, <c>E3.tail</c>; of what is no load always with the element: <c>S1.contact</c>.</summary>
    public string Name => Element.IsConsumer ? LoadStudy.NameOf(Part, Element) : Part.Id + "." + Element.Name;

    /// <summary>The power that it takes; of a source, what it gives, below 0 what it takes.</summary>
    public Power Power => Power.FromWatts(Voltage.Volts * Current.Amperes);

    /// <summary>Its volts, whichever way round, as a part of its rated volts.</summary>
    public Ratio OfRated => Ratio.FromDecimalFractions(Math.Abs(Voltage.Volts) / RatedVoltage.Volts);

    /// <summary>Whether it has enough to be noticed: a hundredth of its rated current, and a fiftieth of its rated volts.</summary>
    public bool IsLive => Math.Abs(Current.Amperes) >= Math.Max(LeastShare * Math.Abs(RatedCurrent.Amperes), 1e-5) && OfRated.DecimalFractions >= LeastVolts;

    /// <summary>Whether both its ends are joined to feeds, so that it has next to no volts and yet no end of it is safe to touch to metal.</summary>
    public bool IsBetweenFeeds { get; init; }
}
