using Hotside.Symbols;
using static Hotside.Tests.Symbols.Kinds;

namespace Hotside.Tests.Symbols;

public sealed class RelaySymbolTests
{
    [Theory]
    [InlineData(6)]
    [InlineData(13)]
    public void A_relay_of_another_pattern_stands_in_the_old_ones_place(int spread)
    {
        SymbolOptions options = new() { Spread = spread };
        Symbol four = SymbolBook.Of("relay", FourTerminals, options), inside = SymbolBook.Of("relay", FedInside, options);
        Symbol changeOver = SymbolBook.Of("relay-change-over", TerminalsOf("relay-change-over"), options);
        Symbol toCase = SymbolBook.Of("relay-coil-to-case", [T("30", SymbolSide.Top), T("87", SymbolSide.Bottom), T("86", SymbolSide.Top), T("case", SymbolSide.Bottom)], options);
        Assert.All((Symbol[])[inside, changeOver, toCase], s => Assert.Equal((four.Width, four.Height), (s.Width, s.Height)));
        Assert.Equal(Place(four, "30"), Place(inside, "BAT"));
        Assert.Equal(Place(four, "87"), Place(inside, "MOT"));
        Assert.Equal(Place(four, "85"), Place(inside, "S"));
        Assert.All((string[])["30", "87", "86", "85"], t => Assert.Equal(Place(four, t), Place(changeOver, t)));
        Assert.Equal(Place(four, "85"), Place(toCase, "case"));
        Assert.Equal(Place(four, "86"), Place(toCase, "86"));
    }

    [Fact]
    public void No_mark_of_the_trade_is_shortened_in_large_lettering()
    {
        foreach (string name in (string[])["relay", "relay-change-over", "relay-coil-to-case", "alternator", "cut-out", "solenoid-two-windings"])
        {
            Symbol symbol = SymbolBook.Of(name, TerminalsOf(name), new() { Lettering = Hotside.Symbols.Texts.Lettering.Large });
            Assert.DoesNotContain(symbol.Shapes.OfType<Hotside.Symbols.Shapes.TextShape>(), t => t.Text.EndsWith('…'));
        }
    }

    [Fact]
    public void The_hot_end_of_a_coil_is_on_top()
    {
        Symbol turned = SymbolBook.Of("relay", FourTerminals, new() { HotTerminal = "85" });
        Assert.Equal(0, turned.Pin("85").Y);
        Assert.Equal(turned.Height, turned.Pin("86").Y);
    }

    [Fact]
    public void A_mirrored_relay_has_its_coil_at_the_left()
    {
        Symbol relay = SymbolBook.Of("relay", FourTerminals).Mirrored();
        Assert.True(relay.Pin("86").X < relay.Pin("30").X);
    }

    private static (int, int) Place(Symbol symbol, string terminal) => (symbol.Pin(terminal).X, symbol.Pin(terminal).Y);
}
