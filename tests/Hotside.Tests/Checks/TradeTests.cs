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

    [Theory]
    [InlineData("crank no longer than 10 s at a time, then let it cool", true)]
    [InlineData("stays, for short bursts at 12 V", true)]
    [InlineData("clean its studs", false)]
    public void A_work_says_how_long_something_bears_too_many_volts_or_does_not(string work, bool says) => Assert.Equal(says, Trade.SaysHowLong(work));

    [Theory]
    [InlineData("label it: never open with the engine running", true)]
    [InlineData("its second contact opens the field", true)]
    [InlineData("never turn the selector to off while it runs", true)]
    [InlineData("mount it on the bulkhead", false)]
    public void A_work_says_when_a_disconnect_may_be_opened_or_does_not(string work, bool says) => Assert.Equal(says, Trade.SaysWhenToOpen(work));

    [Theory]
    [InlineData("Left headlamp", true)]
    [InlineData("Head light, near side", true)]
    [InlineData("Overhead light", false)]
    [InlineData("Cylinder head temperature lamp", false)]
    public void A_lamp_is_called_a_headlamp_or_is_not(string title, bool isOne)
    {
        var part = new CircuitBuilder(UnitsNet.ElectricPotential.FromVolts(12), Ground.Negative).Part("E1", Catalogue.Standard.Find("lamp")!, new() { Name = title }).Build().FindPart("E1")!;
        Assert.Equal(isOne, Trade.IsCalledHeadlamp(part));
    }

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
