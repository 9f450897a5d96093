using System.Globalization;
using System.Text;

namespace Hotside.Symbols.Texts;

/// <summary>What a user wrote, made fit to be drawn: nothing that the face lacks, nothing invisible, nothing that turns the line round.</summary>
internal static class CleanText
{
    /// <summary>Stands for what cannot be drawn: U+FFFD, which the face has.</summary>
    public const char Substitute = '\uFFFD';

    /// <summary>Whether every character of the text can be drawn as it stands.</summary>
    public static bool CanDraw(string text) => Of(text) == text;

    /// <summary>
    /// The text with runs of white space as one space, and one <see cref="Substitute"/> for each grapheme that the face lacks
    /// (controls, direction marks, lone surrogates and emoji among them): nothing vanishes without a trace.
    /// </summary>
    public static string Of(string text)
    {
        if (IsClean(text))
            return text;
        var clean = new StringBuilder(text.Length);
        TextElementEnumerator elements = StringInfo.GetTextElementEnumerator(Composed(text));
        while (elements.MoveNext())
            Append(clean, elements.GetTextElement());
        return clean.ToString().TrimEnd(' ');
    }

    // Nearly all texts are clean; they are not copied.
    private static bool IsClean(string text)
    {
        bool space = true;
        foreach (char c in text)
        {
            if (c == ' ' ? space : c != Substitute && !Drawable(c))
                return false;
            space = c == ' ';
        }

        return !space || text.Length == 0;
    }

    // A letter and a combining accent become one character where there is one.
    private static string Composed(string text)
    {
        var whole = new StringBuilder(text.Length);
        foreach (Rune rune in text.EnumerateRunes())
            whole.Append(IsNoCharacter(rune.Value) ? Rune.ReplacementChar : rune);
        return whole.ToString().Normalize(NormalizationForm.FormC);
    }

    // Values that Unicode gives to no character, now or later; normalizing them throws.
    private static bool IsNoCharacter(int value) => (value & 0xFFFE) == 0xFFFE || value is >= 0xFDD0 and <= 0xFDEF;

    private static void Append(StringBuilder clean, string element)
    {
        if (element.Length > 0 && element.All(char.IsWhiteSpace))
        {
            if (clean.Length > 0 && clean[^1] != ' ')
                clean.Append(' ');
        }
        else if (element.All(Drawable))
            clean.Append(element);
        else if (Drawable(element[0]))
            clean.Append(element[0]).Append(Substitute);
        else
            clean.Append(Substitute);
    }

    private static bool Drawable(char c) => c >= ' ' && !char.IsSurrogate(c) && c != '\u00AD' && !IsSpaceButNotBlank(c) && FontFace.Regular.Has(c) && FontFace.Bold.Has(c);

    // A no-break space would be measured but breaks no line; an ordinary one does both.
    private static bool IsSpaceButNotBlank(char c) => c != ' ' && char.IsWhiteSpace(c);
}
