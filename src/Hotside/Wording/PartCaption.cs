using Hotside.Alterations;
using Hotside.Circuits;

namespace Hotside.Wording;

/// <summary>The text block of a part in one view; a line that has nothing to say is empty.</summary>
/// <param name="Reference">Its id.</param>
/// <param name="Name">Its name; empty where the symbol says it, as for a fuse.</param>
/// <param name="Rating">Its ratings, with middle dots.</param>
/// <param name="State">What becomes of it.</param>
internal sealed record PartCaption(string Reference, string Name, string Rating, string State)
{
    /// <summary>The block of a part.</summary>
    /// <param name="partId">The id of a part that the view has.</param>
    /// <param name="alteration">The alteration.</param>
    /// <param name="moment">Which circuit the view shows.</param>
    /// <param name="words">Whose words.</param>
    public static PartCaption Of(string partId, Alteration alteration, Moment moment, Words words)
    {
        var part = (moment == Moment.Before ? alteration.Before : alteration.After).FindPart(partId)
            ?? throw new ArgumentException($"The {moment.ToString().ToLowerInvariant()} circuit has no part \"{partId}\".", nameof(partId));
        return new(part.Id, NameOf(part, words), PartNaming.RatingLine(part), StateText.Of(alteration.StateOf(partId), moment));
    }

    /// <summary>A text in one line, or in two of about the same length where it is longer than some number of characters.</summary>
    public static IReadOnlyList<string> InTwoLines(string text, int characters)
    {
        int best = -1;
        for (int at = text.IndexOf(' ', StringComparison.Ordinal); at >= 0; at = text.IndexOf(' ', at + 1))
            if (best < 0 || Math.Abs(text.Length - (2 * at)) < Math.Abs(text.Length - (2 * best)))
                best = at;
        return text.Length <= characters || best < 0 ? [text] : [text[..best], text[(best + 1)..]];
    }

    private static string NameOf(Part part, Words words)
    {
        bool saysItself = part.Kind.Elements.All(e => e.Type == ElementType.Fuse) && part.Name is null;
        return saysItself ? "" : PartNaming.Title(part, words);
    }
}
