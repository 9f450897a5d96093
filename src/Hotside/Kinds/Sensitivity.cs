using System.Collections.Immutable;

namespace Hotside.Kinds;

/// <summary>The words by which a kind says what it minds, and what each means.</summary>
public static class Sensitivity
{
    private static readonly (string Word, string Meaning)[] Voltages =
    [
        ("indifferent", "any voltage of a vehicle does"),
        ("contact", "only current and breaking matter; at the same watts a higher voltage is easier on it, and its arc worse"),
        ("brief", "stands the double voltage for seconds only"),
        ("match", "must suit the voltage"),
        ("misreads", "stands another voltage and reads wrong"),
        ("selfregulating", "its reading holds at another voltage; its heat does not"),
    ];

    private static readonly (string Word, string Meaning)[] Polarities =
    [
        ("indifferent", "either way round"),
        ("reverses", "turns or reads the other way"),
        ("weaker", "works less well the wrong way round"),
        ("polarise", "must be magnetized anew for the other polarity"),
        ("destroyed", "the wrong way round destroys it"),
        ("test", "depends on how it is built: find out before power"),
    ];

    private static readonly (string Word, string Meaning)[] Currents =
    [
        ("indifferent", "takes what it needs"),
        ("contact", "carries and breaks no more than its rating; lamps, coils and motors count for more"),
        ("carries", "carries no more than its rating, and heats"),
        ("opens", "opens when too much flows"),
        ("timed", "its pace depends on the current of its load"),
        ("scale", "carries no more than its scale"),
        ("limited", "gives no more than its rating"),
    ];

    /// <summary>The words for voltage.</summary>
    public static ImmutableArray<string> VoltageWords { get; } = [.. Voltages.Select(v => v.Word)];

    /// <summary>The words for polarity.</summary>
    public static ImmutableArray<string> PolarityWords { get; } = [.. Polarities.Select(p => p.Word)];

    /// <summary>The words for current.</summary>
    public static ImmutableArray<string> CurrentWords { get; } = [.. Currents.Select(c => c.Word)];

    /// <summary>What a word for voltage means.</summary>
    /// <param name="word">One of <see cref="VoltageWords"/>.</param>
    /// <returns>The meaning, or <see langword="null"/> for another word.</returns>
    public static string? MeaningOfVoltage(string word)
    {
        ArgumentNullException.ThrowIfNull(word);
        return Meaning(Voltages, word);
    }

    /// <summary>What a word for polarity means.</summary>
    /// <param name="word">One of <see cref="PolarityWords"/>.</param>
    /// <returns>The meaning, or <see langword="null"/> for another word.</returns>
    public static string? MeaningOfPolarity(string word)
    {
        ArgumentNullException.ThrowIfNull(word);
        return Meaning(Polarities, word);
    }

    /// <summary>What a word for current means.</summary>
    /// <param name="word">One of <see cref="CurrentWords"/>.</param>
    /// <returns>The meaning, or <see langword="null"/> for another word.</returns>
    public static string? MeaningOfCurrent(string word)
    {
        ArgumentNullException.ThrowIfNull(word);
        return Meaning(Currents, word);
    }

    private static string? Meaning((string Word, string Meaning)[] words, string word) => words.FirstOrDefault(w => w.Word == word).Meaning;
}
