using UnitsNet;

namespace Hotside.Studies.Figures.Budgets;

/// <summary>For what part of the time a load counts, on an average: what a charging budget multiplies its current by.</summary>
/// <param name="ByDay">On a dry day, 0 to 1.</param>
/// <param name="ByNight">At night and in rain, 0 to 1.</param>
/// <param name="Why">What it counts as and where the figure is from.</param>
public sealed record Duty(Ratio ByDay, Ratio ByNight, string Why)
{
    internal static Duty Of(double byDay, double byNight, string why) => new(Ratio.FromDecimalFractions(byDay), Ratio.FromDecimalFractions(byNight), why);
}
