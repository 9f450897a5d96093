using Hotside.Alterations;
using Hotside.Circuits;

namespace Hotside.Wording;

/// <summary>A change as a line of the list: what to do, in the imperative.</summary>
internal static class ChangeText
{
    public static string Of(Change change, Alteration alteration, Vocabulary words) =>
        string.Join("; ", change.Acts.Where(a => !a.Items.IsEmpty).Select(a => Of(a, alteration, words)));

    private static string Of(Act act, Alteration alteration, Vocabulary words) => act switch
    {
        TakeOut => "take out " + string.Join(", ", act.Items.Select(i => Taken(i, alteration, words))),
        Fit => $"fit {Ids(act)}: {PartOf(act, alteration.After, words)}",
        Replace replace => $"replace {Ids(act)}: {PartOf(act, alteration.After, words)}{Turned(replace, alteration)}",
        Reverse => $"swap the leads of {Ids(act)}",
        Remount => Mounted(act.Items[0], alteration),
        Run => Ran(act.Items[0], alteration.After),
        Move move => Moved(move, alteration),
        Renew => $"renew {string.Join(", ", act.Items.Select(i => Wire(alteration.After.FindConductor(i), alteration.After)))}",
        Cut cut => $"cut {Wire(alteration.Before.FindConductor(cut.Items[0]), alteration.Before)}; ends to {EndWords.Of(cut.First, alteration.After)} and {EndWords.Of(cut.Second, alteration.After)}",
        Work work => $"{work.Items[0]}: {work.Sentence}",
        _ => Ids(act),
    };

    private static string Ids(Act act) => string.Join(", ", act.Items);

    private static string Taken(string id, Alteration alteration, Vocabulary words) =>
        alteration.Before.FindConductor(id) is { } wire ? $"wire {Label(wire)}, {Ends(wire, alteration.Before)}"
        : alteration.Before.FindPart(id) is { } part ? $"{id}, {(part.Name ?? words.Noun(part.Kind)).ToLowerInvariant()}" : id;

    private static string PartOf(Act act, Circuit circuit, Vocabulary words)
    {
        if (circuit.FindPart(act.Items[0]) is not { } part) return "";
        return string.Join(", ", new[] { words.Noun(part.Kind) }.Concat(part.Ratings.Select(QuantityWords.Of)));
    }

    // A battery turned round is said by its pole, since "reversed" alone can be read both ways.
    private static string Turned(Replace replace, Alteration alteration)
    {
        if (!replace.Reversed) return "";
        return alteration.After.Sources.FirstOrDefault(s => s.Part.Id == replace.Items[0]) is { } source
            ? $"; {(source.PlusIsFeed ? "minus" : "plus")} pole to {(alteration.After.System.Return is { } node ? EndWords.Of(node, alteration.After) : "chassis")}" : "; leads swapped";
    }

    private static string Mounted(string id, Alteration alteration) =>
        alteration.After.FindPart(id)?.CaseOn is { } on ? $"mount {id} with its case on {EndWords.Of(on, alteration.After)}" : $"mount {id} insulated";

    private static string Ran(string id, Circuit circuit) =>
        circuit.FindConductor(id) is { } wire ? $"run {Label(wire)} from {EndWords.Of(wire.From, circuit)} to {EndWords.Of(wire.To, circuit)}" : "run " + id;

    private static string Moved(Move move, Alteration alteration)
    {
        var wire = alteration.Before.FindConductor(move.Items[0]);
        string ends = string.Join(", ", move.Ends.Select(e => $"from {EndWords.Of(e.From, alteration.Before)} to {EndWords.Of(e.To, alteration.After)}"));
        string renewed = move.IsRenewed && alteration.After.FindConductor(move.Items[0]) is { } now ? $", renewed as {Label(now)}" : "";
        return $"move {(wire is null ? move.Items[0] : Label(wire))} {ends}{renewed}";
    }

    private static string Wire(Conductor? wire, Circuit circuit) => wire is null ? "" : $"{Label(wire)}, {Ends(wire, circuit)}";

    private static string Ends(Conductor wire, Circuit circuit) => $"{EndWords.Of(wire.From, circuit)} to {EndWords.Of(wire.To, circuit)}";

    // A wire of which nothing is known goes by its id.
    private static string Label(Conductor wire) => wire.Wire.Label is { Length: > 0 } label ? label : wire.Wire.Name ?? wire.Id;
}
