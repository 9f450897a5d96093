using Hotside.Circuits;
using Hotside.Studies.Figures.Budgets;
using UnitsNet;

namespace Hotside.Wording;

/// <summary>What a charging budget means, in words.</summary>
internal static class BudgetText
{
    /// <summary>What the battery does in a case.</summary>
    public static string Battery(BudgetCase one)
    {
        double amperes = one.Battery.Amperes;
        string gone = one.HalfEmptyAfter is { } time ? $"; half of it is gone after {After(time)}" : "";
        return amperes > 0.05 ? $"gives {Numbers.ThreeFigures(amperes)} A{gone}" : amperes < -0.05 ? $"takes {Numbers.ThreeFigures(-amperes)} A" : "gives and takes nothing";
    }

    /// <summary>Everything but the tables, a sentence a line.</summary>
    public static IEnumerable<string> Of(ChargingBudget budget, Vocabulary words)
    {
        foreach (var machine in budget.Machines)
            yield return $"{PartWords.Named(machine.Part, words)}: {Numbers.ThreeFigures(machine.Rated.Amperes)} A rated; {machine.Why}.";
        if (budget.MachinesSuffice is { } suffices)
        {
            double limit = 0.8 * budget.Machines.Sum(m => m.Rated.Amperes), needed = budget.Loads.Sum(l => l.ByNight.Amperes) + 5;
            yield return $"At night and in rain the loads and 5 A for the battery take {Numbers.ThreeFigures(needed)} A; 80 % of the rating is {Numbers.ThreeFigures(limit)} A: {(suffices ? "it suffices" : "too little")} "
                + "(common practice, no source).";
        }
        foreach (var ammeter in budget.Ammeters)
            yield return $"{PartWords.Named(ammeter.Part, words)} shows {Swing(ammeter.Reading.Amperes)} with the engine running and the key on; the battery {(ammeter.Charging.Amperes < 0 ? "gives" : "takes")} {Numbers.ThreeFigures(Math.Abs(ammeter.Charging.Amperes))} A"
                + (ammeter.ShowsTheBattery ? "." : ": not all that the battery takes or gives passes it.");
        if (budget.Cranking is { } cranking)
            yield return $"Cranking: {cranking.Starter} draws {Numbers.ThreeFigures(cranking.Current.Amperes)} A and has {Numbers.Fixed(cranking.AtStarter.Volts, 2)} V, the battery {Numbers.Fixed(cranking.AtBattery.Volts, 2)} V; "
                + $"at least {Numbers.Fixed(cranking.Least.Volts, 1)} V are wanted at the starter (1.6 V a cell, TM 5-3820-256-24-4): {(cranking.Suffices ? "it suffices" : "too little")}.";
        yield return Standing(budget);
    }

    private static string Standing(ChargingBudget budget)
    {
        double drain = budget.Drain.Amperes;
        if (drain < 1e-4) return "All off: nothing drains the battery but the battery itself.";
        string told = $"All off, the battery gives {Numbers.ThreeFigures(drain)} A";
        return budget.StandsFor is not { } time ? told + "; its ampere-hours are not stated."
            : time.Hours <= 0 ? told + "; it has too few volts for the starter even when full."
            : $"{told}: after {After(time)} it may no longer start the engine.";
    }

    private static string Swing(double amperes) =>
        Math.Abs(amperes) < 0.05 ? "nothing" : $"{Numbers.ThreeFigures(Math.Abs(amperes))} A {(amperes > 0 ? "charge" : "discharge")}";

    private static string After(Duration time) =>
        time.Hours < 48 ? Numbers.Fixed(time.Hours, time.Hours < 10 ? 1 : 0) + " h" : Numbers.Fixed(time.Days, 0) + " days";
}
