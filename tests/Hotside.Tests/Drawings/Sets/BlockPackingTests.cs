using Hotside.Drawings.Plans;
using Hotside.Drawings.Sets;
using Hotside.Studies;
using Hotside.Symbols.Texts;
using Hotside.Tests.Outputs;
using Hotside.Wording;

namespace Hotside.Tests.Drawings.Sets;

/// <summary>What goes onto which sheet, where a sheet holds so many parts.</summary>
public sealed class BlockPackingTests
{
    [Theory]
    [InlineData("van", 12)]
    [InlineData("van", 16)]
    [InlineData("van", 20)]
    [InlineData("trailer", 10)]
    [InlineData("tractor", 9)]
    [InlineData("launch", 8)]
    [InlineData("headlamps", 6)]
    public void Every_part_and_line_is_on_one_sheet_and_every_cut_line_on_two(string job, int most)
    {
        var (plan, sheets) = Packed(job, most);
        Assert.All(sheets, s => Assert.True(s.Parts.Length <= most));
        Assert.Equal(Block.Of(plan).SelectMany(b => b.Parts).Order(StringComparer.Ordinal), sheets.SelectMany(s => s.Parts).Order(StringComparer.Ordinal));
        Assert.Equal(plan.Lines.Select(l => l.Line).Order(StringComparer.Ordinal), sheets.SelectMany(s => s.Lines).Concat(sheets.SelectMany(s => s.Cuts).Select(c => c.Line).Distinct()).Order(StringComparer.Ordinal));
        Assert.All(sheets.SelectMany(s => s.Cuts).GroupBy(c => c.Line), g => Assert.Equal([false, true], g.Select(c => c.KeepsFrom).Order()));
    }

    [Theory]
    [InlineData("van", 12)]
    [InlineData("van", 16)]
    [InlineData("van", 20)]
    [InlineData("tractor", 9)]
    [InlineData("tractor", 12)]
    public void What_one_sheet_holds_is_not_cut(string job, int most)
    {
        var (plan, sheets) = Packed(job, most);
        foreach (var block in Block.Of(plan).Where(b => b.Parts.Length <= most))
            Assert.Single(sheets, s => s.Parts.Intersect(block.Parts).Any());
    }

    // By hand: car and trailer hang together by the four ways of the plug alone; what shares a switch stays together.
    [Fact]
    public void A_trailer_is_cut_at_its_plug()
    {
        var (_, sheets) = Packed("trailer", 10);
        Assert.Equal(["w11", "w19", "w20", "w7"], sheets.SelectMany(s => s.Cuts).Select(c => c.Line).Distinct().Order(StringComparer.Ordinal));
        Assert.Equal(3, sheets.Count);
    }

    [Fact]
    public void What_gives_current_stands_in_front_together()
    {
        var (_, sheets) = Packed("tractor", 12);
        Assert.Equal(["G1", "G2", "G4"], sheets[0].Parts.Where(p => p is "G1" or "G2" or "G4").Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("van", 14)]
    [InlineData("van", 16)]
    [InlineData("van", 18)]
    public void No_sheet_is_nearly_empty_where_pieces_of_others_can_go_there(string job, int most)
    {
        var (plan, sheets) = Packed(job, most);
        var least = sheets.MinBy(s => s.Parts.Length)!;
        foreach (var sheet in sheets.Where(s => s != least))
            foreach (var piece in sheet.Pieces(plan).Where(p => p.Cuts.IsEmpty && p.RailsOf(plan).IsSubsetOf(least.RailsOf(plan))))
                Assert.False(least.Parts.Length + piece.Parts.Length <= sheet.Parts.Length - piece.Parts.Length && least.Parts.Length < 0.8 * sheets.Average(s => s.Parts.Length),
                    $"{string.Join(' ', piece.Parts)} could go to {string.Join(' ', least.Parts)}");
    }

    private static (DrawingPlan Plan, List<Block> Sheets) Packed(string job, int most)
    {
        var alteration = GalleryJobs.Read(job).Alteration;
        var plan = DrawingPlan.Of(alteration, Study.Of(alteration), Lettering.Normal, Vocabulary.Of(Words.American));
        return (plan, new BlockPacking(plan, b => b.Parts.Length <= most, b => b.Parts.Length, 3).Sheets()!);
    }
}
