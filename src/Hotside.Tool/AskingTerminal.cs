using Hotside.Diagnoses;

namespace Hotside.Tool;

/// <summary>Asks for one reading after the other, until what is wrong is found, no reading tells more, or nothing more is said.</summary>
internal sealed class AskingTerminal(TextReader input, TextWriter output, int top)
{
    private readonly Stack<Diagnosis> before = [];

    /// <summary>The diagnosis after the answers.</summary>
    public Diagnosis Ask(Diagnosis diagnosis)
    {
        output.WriteLine("Answer with what is read or seen. \"?\" says why, \"-\" that the point cannot be reached, \"u\" takes the last answer back, \"m\" says that the first suspect is mended; nothing ends it.");
        string? noted = null;
        while (true)
        {
            string notes = string.Concat(diagnosis.Notes.Select(n => $"! {n}\n"));
            if (notes != noted) output.Write(notes);
            noted = notes;
            if (diagnosis.Next is { } next) Question(next);
            else Verdict(diagnosis);
            if (input.ReadLine()?.Trim() is not { Length: > 0 } answer) break;
            try
            {
                diagnosis = Answered(diagnosis, answer);
            }
            catch (ArgumentException e)
            {
                output.WriteLine("  " + (diagnosis.Next is { } asked && !answer.Contains('=', StringComparison.Ordinal) ? Refused(asked, answer) : e.Message.Split(" (Parameter")[0]));
            }
        }
        output.WriteLine();
        return diagnosis;
    }

    private Diagnosis Answered(Diagnosis diagnosis, string answer)
    {
        switch (answer)
        {
            case "?":
                Why(diagnosis);
                return diagnosis;
            case "u":
                if (before.TryPop(out var last)) return last;
                output.WriteLine("  There is no answer to take back.");
                return diagnosis;
        }
        if (diagnosis.Next is null && answer is not "m" && !answer.Contains('=', StringComparison.Ordinal))
        {
            output.WriteLine("  Nothing is asked for; write a whole reading, such as \"H1.1 = 3.1 V @ horn pressed\", or one of the letters.");
            return diagnosis;
        }
        var after = answer switch
        {
            "-" => diagnosis.WithoutNext(),
            "m" => diagnosis.Mended(),
            _ => diagnosis.With(Entered(diagnosis.Next, answer)),
        };
        before.Push(diagnosis);
        return after;
    }

    private void Question(NextReading next)
    {
        output.WriteLine();
        foreach (string caution in next.Cautions) output.WriteLine("CAUTION: " + caution);
        output.Write(next.BlackOn.Length == 0 ? $"{next.Setting}: {next.RedOn}, {next.Asks}? " : $"{next.Setting}: red on {next.RedOn}, black on {next.BlackOn}, {next.Asks}? ");
    }

    private void Verdict(Diagnosis diagnosis)
    {
        output.WriteLine();
        var first = diagnosis.Suspects[0];
        output.WriteLine($"{(diagnosis.IsFound ? "Found" : "No reading within reach tells more; it leads")}: {first.Text}.{(first.Repair.Length > 0 ? " " + first.Repair : "")}");
        output.Write("\"m\" when that is mended and it still is not right; nothing ends it: ");
    }

    private void Why(Diagnosis diagnosis)
    {
        if (diagnosis.Next is { } next)
        {
            output.WriteLine($"  It {next.Why}:");
            foreach (string expected in next.Expected) output.WriteLine("    " + expected);
        }
        foreach (var suspect in diagnosis.Suspects.Take(top)) output.WriteLine($"  {suspect.Share.Percent,4:0} %  {suspect.Text}");
    }

    // Of a bare answer it is known what was wanted.
    private static string Refused(NextReading asked, string answer) => asked.BlackOn.Length == 0 ? $"\"{answer}\" is no answer; {asked.RedOn} is {asked.Asks}."
        : $"\"{answer}\" is no reading; a number of {(asked.Asks.StartsWith("ohms", StringComparison.Ordinal) ? "ohms, or open," : "volts with the sign that the meter shows")} is wanted.";

    // "3.1", "3.1 V" or a whole reading. Ohms that are no number are open.
    private static string Entered(NextReading? next, string answer)
    {
        if (next is null || answer.Contains('=', StringComparison.Ordinal)) return answer;
        int mark = next.Entry.IndexOf('?', StringComparison.Ordinal);
        string unit = next.Entry[(mark + 1)..];
        foreach (string word in new[] { " V", " ohm" })
            if (unit.StartsWith(word, StringComparison.Ordinal) && !(char.IsAsciiDigit(answer[^1]) || answer[^1] == '.'))
                unit = unit[word.Length..];
        return next.Entry[..mark] + answer + unit;
    }
}
