using Hotside.Checks;
using Hotside.Circuits;
using Hotside.Kinds;
using Hotside.Studies.Figures;

namespace Hotside.Tests.Checks;

/// <summary>What the trade calls things: the words of works, and what counts as a starter.</summary>
public class TradeTests
{
    // Trade terms; common practice, no source.
    [Theory]
    [InlineData("polarise it before the first run", true)]
    [InlineData("polarize it; there is no mark on its case", true)]
    [InlineData("flash the field with the engine stopped", true)]
    [InlineData("never polarise it", false)]
    [InlineData("it is not to be polarized", false)]
    [InlineData("check its polarity", false)]
    public void A_work_says_to_polarise_or_does_not(string work, bool says) => Assert.Equal(says, Trade.SaysToPolarise(work));

    [Fact]
    public void Every_starter_of_the_catalogue_counts_as_one_whatever_volts_it_minds()
    {
        PartKind[] starters = [.. Catalogue.Standard.Kinds.Where(k => k.Id.StartsWith("starter", StringComparison.Ordinal) && k.Elements.Any(e => e.Type == ElementType.Motor))];
        Assert.True(starters.Length >= 3);
        foreach (var kind in starters)
        {
            var part = new CircuitBuilder(UnitsNet.ElectricPotential.FromVolts(12), Ground.Negative).Part("M1", kind).Build().FindPart("M1")!;
            Assert.True(BriefLoad.Is(part), kind.Id);
            Assert.Contains(kind.Elements, part.IsStarter);
        }
    }
}
