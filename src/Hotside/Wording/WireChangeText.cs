using Hotside.Alterations;
using Hotside.Circuits;

namespace Hotside.Wording;

/// <summary>What becomes of a wire, as its line of the wire list says it. Ends are written in full, for who stands at the terminal.</summary>
internal static class WireChangeText
{
    public static string Of(string id, Alteration alteration)
    {
        Conductor? was = alteration.Before.FindConductor(id), now = alteration.After.FindConductor(id);
        var act = alteration.Changes.SelectMany(c => c.Acts).LastOrDefault(a => a is not Work && a.Items.Contains(id));
        return (act, was, now) switch
        {
            (TakeOut, _, _) or (_, not null, null) => "taken out",
            (Cut cut, not null, _) when cut.Items[0] == id => $"cut: from {FarEnd(cut, alteration)} to {alteration.After.TextOf(cut.First)}; the rest is {cut.Items[1]}",
            (Cut cut, null, _) => $"run new: the rest of {cut.Items[0]}",
            (_, null, _) => "run new",
            (Move { Ends.Length: > 1 }, _, not null) => $"used elsewhere: was {Ends(was!, alteration.Before)}{Renewed(was!, now)}",
            (Move move, _, not null) => $"moved{string.Concat(move.Ends.Select(e => Way(alteration.Before.TextOf(e.From), alteration.After.TextOf(e.To))))}{Renewed(was!, now)}",
            (Renew, _, not null) => "renewed" + Renewed(was!, now) + Turned(was!, now, alteration),
            _ => "left as is" + Turned(was!, now!, alteration),
        };
    }

    /// <summary>Size and colour with the unit: <c>14 AWG BK</c>; the wire's own name where neither is known.</summary>
    public static string Material(Wire wire) =>
        string.Join(' ', new[] { wire.Size?.ToString(), Colour(wire) }.Where(t => !string.IsNullOrEmpty(t))) is { Length: > 0 } text ? text : wire.Name ?? "not known";

    /// <summary>The colour's code; a braid has none.</summary>
    public static string Colour(Wire wire) => wire.IsBraid ? "braid" : wire.Colour?.ToString() ?? "";

    private static string FarEnd(Cut cut, Alteration alteration) =>
        alteration.After.FindConductor(cut.Items[1]) is { } rest ? alteration.After.TextOf(rest.From == cut.Second ? rest.To : rest.From) : "its end";

    private static string Way(string from, string to) => $" from {from} to {to}";

    private static string Ends(Conductor wire, Circuit circuit) => $"{circuit.TextOf(wire.From)} to {circuit.TextOf(wire.To)}";

    private static string Renewed(Conductor was, Conductor now) =>
        was.Wire.Label == now.Wire.Label ? "" : $"; was {Material(was.Wire)}, now {Material(now.Wire)}";

    // A part that is turned round or has other terminal names leaves its wires where they are, on a terminal with another name.
    private static string Turned(Conductor was, Conductor now, Alteration alteration)
    {
        string gone = Gone(was, alteration.Before, now, alteration.After);
        return gone.Length == 0 ? "" : $", terminal was {gone}";
    }

    private static string Gone(Conductor was, Circuit before, Conductor now, Circuit after)
    {
        string[] ends = [.. now.Ends.Select(after.TextOf)];
        return string.Join(" and ", was.Ends.Select(before.TextOf).Where(e => !ends.Contains(e)));
    }
}
