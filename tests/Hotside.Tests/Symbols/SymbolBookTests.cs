using Hotside.Symbols;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;
using static Hotside.Symbols.SymbolSide;
using static Hotside.Tests.Symbols.Kinds;

namespace Hotside.Tests.Symbols;

public sealed class SymbolBookTests
{
    public static TheoryData<string> Names => [.. SymbolBook.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_symbol_draws_itself_inside_its_box_with_its_pins_on_the_edge(string name)
    {
        foreach (Lettering lettering in (Lettering[])[Lettering.Normal, Lettering.Large])
        {
            Symbol symbol = SymbolBook.Of(name, TerminalsOf(name), new() { Lettering = lettering, Inside = "12 V", InsideToo = "6 V" });
            Assert.Equal(name, symbol.Name);
            Check(symbol, TerminalsOf(name));
            Check(symbol.Mirrored(), TerminalsOf(name));
            Check(symbol.TurnedOver(), TerminalsOf(name));
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_wire_that_ends_on_a_pin_meets_a_line_or_a_ring(string name)
    {
        Symbol symbol = SymbolBook.Of(name, TerminalsOf(name));
        foreach (SymbolPin pin in symbol.Pins)
        {
            Point at = new(pin.X * 10, pin.Y * 10);
            Assert.True(symbol.Shapes.Any(s => Touches(s, at)), $"{name}: nothing at {pin}");
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_texts_of_a_symbol_do_not_overlap(string name)
    {
        Symbol symbol = SymbolBook.Of(name, TerminalsOf(name), new() { Inside = "12 V", InsideToo = "6 V" });
        Hotside.Tests.Drawings.Texts.LieApart(symbol.Shapes, 0.3);
    }

    [Fact]
    public void Every_terminal_has_its_pin_whatever_the_symbol_was_made_for()
    {
        SymbolTerminal[] many = [.. Enumerable.Range(1, 9).Select(i => T("t" + i, (SymbolSide)(i % 5)))];
        foreach (string? name in (string?[])[null, "no such symbol", .. SymbolBook.Names])
        {
            for (int count = 0; count <= many.Length; count++)
                Check(SymbolBook.Of(name, many[..count]), many[..count]);
        }
    }

    // One on an isolated system: its return and its case are two things.
    [Fact]
    public void An_insulated_alternator_shows_its_return_and_its_case()
    {
        SymbolTerminal[] terminals = [T("B+", Top), T("B-", Bottom), T("D+", Top), T("case", Bottom)];
        Symbol symbol = SymbolBook.Of("alternator", terminals);
        Assert.Equal("alternator", symbol.Name);
        Check(symbol, terminals);
        Assert.Equal(symbol.Pin("B+").X, symbol.Pin("B-").X);
        Assert.NotEqual(symbol.Pin("B-").X, symbol.Pin("case").X);
        Hotside.Tests.Drawings.Texts.LieApart(symbol.Shapes, 0.3);
    }

    [Fact]
    public void A_box_is_at_least_four_modules_wide_and_high_and_grows_with_its_marks()
    {
        Symbol small = SymbolBook.Of("mystery", [T("1", Top)]), wide = SymbolBook.Of("mystery", [T("BATTERY", Top), T("STARTER", Top), T("GROUND", Left)]);
        Assert.True(small is { Width: 4, Height: 4 });
        Assert.True(wide.Width > 10);
    }

    [Theory]
    [InlineData("<b>&amp;")]
    [InlineData("Scheinwerferreinigungsanlage")]
    [InlineData("👩‍🔧\u202E\0")]
    public void A_mark_of_any_kind_leaves_a_symbol_whole(string mark)
    {
        string longMark = string.Concat(Enumerable.Repeat(mark, 400));
        foreach (string name in SymbolBook.Names)
        {
            SymbolTerminal[] terminals = [.. TerminalsOf(name).Select(t => t with { Label = longMark })];
            Check(SymbolBook.Of(name, terminals, new() { TerminalMarks = true, Inside = longMark, InsideToo = longMark }), terminals);
        }
    }

    [Fact]
    public void Turning_a_battery_round_moves_its_signs_and_not_its_box()
    {
        Symbol plus = SymbolBook.Of("battery", TerminalsOf("battery"), new() { HotTerminal = "pos" });
        Symbol minus = SymbolBook.Of("battery", TerminalsOf("battery"), new() { HotTerminal = "neg" });
        Assert.Equal((plus.Width, plus.Height), (minus.Width, minus.Height));
        Assert.Equal(new SymbolPin("pos", 3, 0, Top), plus.Pin("pos"));
        Assert.Equal(new SymbolPin("neg", 3, 0, Top), minus.Pin("neg"));
        // The plus is the one upright stroke left of the plates.
        Assert.True(PlusHeight(plus) < 20);
        Assert.True(PlusHeight(minus) > 20);
    }

    [Fact]
    public void A_diode_points_at_its_cathode_whichever_end_is_hot()
    {
        static double Apex(Symbol s) => s.Shapes.OfType<PolylineShape>().Single(p => p.Closed).Points[2].Y;
        Assert.True(Apex(SymbolBook.Of("diode", TerminalsOf("diode"))) > 20);
        Assert.True(Apex(SymbolBook.Of("diode", TerminalsOf("diode"), new() { HotTerminal = "K" })) < 20);
    }

    [Fact]
    public void A_part_grounded_by_its_case_has_one_pin_and_the_sign_of_it()
    {
        Symbol lamp = SymbolBook.Of("lamp", [T("1", Top)]);
        Assert.Single(lamp.Pins);
        Assert.True(lamp.Shapes.Length > SymbolBook.Of("lamp", TerminalsOf("lamp")).Shapes.Length);
    }

    private static double PlusHeight(Symbol battery) => battery.Shapes.OfType<PolylineShape>()
        .Single(p => p.Points.Length == 2 && p.Points[0].X == p.Points[1].X && p.Points[0].X < 10).Points.Average(p => p.Y);

    private static void Check(Symbol symbol, IReadOnlyList<SymbolTerminal> terminals)
    {
        Assert.Equal(terminals.Select(t => t.Name).Order(StringComparer.Ordinal), symbol.Pins.Select(p => p.Terminal).Order(StringComparer.Ordinal));
        Assert.Equal(symbol.Pins.Length, symbol.Pins.Select(p => (p.X, p.Y)).Distinct().Count());
        foreach (SymbolPin pin in symbol.Pins)
        {
            bool onEdge = pin.Side switch
            {
                Top => pin.Y == 0,
                Bottom => pin.Y == symbol.Height,
                Left => pin.X == 0,
                Right => pin.X == symbol.Width,
                _ => pin.X == 0 || pin.Y == 0 || pin.X == symbol.Width || pin.Y == symbol.Height,
            };
            Assert.True(onEdge && pin.X >= 0 && pin.X <= symbol.Width && pin.Y >= 0 && pin.Y <= symbol.Height, $"{symbol.Name}: {pin}");
        }

        // Rings and dots on the edge reach out by their radius.
        Box box = new(0, 0, symbol.Width * 10, symbol.Height * 10);
        Assert.All(symbol.Shapes, s => Assert.True(box.Contains(s.Bounds, 3.5), $"{symbol.Name}: {s}"));
        Assert.All(symbol.Shapes.OfType<TextShape>(), s => Assert.True(box.Contains(s.Bounds, 0.3), $"{symbol.Name}: {s}"));
    }

    private static bool Touches(Shape shape, Point at) => shape switch
    {
        PolylineShape line => Segments(line).Any(s => Math.Abs(s.A.To(at) + at.To(s.B) - s.A.To(s.B)) < 0.01),
        CurveShape curve => curve.Start == at || curve.Steps.Any(s => s.End == at),
        CircleShape circle => circle.Centre == at,
        RectangleShape rectangle => at.Y == rectangle.Box.Top && at.X >= rectangle.Box.Left && at.X <= rectangle.Box.Right,
        _ => false,
    };

    private static IEnumerable<(Point A, Point B)> Segments(PolylineShape line)
    {
        for (int i = 0; i + 1 < line.Points.Length; i++)
            yield return (line.Points[i], line.Points[i + 1]);
        if (line.Closed)
            yield return (line.Points[^1], line.Points[0]);
    }
}
