using Hotside.Circuits;
using Hotside.Symbols;
using Hotside.Symbols.Texts;

namespace Hotside.Drawings.Plans;

/// <summary>Chooses and draws the symbol of a part as it stands in a circuit.</summary>
internal static class SymbolOfPart
{
    public static Symbol Of(Part part, Circuit circuit, bool reversed, Lettering lettering, int spread)
    {
        var terminals = Terminals(part, circuit).ToArray();
        var options = new SymbolOptions
        {
            Lettering = lettering,
            Spread = Math.Max(6, spread),
            HotTerminal = Hot(part, circuit, reversed),
            TerminalMarks = reversed && part.Kind.Elements.All(e => !e.IsSource),
            Contacts = [.. Contacts(part)],
            Inside = part.Kind.TakesAnyTerminal ? part.Title : part.Kind.Symbol == "reducer" ? Volts(part, "own") : part.Kind.Symbol is null ? part.Kind.Letter : null,
            InsideToo = part.Kind.Symbol == "reducer" ? Volts(part, "drop") : null,
        };
        return SymbolBook.Of(part.Kind.Symbol, terminals, options);
    }

    private static IEnumerable<SymbolTerminal> Terminals(Part part, Circuit circuit)
    {
        foreach (var terminal in part.Kind.Terminals)
            yield return new(terminal.Name, SideOf(terminal.Side), terminal.Name) { Also = [.. terminal.Aliases] };
        bool shown = part.Kind.HasCaseTerminal && part.Kind.Terminals.All(t => !t.IsCase)
            && (part.CaseOn is not null || circuit.ConductorsAt(End.At(part.Id, "case")).Any());
        if (shown) yield return new("case", SymbolSide.Bottom, "case") { Also = ["31"] };
    }

    private static SymbolSide SideOf(TerminalSide side) => side switch
    {
        TerminalSide.Top => SymbolSide.Top,
        TerminalSide.Bottom => SymbolSide.Bottom,
        TerminalSide.Left => SymbolSide.Left,
        TerminalSide.Right => SymbolSide.Right,
        _ => SymbolSide.Any,
    };

    // A battery stands with its hot pole up; a part whose leads are swapped shows its other end up.
    private static string? Hot(Part part, Circuit circuit, bool reversed)
    {
        if (circuit.Sources.FirstOrDefault(s => s.Part.Id == part.Id) is { } source) return source.Feed.Terminal;
        return reversed && part.Kind.Terminals.Length == 2 ? part.Kind.Terminals[1].Name : null;
    }

    private static IEnumerable<SymbolContact> Contacts(Part part) =>
        from element in part.Kind.Elements
        where element.Type == ElementType.Contact && element.When is not null
        let positions = string.Join("·", element.When!.Tests.SelectMany(t => t.Positions).Take(3).Select(p => p.Length > 6 ? p[..5] + "." : p))
        select new SymbolContact(element.From, element.To, positions);

    private static string? Volts(Part part, string element) => part.Rated(element, Unit.Volt) is { } volts ? Numbers.Plain(volts) + " V" : null;
}
