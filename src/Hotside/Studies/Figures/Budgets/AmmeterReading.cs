using Hotside.Circuits;
using UnitsNet;

namespace Hotside.Studies.Figures.Budgets;

/// <summary>What an ammeter shows while the machines charge, beside what the battery takes.</summary>
/// <param name="Part">The ammeter.</param>
/// <param name="Reading">Its reading: above 0 a charge, below 0 a discharge, as told from the way its current goes with the engine stopped.</param>
/// <param name="Charging">What the batteries take; below 0 what they give.</param>
public sealed record AmmeterReading(Part Part, ElectricCurrent Reading, ElectricCurrent Charging)
{
    /// <summary>Whether it shows what the batteries take, to half an ampere; where not, something is connected on the battery's side of it.</summary>
    public bool ShowsTheBattery => Math.Abs(Reading.Amperes - Charging.Amperes) < 0.5;
}
