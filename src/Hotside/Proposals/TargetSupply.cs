using System.Text.RegularExpressions;
using Hotside.Circuits;

namespace Hotside.Proposals;

/// <summary>The supply that is asked for, beside the present one.</summary>
/// <param name="System">The system line after.</param>
/// <param name="Factor">By how much the volts rise: 2 from 6 V to 12 V.</param>
/// <param name="Turns">Whether the other pole becomes the hot one.</param>
internal sealed partial record TargetSupply(ElectricalSystem System, double Factor, bool Turns)
{
    private static readonly string[] Grounds = ["positive", "negative", "isolated"];

    private const double MostVolts = 60;

    /// <summary>Whether anything changes.</summary>
    public bool IsSame => Factor == 1 && !Turns;

    /// <summary>The present supply.</summary>
    public static TargetSupply Same(Circuit before) => new(before.System, 1, false);

    /// <summary>Reads what <c>--to</c> says.</summary>
    /// <param name="text">Such as <c>12 V negative</c>, <c>12 V</c>, <c>negative ground</c>.</param>
    /// <param name="before">The circuit as it is.</param>
    /// <exception cref="ArgumentException">A word is none; the message names the nearest.</exception>
    public static TargetSupply Parse(string text, Circuit before)
    {
        double? volts = null;
        string? ground = null;
        foreach (string word in Words().Matches(text.ToLowerInvariant()).Select(m => m.Value))
        {
            if (word is "v" or "volt" or "volts" or "ground" or "grounded" or "earth" or "return") continue;
            if (Numbers.TryRead(word, out double figure)) volts = volts is null ? figure : throw Wrong(text, "it has two figures");
            else if (Grounds.Contains(word) || word is "neg" or "pos") ground = ground is null ? Grounds.First(g => g.StartsWith(word, StringComparison.Ordinal)) : throw Wrong(text, "it has two grounds");
            else throw Wrong(text, $"\"{word}\" is no word of a supply{NearestName.Suggestion(word, Grounds).TrimEnd('.')}");
        }
        if (volts is null && ground is null) throw Wrong(text, "it says neither volts nor which pole is grounded");
        if (volts is { } given && given is not (> 0 and <= MostVolts)) throw Wrong(text, $"{Numbers.Plain(given)} V is no supply of a vehicle");
        return Of(before, volts, ground, text);
    }

    private static TargetSupply Of(Circuit before, double? volts, string? ground, string text)
    {
        double highest = before.System.Volts.Max(), factor = (volts ?? highest) / highest;
        if (factor < 1) throw Wrong(text, $"the vehicle has {Numbers.Plain(highest)} V, and lower volts are not proposed");
        bool wasIsolated = before.System.Return is not null;
        if (ground == "isolated" && !wasIsolated) throw Wrong(text, "nothing says which node would be the return; draw that by hand");
        // A boat keeps its return; which pole stands on it is what the word can say.
        bool? plusWas = before.Sources.FirstOrDefault(s => s.Element.When is null)?.PlusIsFeed;
        bool turns = ground is not (null or "isolated") && (plusWas is { } plus ? plus != (ground == "negative") : !wasIsolated && before.System.Ground != GroundOf(ground));
        var system = before.System with { Volts = [.. before.System.Volts.Select(v => v * factor)], Ground = wasIsolated || ground is null ? before.System.Ground : GroundOf(ground) };
        return new(system, factor, turns);
    }

    [GeneratedRegex(@"[\d.]+|[^\W\d]+")]
    private static partial Regex Words();

    private static Ground GroundOf(string word) => Enum.Parse<Ground>(word, ignoreCase: true);

    private static ArgumentException Wrong(string text, string why) =>
        new($"\"{text}\" is no supply: {why}{(why.EndsWith('?') ? "" : ".")} Write it as in \"12 V negative\".", nameof(text));
}
