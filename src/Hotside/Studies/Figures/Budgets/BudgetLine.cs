using UnitsNet;

namespace Hotside.Studies.Figures.Budgets;

/// <summary>A load in a charging budget.</summary>
/// <param name="Load">The load.</param>
/// <param name="Current">What it draws with everything on, 0 or more; loads that exclude each other count once.</param>
/// <param name="Duty">For what part of the time it counts.</param>
public sealed record BudgetLine(LoadStudy Load, ElectricCurrent Current, Duty Duty)
{
    /// <summary>Its mean current on a dry day.</summary>
    public ElectricCurrent ByDay => Current * Duty.ByDay.DecimalFractions;

    /// <summary>Its mean current at night and in rain.</summary>
    public ElectricCurrent ByNight => Current * Duty.ByNight.DecimalFractions;
}
