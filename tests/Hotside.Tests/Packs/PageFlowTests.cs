using Hotside.Packs.Papers;
using Hotside.Symbols.Shapes;

namespace Hotside.Tests.Packs;

/// <summary>Where pages end: no page begins with a last row alone, or with a closing note alone.</summary>
public class PageFlowTests
{
    private const double Row = 20, Height = 500;

    private static FlowPart Rows(int count, double height = Row) => new([.. Enumerable.Range(0, count).Select(_ => new Piece(100, height, []))]);

    private static int[] PiecesOf(params FlowPart[] parts) => [.. PageFlow.Of([new("a", "A", [.. parts])], _ => (400, Height), PackLettering.Normal).Select(p => p.Pieces.Length)];

    // However many rows there are, a page that goes on has its title and two rows at least.
    [Fact]
    public void A_last_row_is_never_alone()
    {
        for (int count = 5; count < 80; count++)
        {
            int[] pages = PiecesOf(Rows(count));
            Assert.Equal(count + pages.Length, pages.Sum());
            Assert.All(pages.Skip(1), p => Assert.True(p >= 3, $"{count} rows: {string.Join(", ", pages)}"));
        }
    }

    // Two lines above a note, and the note: where the note finds no room the lines go with it.
    [Fact]
    public void A_closing_note_is_never_alone()
    {
        for (int count = 5; count < 40; count++)
        {
            int[] pages = PiecesOf(Rows(count), Rows(2), Rows(1, 30));
            if (pages.Length > 1) Assert.True(pages[^1] >= 4, $"{count} rows: {string.Join(", ", pages)}");
        }
    }
}
