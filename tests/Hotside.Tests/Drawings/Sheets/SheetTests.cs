using System.Collections.Immutable;
using Hotside.Drawings.Marks;
using Hotside.Drawings.Sheets;
using Hotside.Studies;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Tests.Drawings.Sheets;

public sealed class SheetTests
{
    private static readonly Lettering L = Lettering.Normal;

    private static readonly string[] Lines =
        ["run K1.87 to H1, 14 GN", "Scheinwerferreinigungsanlagenrelaishalterung versetzen", "siirrä etulasinpyyhkijän pesulaitteen releen johto", "fit F1", string.Concat(Enumerable.Repeat("very long ", 40))];

    private static readonly ImmutableArray<SheetSize> All = [.. SheetSize.Series, SheetSize.Letter, SheetSize.Tabloid];

    public static TheoryData<string> Sizes => [.. All.Select(s => s.Name)];

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Each_zone_is_named_where_a_flag_would_say_it_is(string name)
    {
        SheetFrame frame = new(All.Single(s => s.Name == name));
        ImmutableArray<Shape> shapes = frame.Shapes(L);
        List<TextShape> marks = [.. shapes.OfType<TextShape>()];
        foreach (TextShape mark in marks.Where(m => char.IsAsciiDigit(m.Text[0])))
            Assert.EndsWith(mark.Text, frame.ZoneAt(mark.Place.X, 300), StringComparison.Ordinal);
        foreach (TextShape mark in marks.Where(m => char.IsAsciiLetter(m.Text[0])))
            Assert.StartsWith(mark.Text, frame.ZoneAt(300, mark.Place.Y), StringComparison.Ordinal);
        Texts.LieApart(shapes);
        Assert.True(new Box(0, 0, frame.Size.Width, frame.Size.Height).Contains(Box.Around(shapes.Select(s => s.Bounds))));
    }

    [Fact]
    public void An_A4_sheet_has_six_by_four_zones_and_an_A3_sheet_eight_by_six()
    {
        Assert.Equal("D6", new SheetFrame(SheetSize.A4).ZoneAt(1140, 790));
        Assert.Equal("F8", new SheetFrame(SheetSize.A3).ZoneAt(1630, 1140));
        // ISO 5457 (from memory): A2 has 12 by 8 fields.
        Assert.Equal("H12", new SheetFrame(SheetSize.A2).ZoneAt(2330, 1630));
    }

    // Flags have room for it before they know what they say: no zone of either way to lay the paper is wider.
    [Theory]
    [MemberData(nameof(Sizes))]
    public void No_zone_is_wider_than_the_widest(string name)
    {
        var size = All.Single(s => s.Name == name);
        double widest = TextMeasure.Width(SheetFrame.WidestZone(size), L.SmallBold);
        foreach (var paper in new[] { size, size.Upright })
            for (double x = 90; x < paper.Width; x += 100)
                for (double y = 50; y < paper.Height; y += 100)
                    Assert.True(TextMeasure.Width(new SheetFrame(paper).ZoneAt(x, y), L.SmallBold) <= widest);
    }

    [Fact]
    public void A_supplementary_title_takes_room_that_its_neighbours_can_spare()
    {
        const string Long = "12 V negative ground, seven-pole socket, LED lamps on the trailer";
        var fields = new Dictionary<string, string> { ["title"] = "Trailer lamps", ["supplementary title"] = Long, ["identification number"] = "HS-14", ["date of issue"] = "1954-05-25" };
        Assert.Equal(L.Body, SupplementaryIn(fields).Style);
        fields["identification number"] = string.Concat(Enumerable.Repeat("HS-14 ", 10));
        Assert.Equal(L.Small, SupplementaryIn(fields).Style);

        static TextShape SupplementaryIn(Dictionary<string, string> fields)
        {
            var texts = TitleBlock.Of(fields).Shapes.OfType<TextShape>().ToArray();
            Texts.LieApart(texts);
            return texts.Single(t => t.Text == Long || t.Whole == Long);
        }
    }

    [Fact]
    public void Sheets_have_the_size_of_their_standard()
    {
        // ISO 216: A4 297 x 210 mm; ANSI/ASME Y14.1 sizes A and B: 11 x 8.5 in, 17 x 11 in; one unit is 0.25 mm.
        Assert.Equal((297 * 4, 210 * 4), (SheetSize.A4.Width, SheetSize.A4.Height));
        Assert.Equal(11 * 25.4 * 4, SheetSize.Letter.Width, 1e-9);
        Assert.Equal(11 * 25.4 * 4, SheetSize.Tabloid.Height, 1e-9);
    }

    [Fact]
    public void Views_beside_each_other_share_the_width_as_each_needs()
    {
        // Half for each while that holds; more for the one that needs more.
        Assert.Equal(535, ViewRooms.Of(new(0, 0, 1100, 600), [new(0, 0, 300, 400), new(0, 0, 500, 400)], Standing.Beside, 34).Room(0).Right);
        Assert.Equal(370, ViewRooms.Of(new(0, 0, 1100, 600), [new(0, 0, 300, 400), new(0, 0, 700, 400)], Standing.Beside, 34).Room(0).Right);
        Assert.False(ViewRooms.Of(new(0, 0, 1100, 600), [new(0, 0, 500, 400), new(0, 0, 600, 400)], Standing.Beside, 34).Hold);
    }

    [Fact]
    public void Views_above_each_other_leave_room_for_the_second_headline_and_have_one_left_edge()
    {
        var rooms = ViewRooms.Of(new(100, 50, 1100, 1000), [new(40, 0, 900, 400), new(0, 0, 900, 380)], Standing.Above, 34);
        Assert.True(rooms.Hold);
        Assert.True(rooms.Room(1).Top >= rooms.Room(0).Bottom + 34);
        Assert.True(rooms.Room(1).Bottom <= 1000);
        // What the layout puts into one column stands in one column of the sheet.
        Assert.Equal(rooms.Origin(0).X, rooms.Origin(1).X);
        Assert.False(ViewRooms.Of(new(0, 0, 1100, 800), [new(0, 0, 900, 400), new(0, 0, 900, 380)], Standing.Above, 34).Hold);
    }

    [Fact]
    public void An_empty_title_block_keeps_what_is_mandatory_and_drops_the_rest()
    {
        List<string> names = [.. TitleBlock.Of(new Dictionary<string, string>()).Shapes.OfType<TextShape>().Select(t => t.Text)];
        // The eight mandatory fields of ISO 7200 (from memory).
        Assert.Equal(["Approval person", "Creator", "Date of issue", "Document type", "Identification number", "Legal owner", "Sheet", "Title"], names.Where(n => n.Length > 0).Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("Marrow Lane Garage")]
    [InlineData("Scheinwerferreinigungsanlagenrelaishalterung Aktiengesellschaft")]
    [InlineData("<&\"'>\u202E\0 👩‍🔧")]
    [InlineData("")]
    public void A_title_block_keeps_its_texts_in_their_fields(string value)
    {
        foreach (string text in (string[])[value, string.Concat(Enumerable.Repeat(value + " ", 200))])
        {
            foreach (string? only in (string?[])[null, .. TitleBlock.FieldNames])
            {
                Dictionary<string, string> fields = TitleBlock.FieldNames.ToDictionary(n => n, n => only is null || n == only ? text : "A");
                Piece block = TitleBlock.Of(fields);
                Texts.LieApart(block.Shapes);
                Assert.All(block.Shapes, s => Assert.True(new Box(0, 0, TitleBlock.Width, TitleBlock.Height).Contains(s.Bounds, 0.05), $"{s}"));
                ClearOfRules(block.Shapes);
            }
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(11)]
    [InlineData(45)]
    [InlineData(120)]
    public void A_change_list_of_any_length_overlaps_nothing_and_says_its_height_before(int count)
    {
        foreach (double width in (double[])[260, 700, 1028, 1520])
        {
            ImmutableArray<ListLine> lines = [.. Enumerable.Range(1, count).Select(i => new ListLine(new(i.ToString(System.Globalization.CultureInfo.InvariantCulture), ColourRole.New), LineStyle.New, Lines[i % Lines.Length]))];
            Piece list = ChangeList.Of("Changes, in order of work. Battery off before 1, back on after the last. The workshop manual and local rules take precedence.", lines, width, L);
            Texts.LieApart(list.Shapes);
            Assert.All(list.Shapes, s => Assert.True(new Box(0, 0, width, list.Height).Contains(s.Bounds, 0.05), $"{s}"));
            Assert.Equal(count, list.Shapes.OfType<TextShape>().Count(t => t.Anchor == Anchor.End));
            Assert.Equal(count == 0, list.Height == 0);
        }
    }

    [Fact]
    public void Short_lines_flow_into_even_columns_in_order()
    {
        ImmutableArray<ListLine> lines = [.. Enumerable.Range(1, 9).Select(i => new ListLine(new("" + (char)('0' + i), ColourRole.New), LineStyle.New, "fit the fuse F" + (char)('0' + i) + " in the wire to the lamps"))];
        List<TextShape> numbers = [.. ChangeList.Of("", lines, 700, L).Shapes.OfType<TextShape>().Where(t => t.Anchor == Anchor.End)];
        Assert.Equal([3, 3, 3], numbers.GroupBy(n => n.Place.X).Select(g => g.Count()));
        Assert.Equal("123456789", string.Concat(numbers.Select(n => n.Text)));
    }

    [Theory]
    [InlineData(1, 320, 84)]
    [InlineData(8, 320, 84)]
    [InlineData(12, 320, 84)]
    [InlineData(12, 1000, 60)]
    public void A_legend_has_every_entry_within_its_width(int count, double width, double height)
    {
        LegendEntry[] all =
        [
            LegendEntry.Of(LineStyle.TakenOut, "take out"), LegendEntry.Of(LineStyle.New, "run new, or fit"), LegendEntry.Of(LineStyle.Moved, "move one end"),
            LegendEntry.Of(LineStyle.Kept, "leave as is"), LegendEntry.OfTriangle("line n of the change list", L), LegendEntry.Written("14 BK", "AWG 14, black (IEC 60757)", L),
            LegendEntry.Of(SwitchedSide.HotSwitched, "switched on the hot side"), LegendEntry.Of(SwitchedSide.GroundSwitched, "on the ground side"), LegendEntry.OfFlag("goes on elsewhere"),
            LegendEntry.OfSlant("goes on the way it slants"), LegendEntry.OfReversal("leads swapped"), LegendEntry.Written("E4", "zone of the sheet", L),
        ];
        Piece legend = Legend.Of([.. all[..count]], width, height, L);
        Assert.True(legend.Width <= width);
        Texts.LieApart(legend.Shapes);
        Assert.All(all[..count], e => Assert.Contains(legend.Shapes.OfType<TextShape>(), t => t.Text == e.Text));
    }

    [Fact]
    public void Cautions_are_broken_and_never_shortened()
    {
        Piece cautions = CautionBlock.Of("Cautions", [.. Lines], 300, L);
        Texts.LieApart(cautions.Shapes);
        Assert.DoesNotContain(cautions.Shapes.OfType<TextShape>(), t => t.Text.EndsWith('…'));
        Assert.Equal(0, CautionBlock.Of("Cautions", [], 300, L).Height);
    }

    [Fact]
    public void The_note_of_a_headline_gives_way_first()
    {
        Piece headline = Headline.Of("Before", string.Concat(Enumerable.Repeat("6 V, positive ground ", 50)), 480, L);
        Assert.True(headline.Width <= 480);
        Assert.Equal("Before", headline.Shapes.OfType<TextShape>().First().Text);
    }

    private static void ClearOfRules(ImmutableArray<Shape> shapes)
    {
        List<(TextShape Text, Box Box)> texts = [.. shapes.OfType<TextShape>().Where(t => t.Text.Length > 0).Select(t => (t, t.Bounds))];
        foreach (PolylineShape rule in shapes.OfType<PolylineShape>())
            Assert.All(texts, t => Assert.False(t.Box.Overlaps(rule.Bounds, -0.2), $"{t.Text} on {rule.Bounds}"));
    }
}
