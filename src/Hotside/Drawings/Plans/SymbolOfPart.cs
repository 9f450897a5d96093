using Hotside.Circuits;
using Hotside.Symbols;
using Hotside.Symbols.Texts;
using Hotside.Wording;

namespace Hotside.Drawings.Plans;

/// <summary>Chooses and draws the symbol of a part as it stands in a circuit.</summary>
internal static class SymbolOfPart
{
    public static Symbol Of(Part part, Circuit circuit, bool reversed, Lettering lettering, int spread, bool coilAtLeft = false, int leastPitch = 0, IReadOnlyList<string>? order = null, IReadOnlySet<string>? labelled = null, bool isNamed = false)
    {
        var terminals = Terminals(part, circuit).Select(t => t with { HasLabel = labelled?.Contains(t.Name) == true }).OrderBy(t => order is null ? 0 : PlaceOf(t.Name, order)).ToArray();
        var ofKind = SymbolOfKind.Options(part.Kind, lettering);
        var options = ofKind with
        {
            Spread = Math.Max(6, spread),
            CoilAtLeft = coilAtLeft,
            LeastPitch = leastPitch,
            HotTerminal = Hot(part, circuit, reversed),
            // What the list names is drawn; a source shows its poles anyway.
            TerminalMarks = (reversed || (isNamed && EndWords.AreMarked(part))) && part.Kind.Elements.All(e => !e.IsSource),
            Inside = part.Kind.Symbol == "reducer" ? Volts(part, "own") : ofKind.Inside,
            InsideToo = part.Kind.Symbol == "reducer" ? Volts(part, "drop") : null,
        };
        return SymbolBook.Of(part.Kind.Symbol, terminals, options);
    }

    private static int PlaceOf(string terminal, IReadOnlyList<string> order) =>
        Enumerable.Range(0, order.Count).Where(i => order[i] == terminal).DefaultIfEmpty(int.MaxValue).First();

    private static IEnumerable<SymbolTerminal> Terminals(Part part, Circuit circuit)
    {
        foreach (var terminal in SymbolOfKind.Terminals(part.Kind)) yield return terminal;
        bool shown = part.Kind.HasCaseTerminal && part.Kind.Terminals.All(t => !t.IsCase)
            && (part.CaseOn is not null || circuit.ConductorsAt(End.At(part.Id, "case")).Any());
        if (shown) yield return new("case", SymbolSide.Bottom, "case") { Also = ["31"] };
    }

    // A battery stands with its hot pole up; a part whose leads are swapped shows its other end up.
    private static string? Hot(Part part, Circuit circuit, bool reversed)
    {
        if (circuit.Sources.FirstOrDefault(s => s.Part.Id == part.Id) is { } source) return source.Feed.Terminal;
        return reversed && part.Kind.Terminals.Length == 2 ? part.Kind.Terminals[1].Name : null;
    }

    private static string? Volts(Part part, string element) => part.Rated(element, Unit.Volt) is { } volts ? Numbers.Plain(volts) + " V" : null;
}
