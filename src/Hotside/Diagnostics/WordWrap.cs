using System.Text;

namespace Hotside.Diagnostics;

/// <summary>Breaks plain text at words.</summary>
internal static class WordWrap
{
    /// <summary>The lines of a text; a word longer than a line stands alone.</summary>
    /// <param name="text">The text.</param>
    /// <param name="width">How many characters a line has.</param>
    /// <param name="following">The same for all lines but the first; left out: as many.</param>
    public static IEnumerable<string> Lines(string text, int width, int? following = null)
    {
        StringBuilder line = new();
        foreach (string word in text.Split(' '))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > width)
            {
                yield return line.ToString();
                line.Clear();
                width = following ?? width;
            }
            if (line.Length > 0) line.Append(' ');
            line.Append(word);
        }
        yield return line.ToString();
    }
}
