using Hotside.Alterations;

namespace Hotside.Wording;

/// <summary>The line of one number in a change list.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Full">What is done, with all that the person who does it needs to know.</param>
/// <param name="Short">What is done to what, for a crowded sheet.</param>
/// <param name="Reason">Why, in the user's words; <see langword="null"/> when not said.</param>
internal sealed record ChangeText(int Number, string Full, string Short, string? Reason)
{
    /// <summary>The full line with its reason, where there is room.</summary>
    public string WithReason => Reason is null ? Full : $"{Full}, because {Reason}";

    /// <summary>The line of a change.</summary>
    public static ChangeText Of(Change change, Alteration alteration, Words words)
    {
        var text = new ActText(alteration, words);
        return new(change.Number, string.Join("; ", change.Acts.Select(text.Full)), string.Join("; ", change.Acts.Select(text.Short)),
            change.Reason);
    }

    /// <summary>The longest form that is not longer than a number of characters; the short one where none is.</summary>
    public string Within(int characters) => WithReason.Length <= characters ? WithReason : Full.Length <= characters ? Full : Short;
}
