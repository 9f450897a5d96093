using UnitsNet;

namespace Hotside.Studies.Figures.Budgets;

/// <summary>What is left for the starter while it turns the engine.</summary>
/// <param name="Starter">The starter as a load, such as <c>M1</c>.</param>
/// <param name="Current">Its current.</param>
/// <param name="AtStarter">The volts across it.</param>
/// <param name="AtBattery">The volts at the posts of the battery that gives most; of batteries in series at the ends of the bank.</param>
/// <param name="Least">The least volts with which it should still turn: 1.6 V a cell (TM 5-3820-256-24-4: 9.6 V at the starter of a 12 V system; 6 V by halves).</param>
public sealed record CrankingFigures(string Starter, ElectricCurrent Current, ElectricPotential AtStarter, ElectricPotential AtBattery, ElectricPotential Least)
{
    internal const double LeastShare = 1.6 / 2;

    /// <summary>Whether the volts suffice.</summary>
    public bool Suffices => AtStarter >= Least;
}
