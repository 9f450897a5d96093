using Hotside.Diagnoses;

namespace Hotside.Tool;

/// <summary>Asks for one reading after the other, until what is wrong is found, no reading tells more, or nothing more is said.</summary>
internal sealed class AskingTerminal(TextReader input, TextWriter output, int top)
{
    /// <summary>The diagnosis after the answers.</summary>
    public Diagnosis Ask(Diagnosis diagnosis)
    {
        while (diagnosis.Next is { } next)
        {
            foreach (string note in diagnosis.Notes) output.WriteLine("! " + note);
            Question(next);
            if (input.ReadLine()?.Trim() is not { Length: > 0 } answer) return diagnosis;
            try
            {
                switch (answer)
                {
                    case "?":
                        Why(diagnosis, next);
                        break;
                    case "-":
                        diagnosis = diagnosis.WithoutNext();
                        break;
                    case "m":
                        diagnosis = diagnosis.Mended();
                        break;
                    default:
                        diagnosis = diagnosis.With(Entered(next, answer));
                        break;
                }
            }
            catch (ArgumentException e)
            {
                output.WriteLine("  " + e.Message.Split(" (Parameter")[0]);
            }
        }
        output.WriteLine();
        return diagnosis;
    }

    private void Question(NextReading next)
    {
        output.WriteLine();
        foreach (string caution in next.Cautions) output.WriteLine("CAUTION: " + caution);
        output.Write(next.BlackOn.Length == 0 ? $"{next.Setting}: {next.RedOn}, {next.Asks}? " : $"{next.Setting}: red on {next.RedOn}, black on {next.BlackOn}, {next.Asks}? ");
    }

    private void Why(Diagnosis diagnosis, NextReading next)
    {
        output.WriteLine($"  It {next.Why}:");
        foreach (string expected in next.Expected) output.WriteLine("    " + expected);
        foreach (var suspect in diagnosis.Suspects.Take(top)) output.WriteLine($"  {suspect.Share.Percent,4:0} %  {suspect.Text}");
    }

    // "3.1", "3.1 V" or a whole reading. Ohms that are no number are open.
    private static string Entered(NextReading next, string answer)
    {
        if (answer.Contains('=', StringComparison.Ordinal)) return answer;
        int mark = next.Entry.IndexOf('?', StringComparison.Ordinal);
        string unit = next.Entry[(mark + 1)..];
        foreach (string word in new[] { " V", " ohm" })
            if (unit.StartsWith(word, StringComparison.Ordinal) && !(char.IsAsciiDigit(answer[^1]) || answer[^1] == '.'))
                unit = unit[word.Length..];
        return next.Entry[..mark] + answer + unit;
    }
}
