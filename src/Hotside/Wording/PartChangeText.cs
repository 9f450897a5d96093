using Hotside.Alterations;
using Hotside.Circuits;

namespace Hotside.Wording;

/// <summary>Parts that are fitted or replaced: which, what they are called, their ratings, what they are bolted to and where.</summary>
internal static class PartChangeText
{
    // So many parts are named one by one; of more, what they have in common is said.
    private const int MostNamed = 2;

    public static string Fitted(string[] ids, Alteration alteration, Vocabulary words)
    {
        string what = Specification(ids[0], alteration.After, words, isNounSaid: IsNounSaid(ids, alteration.After, words));
        return $"fit {Called(ids, alteration.After, words)}{(what.Length > 0 ? (ids.Length > 1 ? ": each " : ": ") + what : "")}";
    }

    public static string Replaced(string[] ids, bool isReversed, Alteration alteration, Vocabulary words)
    {
        Part? was = alteration.Before.FindPart(ids[0]), now = alteration.After.FindPart(ids[0]);
        bool isSame = was is not null && now is not null && words.Noun(was.Kind) == words.Noun(now.Kind);
        string what = Ratings(now);
        if (now is not null && !isSame) what = string.Join(", ", new[] { words.Noun(now.Kind), what }.Where(t => t.Length > 0));
        string map = TerminalMapText.Of(ids, alteration);
        return $"replace {Called(ids, alteration.Before, words)}{(what.Length > 0 ? (ids.Length > 1 ? ": each now " : ": now ") + what : "")}{Turned(ids[0], isReversed, alteration)}{(map.Length > 0 ? $"; its wires{map}" : "")}";
    }

    /// <summary>What a new part is: noun, ratings, bolted joints, place.</summary>
    public static string Specification(string id, Circuit circuit, Vocabulary words, bool isNounSaid = false)
    {
        if (circuit.FindPart(id) is not { } part) return "";
        string text = string.Join(", ", new[] { isNounSaid ? "" : words.Noun(part.Kind), Ratings(part) }.Concat(Bolted(part, circuit)).Where(t => t.Length > 0));
        string place = part.Place is { Length: > 0 } at ? "at " + at : "";
        return text.Length > 0 && place.Length > 0 ? $"{text}; {place}" : text + place;
    }

    /// <summary>Parts by id with what they are called: <c>K6 (headlamp relay)</c>, <c>F1, F2, F3 (fuses)</c>.</summary>
    public static string Called(string[] ids, Circuit circuit, Vocabulary words)
    {
        string[] names = [.. ids.Select(i => circuit.FindPart(i) is { } part ? Called(part, words) : "")];
        if (names.Distinct().Count() > 1 && ids.Length <= MostNamed)
            return PartWords.And([.. ids.Zip(names, (id, name) => name.Length > 0 ? $"{id} ({name})" : id)]);
        string common = names.Distinct().Count() == 1 ? names[0] : Common(ids, circuit, words);
        string called = ids.Length > 1 && common.Length > 0 ? Vocabulary.Plural(common) : common;
        return string.Join(", ", ids) + (called.Length > 0 ? $" ({called})" : "");
    }

    private static string Common(string[] ids, Circuit circuit, Vocabulary words)
    {
        string[] nouns = [.. ids.Select(circuit.FindPart).OfType<Part>().Select(p => words.Noun(p.Kind)).Distinct()];
        return nouns.Length == 1 ? nouns[0] : "";
    }

    // The owner's name, unless what its kind is called says as much and more; where the name does not say what it is, both: fuse "Bilge pump" is no pump.
    private static string Called(Part part, Vocabulary words)
    {
        string noun = words.Noun(part.Kind);
        if (part.Name is not { } name || SaysAllOf(noun, name)) return noun;
        return noun.Split(' ').Any(w => w.Length > 3 && name.Contains(w, StringComparison.OrdinalIgnoreCase)) ? Vocabulary.Small(name) : $"{noun} \"{name}\"";
    }

    private static bool IsNounSaid(string[] ids, Circuit circuit, Vocabulary words) =>
        (ids.Length > MostNamed && ids.Select(i => circuit.FindPart(i)?.Name).Distinct().Count() > 1)
        || ids.Select(circuit.FindPart).OfType<Part>().All(p => SaysAllOf(Called(p, words), words.Noun(p.Kind)));

    private static bool SaysAllOf(string text, string words) =>
        words.Split(' ').All(w => text.Contains(w, StringComparison.OrdinalIgnoreCase));

    private static string Ratings(Part? part) => part is null ? "" : string.Join(", ", QuantityWords.Of(part.Ratings.Where(r => r.Name != "ways")));

    private static IEnumerable<string> Bolted(Part part, Circuit circuit)
    {
        foreach (var joint in part.Joints)
            yield return $"{(part.Kind.Terminals.Length == 1 ? "on" : EndWords.AreMarked(part) ? joint.Terminal + " on" : "one end on")} {On(joint.On, circuit)}";
        if (part.Kind.HasCaseTerminal && part.CaseOn is null && part.Kind.DefaultMount.On is not null) yield return "case insulated";
        if (part.CaseOn is { } on && part.CaseOn != part.Kind.DefaultMount.On) yield return "case on " + EndWords.Of(on, circuit);
    }

    // What is bolted to one of two studs is bolted to that one, whether they bear marks or not.
    private static string On(End end, Circuit circuit) =>
        end.Part is { } id && circuit.FindPart(id) is { Kind.TakesAnyTerminal: false } part && !EndWords.AreMarked(part) ? circuit.TextOf(end) : EndWords.Of(end, circuit);

    // A battery turned round is said by its pole, since "reversed" alone can be read both ways.
    private static string Turned(string id, bool isReversed, Alteration alteration)
    {
        if (!isReversed) return "";
        return alteration.After.Sources.FirstOrDefault(s => s.Part.Id == id) is { } source
            ? $"; {(source.PlusIsFeed ? "minus" : "plus")} pole to {(alteration.After.System.Return is { } node ? EndWords.Of(node, alteration.After) : "chassis")}" : "; swap its leads";
    }
}
