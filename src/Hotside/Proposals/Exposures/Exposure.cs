using Hotside.Circuits;
using UnitsNet;

namespace Hotside.Proposals.Exposures;

/// <summary>What an element of a part would get if nothing but the sources were changed. Volts and amperes with their signs; the greatest of all settings.</summary>
/// <param name="Part">The part.</param>
/// <param name="Element">The element.</param>
/// <param name="Rated">The volts it is made for.</param>
internal sealed record Exposure(Part Part, Element Element, double Rated)
{
    public double VoltsBefore { get; init; }

    public double Volts { get; init; }

    public double AmperesBefore { get; init; }

    public double Amperes { get; init; }

    /// <summary>Volts over rated volts; of a gauge, whose sender takes a part of the volts, at least as much as they rise.</summary>
    public double Share => Element.Type == ElementType.Gauge && VoltsBefore != 0 ? Math.Max(Math.Abs(Volts) / Rated, Math.Abs(Volts / VoltsBefore)) : Math.Abs(Volts) / Rated;

    /// <summary>Whether the change of the source gives it more than it had; what it had before, it bears.</summary>
    public bool Rises => Math.Abs(Volts) > 1.05 * Math.Abs(VoltsBefore);

    /// <summary>Whether its sign turns.</summary>
    public bool Turns => Element.IsConsumer ? VoltsBefore * Volts < -1e-3 : AmperesBefore * Amperes < -1e-4;

    /// <summary>As the public record has it.</summary>
    public DecisionFigures Told => new(ElectricPotential.FromVolts(Rated), ElectricPotential.FromVolts(Math.Abs(VoltsBefore)), ElectricPotential.FromVolts(Math.Abs(Volts)),
        ElectricCurrent.FromAmperes(Math.Abs(AmperesBefore)), ElectricCurrent.FromAmperes(Math.Abs(Amperes))) { Turns = Turns };
}
