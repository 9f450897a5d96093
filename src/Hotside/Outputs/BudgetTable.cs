using System.Collections.Immutable;
using System.Text;
using Hotside.Circuits;
using Hotside.Outputs;
using Hotside.Studies;
using Hotside.Studies.Figures.Budgets;
using Hotside.Wording;

namespace Hotside;

/// <summary>The charging budget of a job, before and after, as a table. Immutable.</summary>
public sealed class BudgetTable
{
    private readonly string text;

    private BudgetTable(string text) => this.text = text;

    /// <summary>The table of a job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="words">Whose words.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="words"/> is none of the two.</exception>
    public static BudgetTable Of(Job job, Words words = Words.American)
    {
        ArgumentNullException.ThrowIfNull(job);
        var vocabulary = Vocabulary.Of(words);
        StringBuilder text = new();
        text.Append(job.Title).Append(": charging budget\n");
        bool isAltered = job.Study.IsAltered;
        if (isAltered) Tell(text, "Before, ", job.Study.Before, vocabulary);
        Tell(text, isAltered ? "After, " : "", job.Study.After, vocabulary);
        return new(text.Append("\nMean currents: duties are habits, so take them as rough. ").Append(FigureText.HowComeBy).Append('\n').ToString());
    }

    /// <summary>The table in plain text, columns aligned by spaces, a caution below; lines end with a line feed.</summary>
    public string ToText() => text;

    private static void Tell(StringBuilder text, string when, CircuitStudy study, Vocabulary words)
    {
        var budget = study.Budget;
        text.Append('\n').Append(when).Append(SheetText.System(study.Circuit.System, words)).Append('\n');
        Loads(text, budget.Loads);
        Cases(text, budget);
        foreach (string line in BudgetText.Of(budget, words)) text.Append("  ").Append(line).Append('\n');
    }

    private static void Loads(StringBuilder text, ImmutableArray<BudgetLine> loads)
    {
        if (loads.IsEmpty) return;
        text.Append(TextColumns.Of("  ",
        [
            ["load", "", "amperes", "dry day", "night, rain", "counts as"],
            .. loads.Select(l => new[]
            {
                l.Load.Name, l.Load.Part.Title, Numbers.ThreeFigures(l.Current.Amperes), Numbers.Fixed(l.ByDay.Amperes, 2), Numbers.Fixed(l.ByNight.Amperes, 2), l.Duty.Why,
            }),
            ["together", "", "", Numbers.Fixed(loads.Sum(l => l.ByDay.Amperes), 2), Numbers.Fixed(loads.Sum(l => l.ByNight.Amperes), 2), ""],
        ], 2, 3, 4)).Append('\n');
    }

    private static void Cases(StringBuilder text, ChargingBudget budget)
    {
        if (budget.Cases.IsEmpty) return;
        text.Append(TextColumns.Of("  ",
        [
            ["", "loads, A", "machine, A", "battery"],
            .. budget.Cases.Select(c => new[] { c.Name, Numbers.ThreeFigures(c.Needed.Amperes), Numbers.ThreeFigures(c.Given.Amperes), BudgetText.Battery(c) }),
        ], 1, 2)).Append('\n');
    }
}
