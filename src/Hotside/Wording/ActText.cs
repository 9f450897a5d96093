using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.Circuits;

namespace Hotside.Wording;

/// <summary>Acts in the imperative, at length and short.</summary>
internal sealed class ActText(Alteration alteration, Words words)
{
    private readonly Circuit before = alteration.Before;
    private readonly Circuit after = alteration.After;

    /// <summary>An act with all that the person who does it needs to know.</summary>
    public string Full(Act act) => act switch
    {
        TakeOut => TakeOutOf(act),
        Fit => $"fit {Nouns(act.Items, after)}, {Listing.Commas([PartsName(act), .. PartNaming.Ratings(First(act)), .. JointsOf(First(act))])}".TrimEnd(',', ' '),
        Replace replace => $"replace {Listing.And(act.Items)}: {Listing.Commas([PartNaming.Noun(First(act).Kind, words), .. PartNaming.Ratings(First(act))])}"
            + Swapped(replace.Reversed, act) + Carried(replace),
        Reverse => $"swap the leads of {Nouns(act.Items, after)}" + PoleOf(act),
        Remount => First(act).CaseOn is { } on ? $"put the case of {act.Items[0]} on {after.TextOf(on)}"
            : $"insulate the case of {act.Items[0]}",
        Run => Listing.Commas($"run {Wire(act).Id} {RunWay(Wire(act))}", Material(Wire(act).Wire)),
        Move move => MoveOf(move),
        Renew => $"renew {Listing.And(act.Items)} as {NewMaterial(Wire(act).Wire)}",
        Cut cut => $"cut {Labelled(cut.Items[0], before)}: it now ends on {after.TextOf(cut.First)}; the rest is {cut.Items[1]}, "
            + WireNaming.Way(after.FindConductor(cut.Items[1])!, after),
        Work work => $"{work.Items[0]}: {work.Sentence}",
        _ => throw new ArgumentOutOfRangeException(nameof(act), act.GetType().Name, "There is no such act."),
    };

    /// <summary>An act in as few words as still say what is done to what.</summary>
    public string Short(Act act) => act switch
    {
        TakeOut => $"take out {Listing.And(act.Items)}",
        Fit => Listing.Commas($"fit {Nouns(act.Items, after)}", PartNaming.Ratings(First(act)).FirstOrDefault()),
        Replace replace => Listing.Commas($"replace {Listing.And(act.Items)}: {PartNaming.Noun(First(act).Kind, words)}",
            PartNaming.Ratings(First(act)).FirstOrDefault())
            + (replace.Reversed ? ", leads swapped" : ""),
        Reverse => $"swap the leads of {act.Items[0]}",
        Run => $"run {Wire(act).Id} {RunWay(Wire(act))}",
        Move move => $"move {move.Items[0]} to {Listing.And([.. move.Ends.Select(e => after.TextOf(e.To))])}",
        Cut cut => $"cut {cut.Items[0]} for {cut.First.Part ?? cut.First.ToString()}",
        _ => Full(act),
    };

    private Part First(Act act) => after.FindPart(act.Items[0])!;

    private Conductor Wire(Act act) => after.FindConductor(act.Items[0])!;

    // Parts of one kind share its noun: "fuses F1 and F2".
    private string Nouns(ImmutableArray<string> ids, Circuit circuit)
    {
        string noun = PartNaming.Noun(circuit.FindPart(ids[0])!.Kind, words);
        return $"{(ids.Length == 1 ? noun : Listing.Plural(noun))} {Listing.And(ids)}";
    }

    private string? PartsName(Act act) =>
        First(act).Name is { } name && !string.Equals(name, PartNaming.Noun(First(act).Kind, words), StringComparison.OrdinalIgnoreCase)
            ? name : null;

    private IEnumerable<string> JointsOf(Part part) => part.Joints.Select(j => $"{j.Terminal} on {after.TextOf(j.On)}");

    private string TakeOutOf(Act act)
    {
        string[] parts = [.. act.Items.Select(before.FindPart).OfType<Part>().Select(p => $"{PartNaming.Noun(p.Kind, words)} {p.Id}")];
        string[] wires = [.. act.Items.Where(i => before.FindConductor(i) is not null)];
        if (wires.Length == 1 && parts.Length == 0)
        {
            var wire = before.FindConductor(wires[0])!;
            string name = WireNaming.Of(wire, before, words);
            return "take out " + Listing.Commas(name == $"wire {wire.Id}" ? $"{name} {WireNaming.Way(wire, before)}" : name,
                wire.Wire.Label);
        }
        string[] all = wires.Length == 0 ? parts : [.. parts, $"{(wires.Length == 1 ? "wire" : "wires")} {Listing.And(wires)}"];
        return "take out " + (wires.Length > 1 && parts.Length > 0 ? string.Join(", ", parts) + " and " + all[^1] : Listing.And(all));
    }

    private string Swapped(bool isReversed, Act act) => isReversed ? "; leads swapped" + PoleOf(act) : "";

    // The post that now stands on the chassis, for a source that gives by itself.
    private string PoleOf(Act act)
    {
        var source = after.Sources.FirstOrDefault(s => s.Part.Id == act.Items[0] && s.Element.When is null);
        return source is null || after.System.Return is not null ? "" : $", {(source.PlusIsFeed ? "minus" : "plus")} pole to chassis";
    }

    // Which terminals the old part's wires go to, where the names differ.
    private string Carried(Replace replace)
    {
        if (replace.Reversed || replace.Items.Length > 1) return "";
        string id = replace.Items[0];
        var pairs = from old in before.Conductors
                    let now = after.FindConductor(old.Id)
                    where now is not null && alteration.StateOfConductor(old.Id) is ConductorState.LeftAsIs or ConductorState.Renewed
                    from ends in new[] { (old.From, now.From), (old.To, now.To) }
                    where ends.Item1.Part == id && ends.Item1.Terminal != ends.Item2.Terminal
                    select $"{ends.Item1.Terminal} to {ends.Item2.Terminal}";
        string[] all = [.. pairs.Distinct(StringComparer.Ordinal)];
        return all.Length == 0 ? "" : "; wires from " + Listing.And(all);
    }

    private string MoveOf(Move move)
    {
        string ends = Listing.And([.. move.Ends.Select(e => $"from {before.TextOf(e.From)} to {after.TextOf(e.To)}")]);
        return $"move {Labelled(move.Items[0], before)}, {ends}" + (move.IsRenewed ? $"; renew it as {NewMaterial(Wire(move).Wire)}" : "");
    }

    private static string Labelled(string id, Circuit circuit) => Listing.Commas(id, circuit.FindConductor(id)!.Wire.Label);

    private string RunWay(Conductor wire) =>
        wire.To.IsFree ? $"from {after.TextOf(wire.From)}, other end free" : WireNaming.Way(wire, after);

    private static string Material(Wire wire) => Listing.Commas(
        wire.Label, wire.LengthInMetres is { } metres ? AmountText.Metres(metres) : null, wire.Role == WireRole.Spare ? "spare" : null,
        wire.Name);

    private static string NewMaterial(Wire wire) =>
        wire.Label.Length > 0 ? Listing.Commas(wire.Label, wire.Insulation) : Listing.Commas("new", Material(wire), wire.Insulation);
}
