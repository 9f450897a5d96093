using Hotside.Circuits;
using Hotside.Kinds;
using Hotside.Symbols;

namespace Hotside.Tests.Kinds;

/// <summary>What every kind of the library states about itself.</summary>
public class KindFactTests
{
    public static TheoryData<string> Kinds => [.. Catalogue.Standard.Kinds.Select(k => k.Id)];

    // A source is a document (with a number in it), or it says that there is none, or that it is reasoned or remembered.
    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_kind_says_where_it_is_from(string id) => Assert.True(IsSource(Catalogue.Standard.Find(id)!.Source), id);

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_default_says_where_it_is_from(string id) =>
        Assert.All(Catalogue.Standard.Find(id)!.Ratings.Select(r => r.Default).OfType<RatingDefault>(), d => Assert.True(IsSource(d.Source), $"{id}: {d}"));

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_kind_has_a_class_a_summary_a_noun_and_known_words(string id)
    {
        var kind = Catalogue.Standard.Find(id)!;
        Assert.NotEqual("", PartClass.Of(kind).Letter);
        Assert.NotEqual("", kind.Summary);
        Assert.NotEqual("", kind.Noun);
        Assert.NotNull(Sensitivity.MeaningOfVoltage(kind.Voltage));
        Assert.NotNull(Sensitivity.MeaningOfPolarity(kind.Polarity));
        Assert.NotNull(Sensitivity.MeaningOfCurrent(kind.Current));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void No_mark_means_two_terminals_of_a_kind(string id)
    {
        string[] marks = [.. Catalogue.Standard.Find(id)!.Terminals.SelectMany(t => t.Aliases.Append(t.Name))];
        Assert.Equal(marks.Distinct(), marks);
    }

    // A node has nothing inside; what has something inside has it at every terminal.
    [Theory]
    [MemberData(nameof(Kinds))]
    public void No_terminal_of_a_kind_leads_nowhere(string id)
    {
        var kind = Catalogue.Standard.Find(id)!;
        if (kind.Elements.IsEmpty) Assert.True(kind.Terminals.Length <= 1);
        else Assert.Equal("", string.Join(", ", kind.Terminals.Select(t => t.Name).Except(kind.Elements.SelectMany(e => new[] { e.From, e.To }))));
    }

    // What has contacts minds the current through them; what is a fuse opens.
    [Theory]
    [MemberData(nameof(Kinds))]
    public void What_carries_current_through_contacts_or_fuses_minds_it(string id)
    {
        var kind = Catalogue.Standard.Find(id)!;
        if (kind.Elements.Any(e => e.Type is ElementType.Contact or ElementType.Fuse or ElementType.Breaker)) Assert.NotEqual("indifferent", kind.Current);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_kind_is_drawn_by_the_symbol_that_it_names(string id)
    {
        var kind = Catalogue.Standard.Find(id)!;
        if (kind.Ways is not null) kind = kind.WithWays(kind.Ways.Value.Least);
        if (kind.Symbol is not { } symbol || kind.TakesAnyTerminal) return;
        var terminals = Hotside.Drawings.Plans.SymbolOfKind.Terminals(kind).ToArray();
        Assert.Equal(symbol, SymbolBook.Of(symbol, terminals, Hotside.Drawings.Plans.SymbolOfKind.Options(kind, Hotside.Symbols.Texts.Lettering.Normal)).Name);
    }

    // Plug-in relay, 12 V, ISO 7588-1 pattern, one maker's data sheet: 85 ohm, 1.7 W. The three defaults of a coil agree by Ohm's law.
    [Fact]
    public void The_defaults_of_a_relay_coil_agree_with_each_other()
    {
        var ratings = Catalogue.Standard.Find("relay")!.Ratings.Where(r => r.Default is not null).ToDictionary(r => r.Name, r => r.Default!);
        Assert.Equal(new StatedValue(12, Unit.Volt), ratings["coil ohm"].At);
        Assert.Equal(12 / ratings["coil ohm"].Quantity.Value, ratings["coil A"].Quantity.Value, 0.005);
        Assert.Equal(12 * 12 / ratings["coil ohm"].Quantity.Value, ratings["coil W"].Quantity.Value, 0.05);
    }

    // 6 ohm at 13.5 V draws 2.25 A and turns 30.4 W into heat (Ohm's law).
    [Fact]
    public void The_load_resistor_burns_what_it_says()
    {
        var ohms = Catalogue.Standard.Find("load-resistor")!.Ratings.First(r => r.Name == "ohm").Default!;
        Assert.Equal(30.4, ohms.At!.Value * ohms.At.Value / ohms.Quantity.Value, 0.1);
    }

    private static bool IsSource(string text) =>
        text.Any(char.IsDigit) || new[] { "common practice, no source", "memory", "by reasoning", "manual" }.Any(w => text.Contains(w, StringComparison.Ordinal));
}
