using Hotside.Symbols;
using Hotside.Symbols.Shapes;
using static Hotside.Symbols.SymbolSide;
using static Hotside.Tests.Symbols.Kinds;

namespace Hotside.Tests.Symbols;

public sealed class SwitchBoxSymbolTests
{
    [Fact]
    public void A_column_switch_has_a_column_for_each_contact_and_prints_what_closes_it()
    {
        SymbolTerminal[] terminals = [T("49a", Top), T("54", Top), T("L", Bottom), T("R", Bottom), T("L54", Bottom), T("R54", Bottom), T("H", Left)];
        SymbolContact[] contacts =
        [
            new("49a", "L", "left"), new("49a", "L54", "left"), new("54", "L54", "centre·right"), new("49a", "R", "right"),
            new("49a", "R54", "right"), new("54", "R54", "centre·left"), new("H", "case", "pressed"),
        ];
        Symbol symbol = SymbolBook.Of("switch-column", terminals, new() { Contacts = [.. contacts] });
        Assert.Equal("switch-column", symbol.Name);
        Assert.Equal(7, symbol.Pins.Length);
        Assert.Equal(7, symbol.Shapes.Count(s => s.Pen is { Rank: StrokeRank.Heavy } && s is PolylineShape { Points: [var a, var b] } && a.X != b.X && a.Y != b.Y));
        Assert.Equal(contacts.Select(c => c.ClosedIn).Order(), symbol.Shapes.OfType<TextShape>().Select(t => t.Text).Intersect(contacts.Select(c => c.ClosedIn)).SelectMany(t => contacts.Where(c => c.ClosedIn == t).Select(c => c.ClosedIn)).Order());
    }

    [Fact]
    public void Two_feeds_to_one_end_are_drawn_as_two_contacts()
    {
        Symbol selector = SymbolBook.Of("switch-knob", [T("1", Top), T("2", Top), T("C", Bottom)], new() { Contacts = [new("1", "C", "one·both"), new("2", "C", "two·both")] });
        Assert.Equal("switch-knob", selector.Name);
        Assert.NotEqual(selector.Pin("1").X, selector.Pin("2").X);
    }

    [Fact]
    public void A_contact_to_nowhere_known_falls_back_to_a_box() =>
        Assert.Equal("box", SymbolBook.Of("switch-knob", [T("1", Top), T("2", Top), T("C", Bottom)], new() { Contacts = [new("1", "C"), new("x", "C")] }).Name);

    [Fact]
    public void With_two_terminals_it_is_a_single_contact() => Assert.Equal(4, SymbolBook.Of("switch-key", [T("1", Top), T("2", Bottom)]).Height);
}
