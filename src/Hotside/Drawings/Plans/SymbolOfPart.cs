using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Symbols;
using Hotside.Symbols.Texts;
using Hotside.Wording;

namespace Hotside.Drawings.Plans;

/// <summary>Chooses and draws the symbol of a part as it stands in a circuit.</summary>
/// <param name="Part">The part.</param>
/// <param name="Circuit">The circuit.</param>
/// <param name="Lettering">Lettering.</param>
internal sealed record SymbolOfPart(Part Part, Circuit Circuit, Lettering Lettering)
{
    /// <summary>Whether its leads are swapped.</summary>
    public bool IsReversed { get; init; }

    /// <summary>Modules between the axes of a relay's contact and coil, at least 6.</summary>
    public int Spread { get; init; }

    /// <summary>Whether a relay's coil stands left of its contact.</summary>
    public bool CoilAtLeft { get; init; }

    /// <summary>Modules between the ways of a connector, where its marks ask for less.</summary>
    public int LeastPitch { get; init; }

    /// <summary>The order of its terminals from left to right; <see langword="null"/> for that of its kind.</summary>
    public IReadOnlyList<string>? Order { get; init; }

    /// <summary>The terminals whose wires bear a label.</summary>
    public IReadOnlySet<string> Labelled { get; init; } = ImmutableHashSet<string>.Empty;

    /// <summary>Whether the list of changes names its terminals.</summary>
    public bool IsNamed { get; init; }

    /// <summary>Draws it.</summary>
    public Symbol Draw()
    {
        var terminals = Terminals().Select(t => t with { HasLabel = Labelled.Contains(t.Name) }).OrderBy(t => Order is null ? 0 : PlaceOf(t.Name, Order)).ToArray();
        var ofKind = SymbolOfKind.Options(Part.Kind, Lettering);
        var options = ofKind with
        {
            Spread = Math.Max(6, Spread),
            CoilAtLeft = CoilAtLeft,
            LeastPitch = LeastPitch,
            HotTerminal = Hot(),
            // What the list names is drawn; a source shows its poles anyway.
            TerminalMarks = (IsReversed || (IsNamed && EndWords.AreMarked(Part))) && Part.Kind.Elements.All(e => !e.IsSource),
            Inside = Part.Kind.Symbol == "reducer" ? Volts("own") : ofKind.Inside,
            InsideToo = Part.Kind.Symbol == "reducer" ? Volts("drop") : null,
        };
        return SymbolBook.Of(Part.Kind.Symbol, terminals, options);
    }

    private static int PlaceOf(string terminal, IReadOnlyList<string> order) =>
        Enumerable.Range(0, order.Count).Where(i => order[i] == terminal).DefaultIfEmpty(int.MaxValue).First();

    private IEnumerable<SymbolTerminal> Terminals()
    {
        foreach (var terminal in SymbolOfKind.Terminals(Part.Kind)) yield return terminal;
        bool shown = Part.Kind.HasCaseTerminal && Part.Kind.Terminals.All(t => !t.IsCase)
            && (Part.CaseOn is not null || Circuit.ConductorsAt(End.At(Part.Id, "case")).Any());
        if (shown) yield return new("case", SymbolSide.Bottom, "case") { Also = ["31"] };
    }

    // A battery stands with its hot pole up; a part whose leads are swapped shows its other end up.
    private string? Hot()
    {
        if (Circuit.Sources.FirstOrDefault(s => s.Part.Id == Part.Id) is { } source) return source.Feed.Terminal;
        return IsReversed && Part.Kind.Terminals.Length == 2 ? Part.Kind.Terminals[1].Name : null;
    }

    private string? Volts(string element) => Part.Rated(element, Unit.Volt) is { } volts ? Numbers.Plain(volts) + " V" : null;
}
