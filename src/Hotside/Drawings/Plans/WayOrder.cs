using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Symbols;
using Hotside.Symbols.Texts;

namespace Hotside.Drawings.Plans;

/// <summary>
/// Gives a connector and its replacement one pitch, and each wire that stays on both of them one column: first the ways that such wires lead to, in the order of the
/// old connector, then the others.
/// </summary>
internal static class WayOrder
{
    /// <summary>The order of the terminals of a part as a circuit shows it, and the least distance of its ways; none where nothing else than its kind decides.</summary>
    public static (IReadOnlyList<string>? Order, int Pitch) Of(string id, Alteration alteration, bool isBefore, Lettering lettering)
    {
        if (alteration.Before.FindPart(id) is not { } was || alteration.After.FindPart(id) is not { } now || was.Kind.Id == now.Kind.Id) return (null, 0);
        if (was.Kind.Symbol != "connector" || now.Kind.Symbol != "connector") return (null, 0);
        int pitch = Math.Max(Pitch(was, lettering), Pitch(now, lettering));
        if (pitch == 0) return (null, 0);
        var pairs = Ways(was).Select(old => (Old: old, New: Ways(now).FirstOrDefault(w => Follows(old, w, id, alteration)) ?? [])).ToArray();
        var kept = pairs.Where(p => p.New.Length > 0).ToArray();
        IEnumerable<string[]> ways = isBefore
            ? kept.Select(p => p.Old).Concat(pairs.Where(p => p.New.Length == 0).Select(p => p.Old))
            : kept.Select(p => p.New).Concat(Ways(now).Where(w => kept.All(p => p.New[0] != w[0])));
        return ([.. ways.SelectMany(w => w)], pitch);
    }

    // A way is its upper and its lower terminal.
    private static string[][] Ways(Part part)
    {
        string[] upper = [.. part.Kind.Terminals.Where(t => t.Side == TerminalSide.Top).Select(t => t.Name)], lower = [.. part.Kind.Terminals.Where(t => t.Side != TerminalSide.Top).Select(t => t.Name)];
        return [.. upper.Zip(lower, (a, b) => new[] { a, b })];
    }

    private static bool Follows(string[] old, string[] way, string id, Alteration alteration) => alteration.Before.Conductors.Any(c =>
        c.Ends.Any(e => e.Part == id && old.Contains(e.Terminal) && alteration.After.FindConductor(c.Id) is { } after && after.Ends.Any(n => n.Part == id && Array.IndexOf(way, n.Terminal) == Array.IndexOf(old, e.Terminal) && way.Contains(n.Terminal))));

    private static int Pitch(Part part, Lettering lettering)
    {
        var columns = SymbolBook.Of("connector", [.. SymbolOfKind.Terminals(part.Kind)], SymbolOfKind.Options(part.Kind, lettering)).Columns.Order().ToArray();
        return columns.Length < 2 ? 0 : columns[1] - columns[0];
    }
}
