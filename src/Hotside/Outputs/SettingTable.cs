using System.Collections.Immutable;
using System.Text;
using Hotside.Circuits;
using Hotside.Outputs;
using Hotside.Studies;
using Hotside.Wording;

namespace Hotside;

/// <summary>Volts, amperes and watts of a job in one setting, before and after, as a table. Immutable.</summary>
public sealed class SettingTable
{
    private readonly string text;

    private SettingTable(string text) => this.text = text;

    /// <summary>The table of a setting.</summary>
    /// <param name="job">The job.</param>
    /// <param name="setting">A setting that the job names, or one of <see cref="CircuitStudy.ProposedSettings"/>.</param>
    /// <param name="words">Whose words.</param>
    /// <exception cref="ArgumentException">Neither circuit has such a setting; the message names the nearest.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="words"/> is none of the two.</exception>
    public static SettingTable Of(Job job, string setting, Words words = Words.American)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentException.ThrowIfNullOrWhiteSpace(setting);
        return Of(job, setting, Vocabulary.Of(words), study => study.FindSetting(setting) is { } found ? [new FigureSection(study.Circuit, found.Figures, found, IsWhole: true)] : [])
            ?? throw job.Study.After.UnknownSetting(setting);
    }

    /// <summary>The table of a sequence: what each step has on, and what the sources give in it.</summary>
    /// <param name="job">The job.</param>
    /// <param name="sequence">A sequence that the job names.</param>
    /// <param name="words">Whose words.</param>
    /// <exception cref="ArgumentException">Neither circuit has such a sequence; the message names the nearest.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="words"/> is none of the two.</exception>
    public static SettingTable OfSequence(Job job, string sequence, Words words = Words.American)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentException.ThrowIfNullOrWhiteSpace(sequence);
        return Of(job, sequence, Vocabulary.Of(words), study => [.. study.FindSequence(sequence)?.Steps.Select(s => new FigureSection(study.Circuit, s, null, IsWhole: false)) ?? []])
            ?? throw job.Study.After.UnknownSequence(sequence);
    }

    /// <summary>The table in plain text, columns aligned by spaces, a caution below; lines end with a line feed.</summary>
    public string ToText() => text;

    // Nothing where neither circuit has it.
    private static SettingTable? Of(Job job, string name, Vocabulary words, Func<CircuitStudy, IReadOnlyList<FigureSection>> sections)
    {
        StringBuilder text = new();
        text.Append(job.Title).Append(": ").Append(name).Append('\n');
        bool isAltered = job.Study.IsAltered;
        var views = isAltered ? [("Before, ", job.Study.Before), ("After, ", job.Study.After)] : ImmutableArray.Create(("", job.Study.After));
        int told = 0;
        foreach (var (when, study) in views)
        {
            text.Append('\n').Append(when).Append(SheetText.System(study.Circuit.System, words));
            var all = sections(study);
            if (all.Count == 0)
            {
                text.Append("\n  nothing here is called \"").Append(name).Append("\"\n");
                continue;
            }
            for (int i = 0; i < all.Count; i++) text.Append(all[i].ToText(words, all.Count > 1 ? $"{Numbers.Whole(i + 1)}. {all[i].Figures.Setting.Name}" : ""));
            foreach (string line in FigureText.Assumptions(all[0].Figures.Assumptions, study.Circuit)) text.Append("  ").Append(line).Append('\n');
            told++;
        }
        return told == 0 ? null : new(text.Append('\n').Append(FigureText.HowComeBy).Append('\n').ToString());
    }
}
