using System.Globalization;
using Hotside.Circuits;
using Hotside.Studies;
using UnitsNet;

namespace Hotside.Tests.Studies;

/// <summary>
/// Circuits in a short form, a thing a line: <c>12 V, negative</c>; <c>E1 lamp 12V 21W 2=chassis case=engine</c>; <c>w1: G1.pos to F1.1</c>; wires without an id are <c>- a to b</c>.
/// </summary>
internal static class TestCircuit
{
    public static Circuit Read(string text)
    {
        CircuitBuilder? builder = null;
        int count = 0;
        foreach (string line in text.Split('\n').Select(l => l.Trim()).Where(l => l.Length > 0 && l[0] != '#'))
        {
            string[] words = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            if (builder is null) builder = Begin(words);
            else if (words[0] == "-") builder.Wire("n" + ++count, words[1], words[3], new() { Role = words[3] == "free" ? WireRole.Spare : WireRole.Wire });
            else if (words[0].EndsWith(':')) builder.Wire(words[0].TrimEnd(':'), words[1], words[3]);
            else builder.Part(words[0], TestKinds.Of(words[1]), DetailsOf(words[2..]));
        }
        return builder!.Build();
    }

    public static CircuitStudy Study(string text) => CircuitStudy.Of(Read(text));

    public static CircuitBuilder Begin(string[] words)
    {
        var ground = Enum.Parse<Ground>(words[2].TrimEnd(','), ignoreCase: true);
        return new(ElectricPotential.FromVolts(double.Parse(words[0], CultureInfo.InvariantCulture)), ground, words.Length > 3 ? words[^1] : null);
    }

    public static PartDetails DetailsOf(IEnumerable<string> words)
    {
        PartDetails details = new();
        foreach (string word in words)
        {
            if (word.StartsWith("case=", StringComparison.Ordinal)) details = details with { Case = word[5..] };
            else if (word.Split('=') is [var terminal, var node]) details = details with { Joints = details.Joints.Add(terminal, node) };
            else
            {
                string unit = word.TrimStart("0123456789.".ToCharArray());
                double value = double.Parse(word[..^unit.Length], CultureInfo.InvariantCulture);
                details = details with { Ratings = details.Ratings.Add(unit, new(value, unit switch { "V" => Unit.Volt, "A" => Unit.Ampere, "W" => Unit.Watt, _ => Unit.Ohm })) };
            }
        }
        return details;
    }
}
