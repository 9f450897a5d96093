using UnitsNet;

namespace Hotside.Studies.Figures.Budgets;

/// <summary>What is needed and what is given, on an average, at one speed by day or night.</summary>
/// <param name="Name">Such as <c>idle, night and rain</c>.</param>
/// <param name="Needed">The mean current of the loads.</param>
/// <param name="Given">What the machines can give.</param>
/// <param name="Battery">What the battery gives to make it up; below 0 what is left for it, of which it takes no more than it accepts.</param>
/// <param name="HalfEmptyAfter">After what time half of the battery's charge is gone; <see langword="null"/> where it is charged, or its ampere-hours are not stated.</param>
public sealed record BudgetCase(string Name, ElectricCurrent Needed, ElectricCurrent Given, ElectricCurrent Battery, Duration? HalfEmptyAfter)
{
    // A flooded battery takes a fifth of its ampere-hours in amperes at most: common practice, no source.
    private const double Acceptance = 0.2;

    internal static BudgetCase Of(string name, double needed, double given, double? ampereHours)
    {
        double lacks = needed - given, battery = lacks < 0 && ampereHours is { } hours ? Math.Max(lacks, -Acceptance * hours) : lacks;
        return new(name, ElectricCurrent.FromAmperes(needed), ElectricCurrent.FromAmperes(given), ElectricCurrent.FromAmperes(battery),
            lacks > 0.05 ? Duration.FromHours(ampereHours / 2 / lacks ?? 0) is { Hours: > 0 } time ? time : null : null);
    }
}
